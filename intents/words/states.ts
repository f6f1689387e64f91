/** Spellings of the state of the coach and of work on it. Data only. */
import type { conditions, works } from '../names.ts';

/** Each with whether it holds. */
export const conditionWords: readonly (readonly [string, (typeof conditions)[number], boolean])[] = [
  [
    'key on|keys on|keys still on|key still on|key left on|ignition on|ign on|key turned on|with the key on|key is on|key in|switched the key on|turned the key on|keyed on',
    'key on',
    true,
  ],
  [
    'key off|ignition off|ign off|key out|key is off|with the key off|keyed off|turned the key off|switched off the key',
    'key on',
    false,
  ],
  [
    'engine ticking over|engine idling|engine at idle|engine is idling|motor ticking over|idling|engine running|engine on|eng running|eng on|motor running|at idle|engine run|engine started|running engine|with engine running|started the engine|eng idle|engine is running',
    'engine running',
    true,
  ],
  [
    'engine off|eng off|engine stopped|engine not running|shut the engine off|engine is off|engine shut off|engine shut down|switched off the engine',
    'engine running',
    false,
  ],
  [
    'pump running|with it running|while its running|pump runs|comp runs|comp running|compressor runs|compressor running|pump on|comp on|compressor on|pump is running|comp is running|compressor is running|pump going|comp going|pump is on|comp is on|pump still running|comp still running|pump is going|compressor is on|pump is still going|pump run|pump go|pump goes|comp run|compressor is going|runs|running|pump was running|compressor was running|pump came on|comp came on|compressor came on|pump kicked in|comp kicked in|compressor kicked in|pump kicked on|comp kicked on',
    'pump running',
    true,
  ],
  [
    'pump off|pump was stop|pump is stop|pump stop|comp off|compressor off|pump stopped|comp stopped|compressor stopped|pump not running|comp not running|compressor not running|pump is off|comp is off|compressor is off|pump at rest|pump resting|pump shut off|comp shut off|compressor shut off|pump stops|pump is stopped|pump switched off|pump cut out|pump is quiet|comp quiet|comp shut down|pump is not running|compressor is not running|pump isnt running',
    'pump running',
    false,
  ],
  [
    'cut the breaker|cut breaker|breaker cut|killed the breaker|threw the breaker|flipped the breaker off|cut comp power|cut compressor power|cut power to comp|killed comp power|comp power off|comp power isolated|power cut|pump power cut|breaker off|power off|power is off|breaker pulled|breaker is off|power to the pump is off|power is cut|isolated|power isolated|cut the power|cut power|pump isolated|compressor isolated|pulled the breaker|breaker open|cut the pump power|power killed|killed the power|killed power|killed the pump power|killed pump power|killed power to the pump|killed the compressor power|switched the breaker off|breaker out|isolator off|pump power off|compressor power off|tripped the breaker off|breaker turned off|turned the breaker off|opened the breaker|power to pump cut|cut power to the pump|power to the pump pulled|pump power pulled|power pulled|power to pump pulled',
    'pump power cut',
    true,
  ],
  ['power on|power back on|breaker on|power restored|breaker back on|breaker back in', 'pump power cut', false],
  [
    'in automatic|its in automatic|panel auto|panel in auto|panel on auto|panel in travel|travel position|in auto|set to auto|on auto|panel at auto|panel to auto|auto both|both auto|panel travel|auto mode|panel in automatic|panel on automatic|panel automatic|panel set to auto|panel back to auto|panel back in auto',
    'panel auto',
    true,
  ],
  [
    'panel fill|panel in fill|panel on fill|panel raise|panel on raise|panel in raise|panel up|in fill|panel to fill|fill position|panel in up|panel on up|on fill|raise position|panel set to fill',
    'panel fill',
    true,
  ],
  [
    'panel empty|panel in empty|panel on empty|panel lower|panel on lower|panel in lower|panel dump|panel down|panel to empty|panel on dump|panel in dump|in empty|on dump|empty position|on empty|panel set to empty|panel in down|panel kneel',
    'panel empty',
    true,
  ],
  [
    'panel shut|panels locked|panels are locked|panel is locked|panels in lock|panels shut|panel in shut|panel on shut|panel hold|panel on hold|panel in hold|shut both|both shut|in shut|panel to shut|panel closed|hold position|panel on lock|panel locked|in hold|on hold|panel at shut|panel set to shut|shut off at the panel|panel both shut|panel off|panel both sides shut|panel to hold|panel is shut|panel was shut|panel in shut both|on shut|panel shut both|panel neutral|panel is closed|panel shut both sides|shut on the panel|panel at hold|both on shut|both in shut|panel shut off',
    'panel shut',
    true,
  ],
  [
    'arm dead center|arm dead centre|arm at dead center|arm at dead centre|lever dead center|arm neutral|arm at neutral|arm in neutral|arms pinned|arm pinned|arms neutral|pinned neutral|arm centred|arm centered|arms pinned neutral|pinned at neutral|arm at centre|lever neutral|lever at neutral|arms at neutral|arm pinned neutral|arm pinned at neutral|lever in neutral|arm level|valve neutral|at neutral|lever pinned',
    'arm neutral',
    true,
  ],
  [
    'arms in fill|arms just in fill|arms at fill|arms to fill|arms up|arm up|arm in fill|arm to fill|arm at fill|arm just in fill|lever up|lifted the arm|arm lifted|arm raised|raised the arm|arm fill|held the arm up|arm held up|lever in fill|lever held up|arm pushed up',
    'arm fill',
    true,
  ],
  [
    'arms in exhaust|arms just in exhaust|arms down|arm down|arm in exhaust|arm to exhaust|arm at exhaust|lever down|arm exhaust|arm held down|arm lowered|held the arm down|lever held down|arm pushed down|arm pulled down',
    'arm exhaust',
    true,
  ],
  [
    'link off|link disconnected|links off|link unhooked|linkage off|rod off|link is off|link undone|linkage disconnected|disconnected the link|link taken off|took the link off|unhooked the link|link removed|links disconnected|drop link off|pulled the link off',
    'link connected',
    false,
  ],
  [
    'link on|link connected|link back on|links on|link hooked up|linkage connected|link refitted|hooked the link back up|linkage back on',
    'link connected',
    true,
  ],
  [
    'tank valve closed|closed the tank valve|shutoff closed|closed the shutoff|shutoff after the tank closed|closed the shutoff after the tank|tank shutoff closed|closed the tank cock|shut the tank cock|outlet closed|tank outlet closed|tank outlet shut|tank isolated|outlet cock closed|cock closed at the tank|tank valved off|outlet plugged|tank outlet plugged|outlet shut|tank outlet off|outlet of the tank closed|plugged the tank outlet|closed the tank outlet|tank cock closed|tank shut off|tank plugged',
    'tank outlet closed',
    true,
  ],
  [
    'tank valve open|opened the tank valve|opened the tank cock|tank cock open|opened the shutoff|outlet open|tank outlet open|tank outlet opened|opened the tank outlet',
    'tank outlet closed',
    false,
  ],
  [
    'on jacks|on a bottle jack|on the bottle jack|on bottle jack|on a floor jack|on the floor jack|on a trolley jack|on the trolley jack|on a hydraulic jack|on one jack|on a jack|on the jack|jacks down|jacked up|up on jacks|on jack|levelling jacks down|leveling jacks down|jacks are down|still on the jacks|on the jacks|on the levelling jacks|with jacks down|jack up',
    'on jacks',
    true,
  ],
  [
    'jacks up|off the jacks|off jacks|jacks stowed|jacks are up|jacks in|jacks retracted|jacks off|no jacks|not on jacks',
    'on jacks',
    false,
  ],
  [
    'on stands|on axle stands|stands under|stands under the frame|on jack stands|frame on stands|its on stands|stands in|on rated stands|stands under frame|stands are in|stands are under|yes on stands|up on stands|supported on stands|is on stands|frame is on stands|stands set|on the stands|axle stands in|axle stands under|stands under her|frame on rated stands|sat on stands|stands under it|axle stands under the chassis|chassis on stands|now on stands',
    'on stands',
    true,
  ],
  [
    'not on stands|no stands|without stands|off stands|off the stands|took it off the stands|not on stands yet|stands out|stands not in',
    'on stands',
    false,
  ],
  [
    'wheels have chock|wheels have chocks|wheels got chocks|wheels with chocks|wheels with the chocks|chocks are on|chocks on|wheels chocked|chocked|chocks in|wheels are chocked|chocks under|its chocked|chocked up|chocks in place|chocks are in|both wheels chocked|chocked and clear|is chocked|chocks down|chocked the wheels|chocks set|chocked it|wheels are choked|choked the wheels',
    'wheels chocked',
    true,
  ],
  ['not chocked|no chocks|wheels not chocked|chocks out|unchocked', 'wheels chocked', false],
  [
    'over the pit|over a pit|over pit|on the pit|in the pit|on ramps|on the ramps|on the lift|over ramps|on drive on ramps',
    'over pit',
    true,
  ],
  [
    'cribbed|on cribbing|cribbing in|cribbing under|cribbing is in|cribbed up|on rated cribbing|cribbing under the frame',
    'cribbed',
    true,
  ],
  [
    'to the flat|onto the flat|to flat ground|to level ground|onto level ground|to a flat spot|onto flat concrete|flat bay|level bay|on a flat bay|on a level bay|yard is level|bay is level|floor is flat|level floor|floor level|floor is level|on level ground|flat floor|level ground|flat ground|on a level floor|on flat ground|floor checked level|level concrete|on the flat|ground is level|on the level',
    'floor level',
    true,
  ],
  [
    'yard is not level|the yard is not level|ground is not level|yard not level|bay is not level|sloping floor|uneven ground|on a slope|floor not level|floor is not level|on a slant|not level ground|crowned road|uneven floor|sloping ground|on a hill|on grass|not on level ground|slopey floor|slope',
    'floor level',
    false,
  ],
  ['loaded|fully loaded|with a load|fully laden|laden|loaded up|full load|loaded for a trip|with gear', 'loaded', true],
  ['empty coach|unloaded|unladen|no load|not loaded|empty load|coach empty|coach is empty', 'loaded', false],
  [
    'full water|full of water and fuel|water topped off|full fresh water|full of fresh water|water tank full|filled the fresh water tank|filled the water tank|filled up the water tank|topped up the fresh water|water tank is full|fresh water tank full|filled the fresh water|topped off the water tank|full water tank|fresh water full|full of fresh water|fresh tank full|full fresh tank|full fresh water tank|full fresh water',
    'water tank full',
    true,
  ],
  [
    'just pumped|just pumped up|right after pumping|just aired up|straight after pumping|freshly pumped|fresh off the pump|just topped up|right after it pumped|just after pumping|only just pumped|pump just shut off|pump just stopped|pump just cut out|pump just kicked off',
    'just pumped',
    true,
  ],
  [
    'settled|let it settle|left to settle|settled down|let settle|its settled|all settled|allowed to settle',
    'settled',
    true,
  ],
  [
    'driving|on the road|going down the road|when driven|while driving|when driving|under way|on the highway|on the motorway|while driven|on the move',
    'driving',
    true,
  ],
  [
    'dumped all air|dumped all the air|all air dumped|all the air dumped|let all the air out|let all air out|aired it all out|dumped everything|air vented|air dumped|air is dumped|air bled|air let out|air is out|air out|all air out|vented everything|all vented|everything vented|system empty|no air in it|vented all the air|let all the air go|all at zero|all the air is out|bled off everything|no pressure anywhere|everything at zero|all air is out|air all out|bled right down|dumped all the air|all stores at zero|air is gone|all air gone',
    'air vented',
    true,
  ],
  [
    'tank drained|tank empty|tank is empty|tank at zero|tank at 0|tank is drained|tank zero|tank is at zero|tank is at 0|tank bled down|tank down to zero|no air in the tank|tank is zero|bled the tank|tank drained down|drained the tank to zero|tank emptied|no pressure in the tank|tank bled to zero',
    'tank drained',
    true,
  ],
  [
    'bags vented|bellows vented|bags empty|bags dumped|bellows empty|air bags empty|airbags empty|both bags vented|bags are down|bags are empty|no air in the bags|bags deflated|airbags vented|bags let down|bellows deflated|vented the bags|vented both bags|air springs vented|dumped the bags|dumped both bags|bags exhausted|bags let right down|both bags empty|bellows let down|springs vented',
    'bellows vented',
    true,
  ],
  ['head vented|head is at zero|head pressure off|discharge line vented|head bled', 'head vented', true],
  [
    'people is all away|people are all away|everyone is away|everybody away|people away|all people away|nobody is anywhere near it|nobody anywhere near it|nobody near it|standing clear|everybody clear|all clear|stood clear|nobody under|nobody underneath|no one under|clear of it|people clear|everyone clear|nobody near|keeping clear|stand clear|everyone is clear|everybody is clear|no one underneath|all stood clear|im clear|nobody under it',
    'people clear',
    true,
  ],
  [
    'glasses on|goggles on|eyes covered|eye protection|safety glasses on|eye protection on|specs on|safety specs on|got glasses on|wearing glasses|wearing goggles|wear safety glasses|wearing safety glasses|wear glasses|wear goggles|wore glasses|glasses are on|goggles are on',
    'eyes covered',
    true,
  ],
  ['no glasses|no goggles|no eye protection|without goggles|without glasses', 'eyes covered', false],
  [
    'battery disconnected|battery off|batt disconnected|battery isolated|battery lead off|negative lead off|batt off|battery unhooked',
    'battery disconnected',
    true,
  ],
  [
    'fuse out|pump fuse out|pump fuse is out|comp fuse out|comp fuse is out|fuse pulled|fuse is out|pulled the fuse|took the fuse out|fuse removed',
    'fuse out',
    true,
  ],
  ['fuse in|fuse back in|fuse is in', 'fuse out', false],
  [
    'chucking it down|pouring down|tipping it down|tipping down|bucketing down|raining|wet weather|in the rain|rain',
    'wet weather',
    true,
  ],
  ['same time|same moment|at the same moment|at the same time|both read together', 'same moment', true],
  [
    'tripped unloader|tripped unldr|tripped the unloader|tripped unloader by hand|unloader tripped|unloader tripped by hand',
    'unloader tripped',
    true,
  ],
  ['got no plug|no plug|havent got a plug|no plugs|dont have a plug|aint got a plug', 'no plug', true],
  [
    'no second gauge|only one gauge|no other gauge|no spare gauge|no test gauge|dont have a second gauge|only got one gauge|havent got a second gauge|got no second gauge',
    'no second gauge',
    true,
  ],
  ['no test port|no test point|has no test port|theres no test port', 'no test port', true],
  ['no helper|on my own|by myself|alone here|working alone|nobody to help', 'no helper', true],
];

export const workWords: Readonly<Partial<Record<(typeof works)[number], string>>> = {
  replaced:
    'put same size back in|put the same size back in|put the same size in|fitted same size|same size back in|put same rating in|put in the same size|replaced|put the new|fitted the new|installed the new|threw the new|bolted the new|stuck the new|new one in|a new one in|new one fitted|new one on|put a new one in|put in a new one|fitted a new one|a new one|repl|swapped|changed|c/o|c/out|changed out|new|fitted a new|renewed|chg|put in a new|put a new|installed a new|swopped|change out|fitted new|put new|installed new|swapped out|replace|replaced with new|put on a new|fitted another|swap|change|exchanged|renew|fit new|replacing|swapping|changing|chngd|install new|r/r|swaped|stuck a new|put another',
  repaired:
    'repaired|straightened|bent back|bent it back|welded up|fixed|mended|repair|patched|patched up|rep|sorted|fix',
  rebuilt: 'rebuilt|overhauled|rebuild|kit in|resealed|overhaul|reconditioned|rekitted',
  cleaned:
    'cleaned|cleaned out|blew out|cleaned up|clean out|unblocked|cleared|blown through|blew through|cleaning|de-iced|freed off|flushed',
  tightened:
    'tightened|nipped up|snugged|tightened up|retightened|torqued up|did up|cinched|re-torqued|tighten|nipped|tightend|snugged up|done up|tighten up|tightening|snug up|pinched up|redid',
  adjusted:
    'adjusted|tweaked|adjust|wound up|wound in|wound out|wound down|backed off the nut|turned the nut|readjusted|moved the arm|adj|turned in|backed out|adjusting|re-adjusted|lengthened|shortened|re-set',
  set: 'set|set the|reset the height|set height|set heights|set up',
  soaped:
    'soaped|sprayed dish soap on|sprayed dish soap|sprayed soap on|sprayed soapy water on|brushed soap on|brushed soapy water on|put dish soap on|with soap|with the soap|with soapy water|soap test|soap tested|did a soap test on|bubble test|soap test on|soap|sprayed|soapy watered|sprayed soap|soaped up|leak checked|bubble tested|soapd|sprayed soapy water|soaping|soapy water on|soap water on|put soap on|put soapy water on|sudsed|soapy water',
  drained:
    'drain tank|drain the tank|drained|bled the tank down|bled tank down|let the tank down|ran the tank down|bled the water|drain off|bled off|drained off|drained out|opened the drain',
  checked:
    'checked|chk|chkd|inspected|looked at|inv|investigated|looked over|had a look at|check|tested|examined|went over|gone over|test|traced|inspect|verified|checkd|chked',
  removed:
    'yanked|yanked out|screwed out|removed|unscrewed|i take off|i take out|we take off|i took off|pull|took off|pulled|took out|taken off|pulled off|stripped|removing|dropped out|taken out|took the',
  refitted:
    'refitted|reinstalled|put back|bolted back|refit|back on|put it back|back in|reassembled|re-fitted|reseated|remade|re-made',
  rerouted:
    'rerouted|moved the line|re-routed|tied back|route it other way|routed it another way|zip tied|clipped back|cable tied|ty wrapped|clipped up|tie wrapped',
  lubricated: 'lubricated|greased|oiled|lubed',
  shimmed:
    'shimmed|added shims|added a shim|put a shim|put shims|took out a shim|removed a shim|fitted shims|added shim',
  levelled: 'levelled|leveled|levelled it|releveled|relevelled|levelled up|leveled it',
  'pumped up':
    'pumped up|aired up|pumped it up|charged|built pressure|filled the tank|pumped|recharged|charged up|built air|aired it up|built up to|ran it up|built it up|topped up',
  vented:
    'vented|let out all the air|let out the air|let all the air out|released all the air|let all air out|dumped the air|let the air out|exhausted|dumped|let air out|released the air|blew down|deflated',
  opened: 'opened|cracked open|undid|cracked|loosened|broke loose',
  closed: 'closed|shut the|closed off|turned off the cock',
  disconnected:
    'disconnected|i disconnected|we disconnected|unhooked|disconnected the|took the link off|pulled the link|unplugged|unclipped',
  connected:
    'connected|reconnected|hooked up|hooked back up|plugged in|plugged back in|reconected|hooked the|re-connected',
  tripped: 'tripped the',
  tapped: 'tapped|a tap with|a tap|a whack|hit|whacked|gave it a tap|knocked|gave it a whack|tapped on|smacked|thumped',
  'road tested':
    'road tested|road test|test drove|drove it|test driven|drove|roadtest|took it for a drive|road tested it|been for a drive|took it round the block',
  'overnight tested':
    'overnight test|left overnight|overnight tested|left it overnight|stood overnight|parked overnight|overnight check|sat overnight|stood it overnight',
  declined:
    'no thanks on|no thanks to|said no thanks to|said no thanks|does not want|declined|customer declined|refused by customer|owner declined|customer said no|said no to|wont pay for|owner doesnt want|customer doesnt want',
  reset: 'reset|re set',
  inflated:
    'aired it to|aired it up to|aired them to|aired them up to|inflated it to|pumped it to|pumped it up to|inflated tires|inflated tyres|inflated|aired tires|set tyre pressures|set tire pressures|pumped the tyres|aired the tires',
  washed: 'washed|pressure washed|hosed off|steam cleaned|jet washed|hosed down',
  weighed: 'weighed|put it on the scales|weighed it|across the scales',
};
