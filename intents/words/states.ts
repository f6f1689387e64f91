/** Spellings of the state of the coach and of work on it. Data only. */
import type { conditions, works } from '../names.ts';

/** Each with whether it holds. */
export const conditionWords: readonly (readonly [string, (typeof conditions)[number], boolean])[] = [
  [
    'key turned|key turned to on|ignition live|ignition turned on|key in run|key in the on position|key on run|power on at the key|key to on|ignition switched on|turned the ignition on|turned key on|key switched on|key at on|with key on|ign switched on|keyed up|key on|keys on|keys still on|key still on|key left on|ignition on|ign on|key turned on|with the key on|key is on|key in|switched the key on|turned the key on|keyed on',
    'key on',
    true,
  ],
  [
    'key pulled|key removed|key out of it|ignition switched off|key turned off|key to off|took the key out|pulled the key|no key in it|ignition is off|key at off|everything off|all off|switched off at the key|with key off|coach switched off|shut down and key out|key off|ignition off|ign off|key out|key is off|with the key off|keyed off|turned the key off|switched off the key',
    'key on',
    false,
  ],
  [
    'engine ticking|motor idling|engine at fast idle|fast idle|high idle|at high idle|engine up and running|with engine on|with the engine running|engine fired up|fired the engine up|started her up|started it up|engine started up|running at idle|idling away|engine going|diesel running|motor on|engine ticking over|engine idling|engine at idle|engine is idling|motor ticking over|idling|engine running|engine on|eng running|eng on|motor running|at idle|engine run|engine started|running engine|with engine running|started the engine|eng idle|engine is running',
    'engine running',
    true,
  ],
  [
    'engine is shut off|engine shutdown|shut down the engine|switched the engine off|turned the engine off|no engine running|engine dead|with the engine off|motor off|with engine off|killed the engine|engine killed|engine off|eng off|engine stopped|engine not running|shut the engine off|engine is off|engine shut off|engine shut down|switched off the engine',
    'engine running',
    false,
  ],
  [
    'pump kicked over|pump is up and running|pump came to life|pump is pumping|compressor is pumping|comp is pumping|pump turning|comp turning|pump turns|pump spinning|comp spinning|pump running|with it running|while its running|pump runs|comp runs|comp running|compressor runs|compressor running|pump on|comp on|compressor on|pump is running|comp is running|compressor is running|pump going|comp going|pump is on|comp is on|pump still running|comp still running|pump is going|compressor is on|pump is still going|pump run|pump go|pump goes|comp run|compressor is going|runs|running|pump was running|compressor was running|pump came on|comp came on|compressor came on|pump kicked in|comp kicked in|compressor kicked in|pump kicked on|comp kicked on',
    'pump running',
    true,
  ],
  [
    'after the stop|after stopping|pump went quiet|pump is silent|pump is idle|pump idle|comp idle|pump kicked off|comp kicked off|compressor kicked off|pump stopped running|comp stopped running|compressor stopped running|pump has stopped|comp has stopped|pump has cut out|pump cutout|pump rested|pump went off|with the pump off|pump is quiet now|pump off|pump was stop|pump is stop|pump stop|comp off|compressor off|pump stopped|comp stopped|compressor stopped|pump not running|comp not running|compressor not running|pump is off|comp is off|compressor is off|pump at rest|pump resting|pump shut off|comp shut off|compressor shut off|pump stops|pump is stopped|pump switched off|pump cut out|pump is quiet|comp quiet|comp shut down|pump is not running|compressor is not running|pump isnt running',
    'pump running',
    false,
  ],
  [
    'breaker is pulled|pulled breaker|breaker switched off|switched off the breaker|breaker flipped off|breaker thrown|unplugged the pump|pump unplugged|compressor unplugged|compressor breaker off|comp breaker off|pump breaker off|disconnected power to the pump|no power to the pump|power off the pump|isolated the compressor|isolated the pump|power disconnected from the pump|pump isolator off|cut the feed to the pump|pump disconnected|lockout on the pump|locked out and tagged|locked and tagged out|locked out tagged out|loto on|cut the breaker|cut breaker|breaker cut|killed the breaker|threw the breaker|flipped the breaker off|cut comp power|cut compressor power|cut power to comp|killed comp power|comp power off|comp power isolated|power cut|pump power cut|breaker off|power off|power is off|breaker pulled|breaker is off|power to the pump is off|power is cut|isolated|power isolated|cut the power|cut power|pump isolated|compressor isolated|pulled the breaker|breaker open|cut the pump power|power killed|killed the power|killed power|killed the pump power|killed pump power|killed power to the pump|killed the compressor power|switched the breaker off|breaker out|isolator off|pump power off|compressor power off|tripped the breaker off|breaker turned off|turned the breaker off|opened the breaker|power to pump cut|cut power to the pump|power to the pump pulled|pump power pulled|power pulled|power to pump pulled',
    'pump power cut',
    true,
  ],
  [
    'breaker on again|breaker switched on|power back to the pump|pump plugged in|plugged the pump back in|breaker reset and on|isolator on|power is on|power on|power back on|breaker on|power restored|breaker back on|breaker back in',
    'pump power cut',
    false,
  ],
  [
    'panel to ride|panel back to ride|panel back on ride|panel on ride|panel at ride|panel in ride|ride position|ride mode|drive position on the panel|panel in drive|panel at travel|panel to travel|both knobs auto|both on auto|both in auto|panel in normal|panel on normal|normal position|both sides auto|knobs in travel|panel in run|auto position|auto on both|back to auto|back in auto|panel level auto|set back to auto|in automatic|its in automatic|panel auto|panel in auto|panel on auto|panel in travel|travel position|in auto|set to auto|on auto|panel at auto|panel to auto|auto both|both auto|panel travel|auto mode|panel in automatic|panel on automatic|panel automatic|panel set to auto|panel back to auto|panel back in auto',
    'panel auto',
    true,
  ],
  [
    'panel at raise|panel to raise|panel at fill|both on fill|both in fill|panel in inflate|panel on inflate|inflate position|fill on both|raise on both|panel held in fill|panel held in raise|panel knob up|knob in raise|knob in fill|set to raise|set to fill|panel set to raise|panel fill|panel in fill|panel on fill|panel raise|panel on raise|panel in raise|panel up|in fill|panel to fill|fill position|panel in up|panel on up|on fill|raise position|panel set to fill',
    'panel fill',
    true,
  ],
  [
    'panel at dump|panel to dump|panel at empty|both on dump|both in dump|panel in deflate|deflate position|dump on both|lower on both|panel held in dump|panel knob down|knob in dump|set to dump|set to empty|set to lower|panel set to dump|panel set to lower|panel to lower|lower position|dump position|panel left in dump|panel empty|panel in empty|panel on empty|panel lower|panel on lower|panel in lower|panel dump|panel down|panel to empty|panel on dump|panel in dump|in empty|on dump|empty position|on empty|panel set to empty|panel in down|panel kneel',
    'panel empty',
    true,
  ],
  [
    'locked panel|locked the panel|locked the panel off|shut the panel|closed the panel|shut the panel off|both sides shut|both sides closed|both sides locked|both sides shut off|everything locked|everything locked off|everything shut off|all locked off|all valves shut|both valves shut at the panel|panel at lock|panel to lock|panel in lock|both on lock|both in lock|both locked|both on hold|both in hold|locked both sides|panel in neutral|panel on neutral|neutral position on the panel|bags locked off|bags shut off at the panel|bags isolated|isolated the bags|both knobs off|panel valves shut|panel valves closed|both panel valves shut|both panel valves closed|closed both panel valves|lock on both|shut both sides|shut off both sides|locked at the panel|locked off at the panel|isolated at the panel|panel set to lock|panel set to hold|panel shut|panels locked|panels are locked|panel is locked|panels in lock|panels shut|panel in shut|panel on shut|panel hold|panel on hold|panel in hold|shut both|both shut|in shut|panel to shut|panel closed|hold position|panel on lock|panel locked|in hold|on hold|panel at shut|panel set to shut|shut off at the panel|panel both shut|panel off|panel both sides shut|panel to hold|panel is shut|panel was shut|panel in shut both|on shut|panel shut both|panel neutral|panel is closed|panel shut both sides|shut on the panel|panel at hold|both on shut|both in shut|panel shut off',
    'panel shut',
    true,
  ],
  [
    'valve lever horizontal|valve lever is horizontal|valve arm horizontal|valve arm is horizontal|lever horizontal|lever is horizontal|arm is horizontal|levers horizontal|arm in the middle|arm centered up|arm held level|arm horizontal|arms level|arms horizontal|arm straight out|arm pinned in the middle|pinned the arm|pinned the arms|pin in the arm|arm held neutral|lever centred|lever centered|lever level|arms centred|arms centered|arm tied neutral|arm tied level|arm dead center|arm dead centre|arm at dead center|arm at dead centre|lever dead center|arm neutral|arm at neutral|arm in neutral|arms pinned|arm pinned|arms neutral|pinned neutral|arm centred|arm centered|arms pinned neutral|pinned at neutral|arm at centre|lever neutral|lever at neutral|arms at neutral|arm pinned neutral|arm pinned at neutral|lever in neutral|arm level|valve neutral|at neutral|lever pinned',
    'arm neutral',
    true,
  ],
  [
    'arm held in fill|pushed the arm up|pushed arm up|lifted arm|arm up by hand|arm lifted up|held the lever up|lever pushed up|lever lifted|lever in fill position|arm on fill|arm in up position|raised arm|arms in fill|arms just in fill|arms at fill|arms to fill|arms up|arm up|arm in fill|arm to fill|arm at fill|arm just in fill|lever up|lifted the arm|arm lifted|arm raised|raised the arm|arm fill|held the arm up|arm held up|lever in fill|lever held up|arm pushed up',
    'arm fill',
    true,
  ],
  [
    'pulled the arm down|pulled arm down|arm in dump|arm to dump|arm at dump|lever pulled down|lever in exhaust|pushed the arm down|arms in exhaust|arms just in exhaust|arms down|arm down|arm in exhaust|arm to exhaust|arm at exhaust|lever down|arm exhaust|arm held down|arm lowered|held the arm down|lever held down|arm pushed down|arm pulled down',
    'arm exhaust',
    true,
  ],
  [
    'linkage unhooked|rod unhooked|rod disconnected|took the rod off|popped the link off|dropped the link off|link off|link disconnected|links off|link unhooked|linkage off|rod off|link is off|link undone|linkage disconnected|disconnected the link|link taken off|took the link off|unhooked the link|link removed|links disconnected|drop link off|pulled the link off',
    'link connected',
    false,
  ],
  [
    'link hooked back up|hooked the link up|linkage hooked up|link is on|link is connected|link reconnected|reconnected the link|link back in place|rod back on|rod connected|rod hooked up|linkage is connected|link on|link connected|link back on|links on|link hooked up|linkage connected|link refitted|hooked the link back up|linkage back on',
    'link connected',
    true,
  ],
  [
    'tank shut in|shut in the tank|tank isolated at the outlet|isolated the tank|valve at the tank closed|valve at the tank shut|closed the valve at the tank|shut the valve at the tank|tank ball valve closed|tank ball valve shut|plugged off the tank|capped the tank outlet|tank blanked off|tank outlet capped|tank outlet blanked|blanked the tank outlet|tank valve closed|closed the tank valve|shutoff closed|closed the shutoff|shutoff after the tank closed|closed the shutoff after the tank|tank shutoff closed|closed the tank cock|shut the tank cock|outlet closed|tank outlet closed|tank outlet shut|tank isolated|outlet cock closed|cock closed at the tank|tank valved off|outlet plugged|tank outlet plugged|outlet shut|tank outlet off|outlet of the tank closed|plugged the tank outlet|closed the tank outlet|tank cock closed|tank shut off|tank plugged',
    'tank outlet closed',
    true,
  ],
  [
    'valve at the tank open|opened the valve at the tank|tank ball valve open|tank back on line|tank outlet back on|unplugged the tank outlet|took the plug out of the tank outlet|tank valve open|opened the tank valve|opened the tank cock|tank cock open|opened the shutoff|outlet open|tank outlet open|tank outlet opened|opened the tank outlet',
    'tank outlet closed',
    false,
  ],
  [
    'sat on jacks|sitting on jacks|on bottle jacks|on trolley jacks|jack under it|up on the jack|on its jacks|hydraulic jacks down|on the levellers|on the levelers|on jacks|on a bottle jack|on the bottle jack|on bottle jack|on a floor jack|on the floor jack|on a trolley jack|on the trolley jack|on a hydraulic jack|on one jack|on a jack|on the jack|jacks down|jacked up|up on jacks|on jack|levelling jacks down|leveling jacks down|jacks are down|still on the jacks|on the jacks|on the levelling jacks|with jacks down|jack up',
    'on jacks',
    true,
  ],
  [
    'leveling jacks up|levelling jacks up|jack taken out|jack out|let off the jacks|down off the jacks|jacks up|off the jacks|off jacks|jacks stowed|jacks are up|jacks in|jacks retracted|jacks off|no jacks|not on jacks',
    'on jacks',
    false,
  ],
  [
    'sitting on stands|on jackstands|resting on stands|weight on the stands|weight on stands|stood on stands|blocked on stands|standing on stands|on the axle stands|on the jack stands|stands in place|stands under both sides|on stands|on axle stands|stands under|stands under the frame|on jack stands|frame on stands|its on stands|stands in|on rated stands|stands under frame|stands are in|stands are under|yes on stands|up on stands|supported on stands|is on stands|frame is on stands|stands set|on the stands|axle stands in|axle stands under|stands under her|frame on rated stands|sat on stands|stands under it|axle stands under the chassis|chassis on stands|now on stands',
    'on stands',
    true,
  ],
  [
    'no stands under it|stands removed|pulled the stands out|took the stands out|down off stands|not up on stands|stands arent in|no stands yet|no jack stands|not on stands|no stands|without stands|off stands|off the stands|took it off the stands|not on stands yet|stands out|stands not in',
    'on stands',
    false,
  ],
  [
    'blocked the wheels|blocked her wheels|wheels blocked up|wheels blocked|chocked both ways|chocked front and back|blocks behind the wheels|wheel chocks in|wheel chocks on|front wheels chocked|scotched|wheels scotched|chocked her up|chocks either side|wheels have chock|wheels have chocks|wheels got chocks|wheels with chocks|wheels with the chocks|chocks are on|chocks on|wheels chocked|chocked|chocks in|wheels are chocked|chocks under|its chocked|chocked up|chocks in place|chocks are in|both wheels chocked|chocked and clear|is chocked|chocks down|chocked the wheels|chocks set|chocked it|wheels are choked|choked the wheels',
    'wheels chocked',
    true,
  ],
  [
    'chocks not in|pulled the chocks|no wheel chocks|forgot the chocks|wheels arent chocked|havent chocked it|not chocked yet|not chocked|no chocks|wheels not chocked|chocks out|unchocked',
    'wheels chocked',
    false,
  ],
  [
    'over the inspection pit|over an inspection pit|parked over the pit|up on ramps|on drive up ramps|on the four post|on a four post lift|on the wheel lift|on the drive on lift|over the pit|over a pit|over pit|on the pit|in the pit|on ramps|on the ramps|on the lift|over ramps|on drive on ramps',
    'over pit',
    true,
  ],
  [
    'blocked the frame at|blocked frame at|frame on blocks|frame is on blocks|blocked under the frame|cribbed up solid|cribbing under it|wood cribbing under|cribbing set|cribbing in place|cribbed under the frame|timber cribbing in|cribbed|on cribbing|cribbing in|cribbing under|cribbing is in|cribbed up|on rated cribbing|cribbing under the frame',
    'cribbed',
    true,
  ],
  [
    'on a level slab|on level concrete|level slab|floor checked with a level|dead level floor|floor is dead level|on flat concrete|flat level bay|parked level|ground level checked|on even ground|even ground|to the flat|onto the flat|to flat ground|to level ground|onto level ground|to a flat spot|onto flat concrete|flat bay|level bay|on a flat bay|on a level bay|yard is level|bay is level|floor is flat|level floor|floor level|floor is level|on level ground|flat floor|level ground|flat ground|on a level floor|on flat ground|floor checked level|level concrete|on the flat|ground is level|on the level',
    'floor level',
    true,
  ],
  [
    'floor isnt level|ground isnt level|parked on a slope|on an incline|parked on a hill|bay isnt level|uneven lot|on uneven ground|on the crown of the road|yard is not level|the yard is not level|ground is not level|yard not level|bay is not level|sloping floor|uneven ground|on a slope|floor not level|floor is not level|on a slant|not level ground|crowned road|uneven floor|sloping ground|on a hill|on grass|not on level ground|slopey floor|slope',
    'floor level',
    false,
  ],
  [
    'with a full load|all seats full|passengers on|with passengers|bays full|luggage in|full of luggage|packed up to go|loaded|fully loaded|with a load|fully laden|laden|loaded up|full load|loaded for a trip|with gear',
    'loaded',
    true,
  ],
  [
    'nobody on board|no passengers on|no load on|running empty|empty of people|unloaded coach|no luggage|empty coach|unloaded|unladen|no load|not loaded|empty load|coach empty|coach is empty',
    'loaded',
    false,
  ],
  [
    'full fresh|fresh full|water tank topped up|water topped up|tanks full of water|carrying full water|full water|full of water and fuel|water topped off|full fresh water|full of fresh water|water tank full|filled the fresh water tank|filled the water tank|filled up the water tank|topped up the fresh water|water tank is full|fresh water tank full|filled the fresh water|topped off the water tank|full water tank|fresh water full|fresh tank full|full fresh tank|full fresh water tank',
    'water tank full',
    true,
  ],
  [
    'fresh pumped|just filled the tank|just finished pumping|just built up|just built air|only just pumped up|just got done pumping|just came up to pressure|straight after pumping up|right after pumping up|just pumped|just pumped up|right after pumping|just aired up|straight after pumping|freshly pumped|fresh off the pump|just topped up|right after it pumped|just after pumping|only just pumped|pump just shut off|pump just stopped|pump just cut out|pump just kicked off',
    'just pumped',
    true,
  ],
  [
    'after settling|once settled|let it sit to settle|pressure settled|air cooled down|cooled off and settled|has settled|had settled|let it cool and settle|settled|let it settle|left to settle|settled down|let settle|its settled|all settled|allowed to settle',
    'settled',
    true,
  ],
  [
    'out on the road|on the run|in motion|rolling down the road|at road speed|driving|on the road|going down the road|when driven|while driving|when driving|under way|on the highway|on the motorway|while driven|on the move',
    'driving',
    true,
  ],
  [
    'air at zero|air at 0|air zero|air is at zero|all the air out|no air in it anywhere|everything bled down|bled it all down|bled everything down|system bled down|system drained down|system vented|system dumped|all pressure gone|zero pressure everywhere|all gauges zero|zero air|whole system at zero|depressurised|depressurized|dumped the system|bled off all the air|let all the pressure out|dead of air|dumped all air|dumped all the air|all air dumped|all the air dumped|let all the air out|let all air out|aired it all out|dumped everything|air vented|air dumped|air is dumped|air bled|air let out|air is out|air out|all air out|vented everything|all vented|everything vented|system empty|no air in it|vented all the air|let all the air go|all at zero|all the air is out|bled off everything|no pressure anywhere|everything at zero|all air is out|air all out|bled right down|all stores at zero|air is gone|all air gone',
    'air vented',
    true,
  ],
  [
    'tank blown down|tank blown off|tank dumped|tank at nothing|tank is dry|tank let down|tank down to nothing|tank vented|tank drained|tank empty|tank is empty|tank at zero|tank at 0|tank is drained|tank zero|tank is at zero|tank is at 0|tank bled down|tank down to zero|no air in the tank|tank is zero|bled the tank|tank drained down|drained the tank to zero|tank emptied|no pressure in the tank|tank bled to zero',
    'tank drained',
    true,
  ],
  [
    'both bags dumped|both bags down|bags at zero|bags are at zero|bags zero|bags bled|bags bled down|let the bags down|air out of the bags|air out of both bags|deflated the bags|bellows at zero|air bags dumped|airbags dumped|springs empty|both sides dumped|emptied the bags|emptied both bags|bags vented|bellows vented|bags empty|bags dumped|bellows empty|air bags empty|airbags empty|both bags vented|bags are down|bags are empty|no air in the bags|bags deflated|airbags vented|bags let down|bellows deflated|vented the bags|vented both bags|air springs vented|dumped the bags|dumped both bags|bags exhausted|bags let right down|both bags empty|bellows let down|springs vented',
    'bellows vented',
    true,
  ],
  [
    'head bled off|head is empty|no pressure in the head|no air in the head|head at zero|compressor head vented|discharge vented|discharge bled off|discharge bled|discharge line bled|bled the discharge line|bled off the head|head bled down|head vented|head is at zero|head pressure off|discharge line vented|head bled',
    'head vented',
    true,
  ],
  [
    'everybody out|everyone out from under|all hands clear|everyone stood back|everybody stood back|stood back|people out of the way|all clear underneath|nobody there|nobody in the way|area clear|area is clear|no one near it|no one in the way|folks are clear|everyone away|crew clear|kids away|all back|all people back|people is all away|people are all away|everyone is away|everybody away|people away|all people away|nobody is anywhere near it|nobody anywhere near it|nobody near it|standing clear|everybody clear|all clear|stood clear|nobody under|nobody underneath|no one under|clear of it|people clear|everyone clear|nobody near|keeping clear|stand clear|everyone is clear|everybody is clear|no one underneath|all stood clear|im clear|nobody under it',
    'people clear',
    true,
  ],
  [
    'got my glasses on|face shield on|eye pro on|shades on|visor down|glasses on|goggles on|eyes covered|eye protection|safety glasses on|eye protection on|specs on|safety specs on|got glasses on|wearing glasses|wearing goggles|wear safety glasses|wearing safety glasses|wear glasses|wear goggles|wore glasses|glasses are on|goggles are on',
    'eyes covered',
    true,
  ],
  [
    'no glasses on|no safety glasses|glasses off|forgot my glasses|no specs on|havent got glasses on|not wearing glasses|no glasses|no goggles|no eye protection|without goggles|without glasses',
    'eyes covered',
    false,
  ],
  [
    'batteries disconnected|batteries unhooked|battery cables off|battery cable off|negative off|neg cable off|ground cable off the battery|battery master off|master switch off|battery isolator off|disconnect switch off|battery disconnect off|isolated the battery|unhooked the battery|took the battery cable off|battery leads off|main disconnect off|battery disconnected|battery off|batt disconnected|battery isolated|battery lead off|negative lead off|batt off|battery unhooked',
    'battery disconnected',
    true,
  ],
  [
    'removed the fuse|fuse has been pulled|fuse in my pocket|fuse out of the holder|no fuse in it|yanked the fuse|fuse out|pump fuse out|pump fuse is out|comp fuse out|comp fuse is out|fuse pulled|fuse is out|pulled the fuse|took the fuse out|fuse removed',
    'fuse out',
    true,
  ],
  ['put the fuse back in|fuse is back in|fuse refitted|fuse in|fuse back in|fuse is in', 'fuse out', false],
  [
    'its raining|pouring|wet day|after rain|rainy|its wet out|damp day|wet out|chucking it down|pouring down|tipping it down|tipping down|bucketing down|raining|wet weather|in the rain|rain',
    'wet weather',
    true,
  ],
  ['same time|same moment|at the same moment|at the same time|both read together', 'same moment', true],
  [
    'unloader held open|held the unloader open|bled the head by the unloader|pulled the unloader ring|pushed the unloader pin|tripped unloader|tripped unldr|tripped the unloader|tripped unloader by hand|unloader tripped|unloader tripped by hand',
    'unloader tripped',
    true,
  ],
  [
    'no plugs here|have no plug|no plug to fit|nothing to plug it with|no plug that fits|no blanking plug|no blank|no caps here|got no plug|no plug|havent got a plug|no plugs|dont have a plug|aint got a plug',
    'no plug',
    true,
  ],
  [
    'dont have another gauge|only the dash gauge|only got the dash gauge|no shop gauge|no gauge with me|havent got a gauge|left my gauge at home|no gauge here|got no gauge|no second gauge|only one gauge|no other gauge|no spare gauge|no test gauge|dont have a second gauge|only got one gauge|havent got a second gauge|got no second gauge',
    'no second gauge',
    true,
  ],
  [
    'there is no test port|no gauge port|no test fitting|no place to tee in|nowhere to tee in|no tapping|nowhere to hook a gauge|nowhere to put a gauge|no port to check it|no test point on it|no schrader on it|no test port|no test point|has no test port|theres no test port',
    'no test port',
    true,
  ],
  [
    'im alone|no one to help|no help here|just me here|just me|single handed|all on my own|working by myself|im on my own|no helper|on my own|by myself|alone here|working alone|nobody to help',
    'no helper',
    true,
  ],
  [
    'water tank empty|fresh tank empty|no water on board|fresh empty|water drained out|water tank is empty',
    'water tank full',
    false,
  ],
  [
    'air still in it|still got air in it|still has air|not vented yet|not bled down|air is still on|still full of air|air not out',
    'air vented',
    false,
  ],
  [
    'tank still up|tank still has air|tank still full|tank isnt drained|tank not empty|tank not drained',
    'tank drained',
    false,
  ],
  [
    'bags still up|bags still aired|air still in the bags|bags still full|bags not vented|bags arent empty|bags still hold air|bags not dumped',
    'bellows vented',
    false,
  ],
  [
    'people still around it|people near it|somebodys near it|not clear yet|someone still near it|not everybody clear',
    'people clear',
    false,
  ],
  [
    'battery hooked back up|battery back on|batteries back on|master switch on|battery isolator on|battery connected|reconnected the battery|battery reconnected',
    'battery disconnected',
    false,
  ],
];

export const workWords: Readonly<Partial<Record<(typeof works)[number], string>>> = {
  replaced:
    'put a new one on|stuck a new one in|stuck a new one on|threw in a new|threw on a new|threw a new one on|slapped a new|slapped on a new|bolted in a new|bolted on a new|hung a new|put in new|put on new|fitted a replacement|swapped it out|changed over|r and r|r&r|switched out|got a new one on|popped in a new|popped a new one in|popped on a new|screwed in a new|chucked a new one on|chucked on a new|stuck on a new|put same size back in|put the same size back in|put the same size in|fitted same size|same size back in|put same rating in|put in the same size|replaced|put the new|fitted the new|installed the new|threw the new|bolted the new|stuck the new|new one in|a new one in|new one fitted|new one on|put a new one in|put in a new one|fitted a new one|a new one|repl|swapped|changed|c/o|c/out|changed out|new|fitted a new|renewed|chg|put in a new|put a new|installed a new|swopped|change out|fitted new|put new|installed new|swapped out|replace|replaced with new|put on a new|fitted another|swap|change|exchanged|renew|fit new|replacing|swapping|changing|chngd|install new|r/r|swaped|stuck a new|put another',
  repaired:
    'fixed up|mended it|made good|put right|sorted it out|spliced|soldered|patched it up|glued it|rejoined|straightened it out|bent straight|bodged|jury rigged|made a repair|repaired it|re terminated|reterminated|crimped a new end on|put a new end on|repaired|straightened|bent back|bent it back|welded up|fixed|mended|repair|patched|patched up|rep|sorted|fix',
  rebuilt:
    'kitted|put a kit in|fitted a kit|fitted a repair kit|put a rebuild kit in|freshened up|went through it|gone through it|new seals fitted|resealed it|new kit fitted|re kitted|stripped and rebuilt|rebuilt it|rebuilt|overhauled|rebuild|kit in|resealed|overhaul|reconditioned|rekitted',
  cleaned:
    'wiped off|wiped down|wiped it off|brushed off|wire brushed|blew it out|flushed out|washed out|scraped clean|sanded|dressed|polished up|buffed|cleaned and greased|cleaned it up|cleaned it out|burnished|scrubbed clean|rinsed|rinsed out|descaled|degreased|cleared it out|decarbonised|cleaned|cleaned out|blew out|cleaned up|clean out|unblocked|cleared|blown through|blew through|cleaning|de-iced|freed off|flushed',
  tightened:
    'snugged down|gave it a tweak|nipped a bit tighter|torqued down|re tightened|retorqued|cinched up|cinched down|gave it a quarter turn|did it up tight|tweaked tighter|pulled up tight|wrenched down|tightened it up|tightened it down|tightened her up|tightened|nipped up|snugged|tightened up|retightened|torqued up|did up|cinched|re-torqued|tighten|nipped|tightend|snugged up|done up|tighten up|tightening|snug up|pinched up|redid',
  adjusted:
    'cranked up|cranked down|tweaked it|tweaked the|trimmed|dialed in|dialled in|fine tuned|moved up a hole|moved down a hole|screwed in a turn|screwed out a turn|backed off a turn|turned in a turn|turned up|turned down a turn|altered|dialed|set up a bit|adjusted|tweaked|adjust|wound up|wound in|wound out|wound down|backed off the nut|turned the nut|readjusted|moved the arm|adj|turned in|backed out|adjusting|re-adjusted|lengthened|shortened|re-set',
  set: 'set|set the|reset the height|set height|set heights|set up',
  soaped:
    'soap checked|squirted soap on|squirted|hit it with soap|hit with soap|hit it with soapy water|doused|wetted down|brushed on soap|painted soap on|bubble checked|leak sprayed|snoop tested|sprayed down|sprayed it down|sprayed with soap|spritzed|sprayed leak detector on|dribbled soap on|soaked with soap|put washing up liquid on|soaped|sprayed dish soap on|sprayed dish soap|sprayed soap on|sprayed soapy water on|brushed soap on|brushed soapy water on|put dish soap on|with soap|with the soap|with soapy water|soap test|soap tested|did a soap test on|bubble test|soap test on|soap|sprayed|soapy watered|sprayed soap|soaped up|leak checked|bubble tested|soapd|sprayed soapy water|soaping|soapy water on|soap water on|put soap on|put soapy water on|sudsed|soapy water',
  drained:
    'bled tank|bled the tank|bled the air tank|drained it down|blew down the tank|blew the tank down|opened the drain cock|opened the petcock|emptied out|dumped the tank|drained the wet tank|drained the moisture|drained the water out|drained the water off|drain tank|drain the tank|drained|bled the tank down|bled tank down|let the tank down|ran the tank down|bled the water|drain off|bled off|drained off|drained out|opened the drain',
  checked:
    'checked over|looked it over|gave it a look|had a look|eyeballed|went over it|test ok|measured up|double checked|rechecked|had a good look at|gave it the once over|checked visually|visually checked|put a meter on|metered|gauged up|checked|chk|chkd|inspected|looked at|inv|investigated|looked over|had a look at|check|tested|examined|went over|gone over|test|traced|inspect|verified|checkd|chked',
  removed:
    'yanked off|yanked it|pulled it out|pulled it off|pulled out|whipped off|whipped out|took it out|unbolted|unscrewed it|spun off|dropped it out|stripped off|got it off|got it out|had it off|hauled off|knocked out|backed it out|came out with|lifted out|unfastened|yanked|yanked out|screwed out|removed|unscrewed|i take off|i take out|we take off|i took off|pull|took off|pulled|took out|taken off|pulled off|stripped|removing|dropped out|taken out|took the',
  refitted:
    'put it back on|put it back in|put back on|put back in|re installed|bolted back on|bolted back up|screwed back in|popped back on|popped back in|stuck back on|stuck it back on|back on again|buttoned up|buttoned back up|back together|put it all back|put it back together|reattached|re attached|rehung|refastened|snapped back on|clipped back on|boxed up|refitted|reinstalled|put back|bolted back|refit|back on|put it back|back in|reassembled|re-fitted|reseated|remade|re-made',
  rerouted:
    'ran it another way|moved out of the way|moved it away from|tied up out of the way|zip tied back|zip tied out of the way|cable tied back|clipped away|re clipped|reclipped|rerouted it|routed away|ran clear of|secured away|sleeved|loomed|rerouted|moved the line|re-routed|tied back|route it other way|routed it another way|zip tied|clipped back|cable tied|ty wrapped|clipped up|tie wrapped',
  lubricated:
    'greased up|shot some grease in|gave it a shot of grease|pumped grease in|oiled it|sprayed with penetrant|sprayed with lube|hit with penetrating oil|penetrating oil on it|silicone sprayed|wd40d it|lubed up|lubed it|dabbed grease on|lubricated|greased|oiled|lubed',
  shimmed:
    'put a shim in|put shims in|stuck a shim in|slipped a shim in|pulled a shim|took a shim out|packed out|packed it out|shimmed|added shims|added a shim|put a shim|put shims|took out a shim|removed a shim|fitted shims|added shim',
  levelled:
    'leveled it up|levelled it up|got it level|brought it level|leveled her up|set it level|trued it up|leveled out with the panel|levelled by the panel|levelled|leveled|levelled it|releveled|relevelled|levelled up|leveled it',
  'pumped up':
    'refilled|re filled|filled back up|charge|aired her up|built up air|brought up to pressure|brought it up to pressure|charged it up|charged the system|ran it up to|filled the system|blew it up to|topped up the air|filled with air|aired the coach up|got air in it|pumped up|aired up|pumped it up|charged|built pressure|filled the tank|pumped|recharged|charged up|built air|aired it up|built up to|ran it up|built it up|topped up',
  vented:
    'let the air out of|bled out|dumped the air out of|dumped the air from|released the air from|let air out of|exhausted the air from|cracked to let the air out|vented|let out all the air|let out the air|let all the air out|released all the air|let all air out|dumped the air|let the air out|exhausted|dumped|let air out|released the air|blew down|deflated',
  opened:
    'opened up|opened it up|cracked it open|slackened|slackened off|loosened off|loosened up|undone the|backed off the|broke loose the|split open the|spun open|opened|cracked open|undid|cracked|loosened|broke loose',
  closed:
    'closed it off|shut it off|closed up|closed down the|valved off|shut down the|cocked off|wound shut|screwed shut|closed|shut the|closed off|turned off the cock',
  disconnected:
    'pulled the plug on|pulled the connector off|took loose|uncoupled|broke the line at|pulled apart|taken loose|parted off|unpinned|took the wire off|undid the line|disconnected|i disconnected|we disconnected|unhooked|disconnected the|took the link off|pulled the link|unplugged|unclipped',
  connected:
    'hooked it up|plugged it in|coupled up|joined up|clipped on|attached|teed in|tied in|wired up|wired back up|re pinned|connected back up|teed a gauge in|connected|reconnected|hooked up|hooked back up|plugged in|plugged back in|reconected|hooked the|re-connected',
  tripped: 'tripped the',
  tapped:
    'gave it a clout|belted|gave it a knock|bumped it|rapped|gave it a rap|gave it a bang|clouted|banged on|banged it|bonked|hit it with a hammer|hit with a hammer|tapped it|smacked it|jarred it|tapped|a tap with|a tap|a whack|hit|whacked|gave it a tap|knocked|gave it a whack|tapped on|smacked|thumped',
  'road tested':
    'roadtest|test drove it|took it for a spin|took it around the block|drove it round the block|drove it around the block|road test done|road test carried out|ran it up the road|went for a drive|went for a spin|drove it down the road|been round the block|went round the block|gave it a run|gave it a run up the road|took it for a run|did a road test|test run done|road tested|road test|test drove|drove it|test driven|drove|took it for a drive|road tested it|been for a drive|took it round the block',
  'overnight tested':
    'left overnight to check|sat overnight to check|overnight check done|let it sit overnight|left it all night|left sitting overnight to see|left parked overnight to test|did an overnight test|overnight leak test done|overnight hold test|overnight test|left overnight|overnight tested|left it overnight|stood overnight|parked overnight|overnight check|sat overnight|stood it overnight',
  declined:
    'owner said no|customer passed on|owner passed on|didnt want|doesnt want|not doing|said leave it|told us to leave it|customer refused|owner refused|turned down the|said not to bother with|declined by customer|declined by owner|not authorised|not authorized|no authorization for|refused to have|no thanks on|no thanks to|said no thanks to|said no thanks|does not want|declined|customer declined|refused by customer|owner declined|customer said no|said no to|wont pay for|owner doesnt want|customer doesnt want',
  reset:
    'reset it|put it back to|pushed back in|pushed it back in|pushed the breaker back in|clicked back in|flipped back on|flicked back on|re set it|set it back|pressed the reset|hit the reset|reset|re set',
  inflated:
    'topped the tyres up|aired it to|aired it up to|aired them to|aired them up to|inflated it to|pumped it to|pumped it up to|inflated tires|inflated tyres|inflated|aired tires|set tyre pressures|set tire pressures|pumped the tyres|aired the tires',
  washed:
    'washed off|washed down|washed underneath|washed it off|power washed|hosed it down|pressure washed underneath|cleaned underneath|washed the underside|rinsed the underside|washed|pressure washed|hosed off|steam cleaned|jet washed|hosed down',
  weighed:
    'ran it over the scales|put it over the weighbridge|weighed it up|got it weighed|weighed on pads|weighed all four corners|weighed corner by corner|weighbridge done|took it to the scales|on the weighbridge|weighed|put it on the scales|weighed it|across the scales',
};
