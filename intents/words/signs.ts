/** Spellings of what is seen, heard and felt. Data only. */
import type { signs } from '../names.ts';

type SignName = (typeof signs)[number];
export const signWords: Readonly<Partial<Record<SignName, string>>> = {
  bubbles:
    'dry|bone dry|all dry|stayed dry|stays dry|bubbles|bubbling|bubble|soap bubbles|suds|lather|fizz|fizzing|foam|foaming|froth|frothing|bubling|blowing bubbles|bubbels|bubbled|bubels|fizzes',
  hiss: 'quiet|all quiet|dead quiet|silent now|quiet now|hiss|hissing|hisses|whoosh|sizzle|audible|pssst|hissin|hising|can hear air|hear air|air sound|sound of air|hear air sound|hear sound of air|air noise|hear a his|a his|hear leak|hear it leaking|hear air leaking|whistling|hear a hiss',
  leaks:
    'blows back|blowing back|flows back|passes back|lets it back|leaks back|bleeds back|comes back through|air comes back|air comes back thru|leaks|leaking|air come out|air comes out|air go out|air goes out|come out air|leakin|leakg|leak|laek|leaaking|weeping|weeps|loosing air|pissing|passing|bleeding|seeping|seeps|leaky|leeking|leek|leaked|weep|blowing by|bleeds|leaking air|air leaking|air coming out|letting by|leak off|lets air out|air escaping|loses air|blowing air|air leak|leeches air|blowing',
  puffs: 'puffs|puffing|puff|puffs every|spits',
  exhausts:
    'exhaust air|is exhaust air|exhausts air|exhausting air|exhausts|exhausting|blows off|venting constantly|blows from|dumps air',
  low: 'down on the ground|down on the deck|down on the floor|flat on the ground|flat on the deck|low|lo|down|hangs low|too low|way down|sits low|riding low|sunk|sunken|squat|squatting|lower|saggy|is down|went down|dropped|sitting down|lower than the other|sat down|lowered|collapsed',
  high: 'high|too high|riding high|sits high|hi|higher|nose up|up too high|jacked up high',
  leans:
    'leans|leaning|lean|listing|lists|tilting|tilts|tilted|tipped|cocked|leans over|crooked|tilt|leans to|leaning to',
  level:
    'holding level|holds level|held level|staying level|level|sits level|dead level|straight|level now|even|lvl|is level|stays level|stood level',
  'on stops':
    'on stops|down to the stops|down on the stops|down on its stops|down to its stops|onto the stops|on the stops|on the bump stops|on bump stops|on the rubber bumpers|on bumpers|sitting on the tires|right on the tires|sitting right on the tires|on the rubbers|bottomed out|slammed|on its stops|on the bumpstops|on bumpstops|down on stops|on the deck|flat on the stops|on the bump stop|sitting on the stops|sat on the stops|on the rubber stops|down on the rubber stops|down on the rubber|sitting on the ground|sat on the ground|sitting on the floor|on the rubber|down on the tyres|down on the tires|sat on the tyres|on the tyres|on the tires|on its tires|on its tyres|on its bump stops|on their stops|down on the bumps',
  sags: 'creeping down|creeps down|crept down|bleed down|bleeding down|drop overnight|go down|going down|leak down|leaking down|went down overnight|sags|sagging|sag|sinks|sinking|sunk overnight|settles|bleeds down|leaks down|airs down|settles out|sag down|drops overnight|goes down|sinks down|sank|sagged|goes down overnight|comes down|lowers itself|sink|drops down|falls overnight|goes low|sags down|keeps going down',
  rises:
    'rises|rising|climbs|creeps up|lifts itself|comes up on its own|goes up on its own|raises|lifts|goes up by itself|goes up|coming up|rose',
  holds:
    'holds|holding|hold|held|stays up|stays put|steady|no change|didnt move|hasnt moved|not moved|same as it was|stayed|holds fine|no movement|holds steady|stays the same|does not drop|has not moved|hasnt dropped|didnt drop|no drop|not dropped|doesnt drop|rock solid|stable|not moving|holds air|stays level all night|didnt go down|hasnt budged|not budged|aint moved|holds pressure|not dropping|didn t drop',
  drops:
    'losing pressure|lost pressure|drops|drains down|drains off|bleeds off|drains away|bleeds away|leaks away|dropping|falls|falling|loses pressure|drop|dropped|fell|fall|loosing pressure|dropin',
  'comes up driving':
    'comes up when i start the engine|comes up when the engine starts|comes up when i start it|comes up when started|comes up with the engine running|comes up after he drives|comes up when he drives|comes up once he drives|comes up after she drives|comes up when she drives|comes up after they drive|comes up when they drive|comes up driving|comes up when driven|comes up when driving|pumps up when driving|comes up after driving|comes up once driven|levels once driven|comes back up driving|comes up on the road|comes up when i drive|comes back up when driving|comes back up when driven|comes up going down the road|picks up when driving|lifts when driving|pumps back up when driving|comes right once driven|comes up after a drive|levels out when driving|levels up when driving|comes up with the engine|comes up when the engine runs|comes up once the engine is running|comes back up when i drive|rises when driving|comes back up on the road|comes up as soon as its driven|levels out driving|comes back up after driving',
  flat: 'flat|goes flat|flat out|deflated|empty bag|is flat|flattened',
  'runs on':
    'wont shut off|didnt stop|didnt shut off|didnt quit|will not shut down|wont shut itself off|will not cut off|will not kick off|will not quit|does not shut down|doesnt shut down|isnt cutting out|never shuts down|wont stop running|doesnt stop running|never stops running|never stop|no stopping|not stop working|never shuts off|wont stop|never stops|doesnt stop|never quits|wont quit|keeps running past|wont cut out|never cuts out|doesnt shut off|does not shut off|does not stop|runs on|doesnt cut out|does not cut out|will not shut off|will not stop|wont turn off|doesnt turn off|never turns off|not shutting off|not cutting out|not shut off|no stop|not stopping|cant stop it|wont switch off|fails to cut out|doesnt quit|running past cut out|wont shut down|wont kick off|never kicks off|wont cut off|never cuts off|keeps going and going|isnt shutting off|isnt stopping|does not quit|dont stop|not stop|never goes off|wont go off|will not cut out|never switches off|not want stop|doesnt shut itself off|not cutting off',
  'wont run':
    'not turn|does not turn|doesnt turn|not turning|wont turn over|aint turning over|isnt turning over|not turning over|aint turning|isnt turning|aint running|no start|no run|wont run|wont start|doesnt run|does not run|doesnt start|does not start|no go|silent|wont turn|doesnt turn over|dont want to run|doesnt want to run|dont want run|not want to run|wont fire up|wont do anything|refuses to start|no life|no sign of life|wont run at all|not come on|wont come on|doesnt come on|not running at all|wont kick in|never starts|wont kick on|not starting|doesnt kick in|will not run|will not start|wont go|not start|not run|never comes on|fails to start|fails to run|refuses to run|wont turn on|not coming on|no pump|no sound|doesnt kick on|does nothing|no noise|doesnt do anything|dont run|dont start|wont even start|not kicking in|isnt coming on|no response|completely dead|isnt running|never kicks in|never came on|doesnt turn on',
  'runs constantly':
    'pump work all time|pump work all the time|pump works all the time|pump work always|runs constantly|runs all night|on all night|runs day and night|runs all morning|always working|working always|working all the time|work all time|always work|always pumping|pumps all the time|runs all the time|constantly running|runs continuously|never rests|runs nonstop|runs non stop|always running|runs constant|always on|on all the time|runs a lot|constant running|runs forever|keeps running|always run|always runs|runs the whole time|goes all the time|running flat out|continuous running|is running all day|works all the time|run all time|runs all day|non stop|nonstop|permanently running',
  'short cycles':
    'came on every|came on about every|comes on about every|came on around every|comes on around every|kicks on about every|starts every|starts up every|fires up every|kicks in every|cuts in every|come on and go off again every|come on and go off every|comes on and goes off again|come on and go off|comes on and off again|coming on every|keeps coming on every|keep coming on every|kicks on every|comes on every few minutes|comes on and off|goes on and off|comes on and off every few minutes|keeps coming on and going off|coming on and going off|comes on and goes off|kicks on and off|short cycles|short cycling|cycles often|cycling|on and off|kicks in every few minutes|rapid cycling|cycles|short cycle|cycles a lot|keeps cutting in and out|keeps cycling|keeps kicking in|comes on every few minutes|cycling too much|cuts in and out|cycles constantly|cycling on and off',
  clicks: 'clicks|clicking|click|just clicks|clunks once|clicks only|clicked',
  hums: 'hums|humming|hum|buzzes|buzzing|groans',
  stalls: 'stalls|stalling|stalls against head|grunts|stalled|struggles|stall',
  'no air':
    'no air|makes no air|not making air|pumps no air|runs but no air|no output|makes nothing|isnt making air|no air out|no air coming|not building|wont build|wont build pressure|no pressure|wont build air|doesnt build|not pumping|not building pressure|does not build|doesnt make air|isnt building|not build pressure|no build up',
  'slow build':
    'slow build|slow to build|builds slow|slow pumping|slow to pump|takes forever|builds slowly|slow to fill|pumps slow|slow to come up|slow building|slow to pump up|takes ages|fills slow|takes for ever|slow build up|takes too long|slow recovery|takes long|pump slow|slow',
  'blows fuse':
    'blows fuse|blows fuses|pops fuse|pops the fuse|blows the fuse|keeps blowing fuse|keeps blowing fuses|popping fuses|fuse pops|fuse blows|fuse keeps blowing|fuse goes|fuse keeps popping|fuse blew|blows a fuse|trips the breaker|trips breaker|breaker trips|popped a fuse|blown the fuse',
  'quits hot':
    'quits hot|shuts itself off|shuts itself down|shuts off on its own|cuts out on its own|goes off on its own|quits when warm|overheats and stops|overheats and shuts off|quits when hot|cuts out hot|thermal cut out|thermals out|stops when hot|trips on heat|goes off hot|quits after a while|stops hot|quits when it gets hot|thermal trips|cuts out when hot|trips thermal|overheats and quits|shuts down hot',
  starts:
    'restarts|restarted|starts back up|pump started|air pump started|comp started|compressor started|starts|pump took off|pump takes off|takes right off|now pump start|pump start now|pump start again|starts fine|fires up|starts up|kicks off fine|started for me|started at the first attempt|starts first time|started straight away|starts right up|fires right up|starts easy|starts easily|starts alone|starts by itself|starts on its own|kicked in on its own',
  works:
    'pump work|now pump work|works|working|works fine|works ok|functions|operates|works now|working fine|operates fine',
  'not working':
    'doesnt pull in|wont pull in|not pulling in|does not pull in|not working|not good working|not work good|no work good|not working good|not working right|not n/w|not operational|n/w|n/g|ng|n g|u/s|inop|inoperative|doesnt work|does not work|wont work|unserviceable|shot|kaput|knackered|duff|faulty|bad|failed|dead|gone|no good|defective|bust|busted|buggered|toast|fubar|isnt working|isnt right|not right|not good|has had it|had its day|goosed|stuffed|dud|fried|packed up|failing|duf|going bad|broke|not work|dont work|no work|on its way out|to blame|the culprit|the problem|acting up|cooked',
  stuck: 'stuck|sticking|seized|jammed|sticks|siezed|stuck solid|frozen up solid|sticky',
  'stays closed': 'stays closed|stuck closed|stuck shut|wont open',
  'stays open': 'stays open|stuck open|wont close|hung open',
  reversed: 'reversed|wrong way round|backwards|on backwards|upside down|fitted backwards|swapped over',
  binding: 'binding|binds|stiff|tight',
  hot: 'hot|red hot|too hot to touch|o/heating|overheating|overheated|very hot|roasting|overheats|too hot|getting hot|boiling hot|o/heat',
  burnt: 'burnt|burn|burns|burned|pitted|burnt out|blackened|charred|arced|burnt contacts|melted|burned out',
  corroded: 'corroded|corrosion|rusty|rusted|green|crusty|rust|furred up|corrode|rusty as hell',
  welded: 'welded|welded shut|stuck together|welded closed|contacts welded',
  tripped: 'tripped|popped out',
  blown: 'is blow|is blow again|blown|popped|pops|popping|blows',
  loose: 'loose|slack|undone|backed off|wobbly|rattling|come loose|worked loose|lose',
  bent: 'bent|bend|bended|bowed|twisted|buckled',
  broken:
    'broken|brake in|break in|a break in|snapped|cracked off|sheared|fell off|broken off|come off|came off|fallen off|fractured|broke off|is off',
  disconnected:
    'come adrift|came adrift|adrift|had come adrift|has come adrift|disconnected|disconected|is disconnect|is disconected|is disconect|off its ball|popped off|unhooked|hanging|unclipped|hanging off|dangling|hanging loose|detached',
  slipped: 'slipped|moved on the shaft|slid|clamp moved|slipping',
  missing: 'missing|not there|not fitted|isnt there',
  kinked: 'kinked|kink|pinched|crushed|kinks|squashed|kinked up|trapped',
  plugged:
    'plugged|gunged up|clogged|blocked|bunged up|choked|restricted|gummed up|stopped up|clog|blockage|blocked up|blockd|restriction',
  dirty:
    'dirty|dust|dusty|full of dust|full of fluff|mucky|filthy|full of dirt|muddy|crud|full of crud|dirt|gunk|black|caked',
  frozen:
    'frozen|frost|frosted|frosty|froze|iced|iced up|ice|freeze up|froze solid|freezes|freezing up|frozen up|froze up|freeze',
  wet: 'wet|damp|soaked',
  oily: 'oily|oil|oil in it|oil film|oil mist',
  water:
    'water|moisture|condensate|wet inside|full of water|water in it|lots of water|water out|water came out|water comes out',
  milky: 'milky|mayo|emulsion|like milk|milky water|milky sludge',
  cracked:
    'cracked|cracks|crack|cracking|split|splits|cracks all over|cracks up and down|splitting|crazed|cracky|hairline crack',
  'cords showing':
    'cords showing|cord showing|cords|cord|can see cord|cords visible|see the cords|threads showing|cord visible|fabric showing|canvas showing|cover gone|exposed thread|exposed cord|cords exposed|threads coming out|see the cord|can see the cords|can see cords|down to the cord|down to cords|showing cord|showing cords|cords through|cord showing through|exposed cords|see the fabric|see cords|see cord|down to the cords|threads show|cord is visible|see threads',
  chafed:
    'chafed|touching|touch the frame|touches the frame|fouling|chafing|rubbed|rubbing|rub mark|rub marks|scuffed|worn through by|abrasion|rubs|wore a hole|chafe|rubbed through|shiny spot|rubbing on|rub|chafing on|fretted|chaffed|rubbed thru|scuff mark|scuffing|chaffing',
  torn: 'small cut|little cut|has a cut|a small cut|torn|a cut|cut in it|gash|slash|slit|ripped|tear|rip|burst|blown out|hole|puncture|punctured|hole in it|pinhole|pin hole|tore|blew out|popped bag|holed',
  swollen: 'swollen|bulging|bulge|ballooned|bulged',
  'off line':
    'hot dogging|off line|walks|odd angle|crooked on its seat|off centre|off center|banana|sits crooked|out of line|misaligned',
  worn: 'worn|worn out|wear|wore out|knackered worn|sloppy|play in it|has play|well worn|shagged|worn badly|worn down|worn right down|badly worn|free play in it|got play|shot with wear|wore',
  aged: 'aged|dry rot|dry rotted|perished|perishing|weather checked|old|dried out|dryrot|dry rotting|weathered|weather cracked|hardened',
  noisy:
    'make big noise|makes big noise|makes a big noise|make noise|big noise|make much noise|makes much noise|make noise|makes a lot of noise|lot of noise|noisy|loud|rattle|rattles|squeals|squeaks|knocks|knocking|grinding|clatter|clattering|squeak|creaks|makes noise|makes a noise|creaking',
  bangs: 'clunk|clunks|clunking|clunked|bang|bangs|banging|thump|thumps|bang from the rear|thumping|big bang|bang bang',
  cold: 'cold|stone cold|cold to touch|dead cold',
  warm: 'warm|warm to touch|luke warm|lukewarm',
  'leaks oil':
    'sweating|sweaty|sweats|leaks oil|weeping oil|oil leak|oil all over|oil leaking|weeping fluid|leaking fluid|pissing oil|oil weeping|misting',
  'wrong part':
    'wrong part|wrong parts|wrong part number|wrong type|wrong length|not the right part|not the right one|too long|too short|longer than the other|longer than the other one|shorter than the other|shorter than the other one',
  bounces:
    'bounces|jumping|jumps|bouncy|bouncing|porpoises|wallows|floaty|bounce|pogo|bounces like a boat|wallowing|bounching|floats|bounces around|hops|bounces up and down',
  bottoms:
    'bottoms|bottoming|bottoms out|bottoming out|hits the stops|bottom out|hits bump stops|hits the bump stops|crashes over bumps',
  wanders: 'wanders|wander|wandering|drifts|walks all over|wanders all over|wanders on the road|all over the road',
  pulls:
    'pull|pulls|pulls left|pulls right|pulls to the left|pulls to the right|pulls to one side|pulling to one side|pulls to left|pulls to right',
  'worn inside':
    'eaten on the inside|eaten in the inside|eaten inside|wearing on inside edges|wearing on the inside edges|inside edges|inner edges|worn on inside edges|inside worn|worn inside|inner edge worn|inside edge wear|inside edge worn|inside edge gone|worn on the inside|inside wear|inner edge wear|worn on inside|inner edge gone|inside edge|worn inner edge|inside edge is gone|inner edge|inners worn|wearing on the inside|wearing inside|inner shoulder worn|wear on the inside',
  'worn outside':
    'outside worn|worn outside|outer edge worn|outside edge wear|outside edge worn|worn on the outside|outer edge wear|outside wear|outside edge|outer edge|wear on the outside|wearing outside|outer shoulder worn',
  feathered: 'feathered|feathering|feather edge|feather wear|feathers|feathery',
  cupped: 'cupped|cupping|scalloped|scalloping|scallops|cups|cuped',
  scrubbed: 'scrubbed|scrub|scrubbing|choppy|scrubs',
  'reads wrong':
    'reads wrong|not reading correctly|not reading right|not reading true|reads incorrectly|doesnt read right|doesnt read true|reads high|reads low|off by|way off|inaccurate|lying|lies|wrong reading|is wrong|cant be trusted|gauge lies|is lying|reads off|out by|not accurate',
  'reads right': 'reads right|spot on|accurate|reads true|is right|checks out good|correct reading',
  'does not move':
    'hasnt moved|has not moved|didnt move|not moved|havent moved|does not move|doesnt move|not move|wont move|stuck needle|needle stuck|needle doesnt move|never moves|frozen needle|does not budge|dont move|needle dead',
  'gauges agree':
    'gauges agree|agrees|same on both gauges|gauges match|both gauges same|matches the dash|both gauges read the same|same on second gauge|agree|second gauge agrees|second gauge same|gauges agree with each other|both gauges the same|two gauges agree|test gauge same|test gauge agrees|second gauge says the same|other gauge says the same',
  'gauges disagree':
    'gauges disagree|disagrees|dont match|dont agree|gauges differ|gauges dont agree|gauges dont match|gauges do not agree|disagree|gauges do not match|second gauge differs|two gauges differ|second gauge disagrees|different on second gauge',
  fills:
    'aired up|fills|fills fine|inflates|airs up|bag fills|fills up|pumps up|comes up|comes up fine|goes up fine|raises ok|fills ok|fills up fine|inflated ok',
  'does not fill':
    'wont come back up|doesnt come back up|does not come back up|will not come back up|does not fill|doesnt fill|wont fill|wont inflate|wont air up|no fill|not filling|wont come up|wont raise|wont go up|doesnt come up|does not come up|wont lift|not fill|doesnt raise|doesnt inflate|not come up|never comes up|will not fill|will not come up|not going up|not inflating|wont rise|dont fill|doesnt go up|doesnt lift|doesnt air up|no air to the bag|not rising|not lifting|wont pump up|will not inflate|not coming up',
  empties:
    'empties|dumps fine|dumps|deflates|lets down fine|exhausts ok|vents fine|goes down fine|empties ok|lets down',
  'does not empty':
    'does not empty|doesnt dump|wont dump|wont go down|wont deflate|doesnt exhaust|doesnt empty|wont exhaust|wont lower|wont let down|not dumping|wont vent|doesnt go down|does not dump|will not dump|wont come down|doesnt come down|wont empty|will not empty|not emptying',
  ok: 'bang on|spot on|dead on|on the money|right on the money|on the nose|on the button|bang on the money|no play|no free play|no slop|runs straight on the road|runs straight on|runs straight|tracks straight|drives straight|runs straight and true|diagonals the same|diagonals are the same|diagonals equal|diagonals match|ok|okay|fine|good|alright|all right|great|perfect|no problem|checks out|nothing wrong|all good|looks good|looks ok|looks fine|tests good|tests ok|in spec|within spec|to spec|is right|checked out ok|sound|no issues|no fault found|nff|healthy|good condition|a1|as it should be|back to normal|normal|no trouble|good order|clean',
};

/** Where a sign is when no place is named and none is carried. */
export const signHomes: Readonly<Partial<Record<SignName, string>>> = {
  'runs on': 'pump',
  'wont run': 'pump',
  'runs constantly': 'pump',
  'short cycles': 'pump',
  clicks: 'pump',
  hums: 'pump',
  stalls: 'pump',
  'no air': 'pump',
  'slow build': 'pump',
  'blows fuse': 'pump',
  'quits hot': 'pump',
  starts: 'pump',
  stops: 'pump',
  'pulls down': 'pump',
  leans: 'coach',
  sags: 'coach',
  level: 'coach',
  bounces: 'coach',
  bottoms: 'coach',
  wanders: 'coach',
  pulls: 'coach',
  bangs: 'coach',
  'comes up driving': 'coach',
  'on stops': 'coach',
  low: 'coach',
  high: 'coach',
  rises: 'coach',
  flat: 'coach',
  'gauges agree': 'gauge',
  'gauges disagree': 'gauge',
  'reads wrong': 'gauge',
  'does not move': 'gauge',
  'cords showing': 'bellows',
  feathered: 'tyre',
  cupped: 'tyre',
  'worn inside': 'tyre',
  'worn outside': 'tyre',
  scrubbed: 'tyre',
  fills: 'coach',
  'does not fill': 'coach',
  empties: 'coach',
  'does not empty': 'coach',
  holds: 'coach',
  ok: 'coach',
  'off line': 'bellows',
  water: 'drain',
  milky: 'drain',
};
/** Signs only the pump can have: a bare "it" or the coach is not their place. */
export const pumpSigns: ReadonlySet<string> = new Set([
  'runs on',
  'wont run',
  'runs constantly',
  'short cycles',
  'no air',
  'slow build',
  'blows fuse',
  'quits hot',
  'stalls',
  'hums',
]);
/** Signs whose place is named after them: "bubbles at the left crimp", "leak right bag". */
export const placeAfter: ReadonlySet<string> = new Set([
  'bubbles',
  'hiss',
  'leaks',
  'puffs',
  'water',
  'oily',
  'cracked',
  'chafed',
  'torn',
  'worn',
  'low',
  'high',
  'kinked',
  'loose',
  'corroded',
  'leans',
  'hot',
  'exhausts',
  'burnt',
  'bent',
  'broken',
  'noisy',
  'dirty',
  'plugged',
  'cords showing',
  'worn inside',
  'worn outside',
  'feathered',
  'cupped',
  'bangs',
  'frozen',
  'aged',
  'milky',
  'puffs',
]);
/** Denied, these are their opposite, not an absence. */
export const opposites: Readonly<Partial<Record<SignName, SignName>>> = {
  works: 'not working',
  fills: 'does not fill',
  empties: 'does not empty',
  'gauges agree': 'gauges disagree',
  starts: 'wont run',
  ok: 'not working',
  'does not move': 'works',
};
