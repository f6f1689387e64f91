/** Spellings of what is seen, heard and felt. Data only. */
import type { signs } from '../names.ts';

type SignName = (typeof signs)[number];
export const signWords: Readonly<Partial<Record<SignName, string>>> = {
  bubbles:
    'foams up|foamed up|sudsing|frothing up|blows suds|blowing suds|soap bubbled up|growing bubbles|bubble trail|stream of bubbles|string of bubbles|tiny bubbles|pin bubbles|champagne bubbles|soap blew off|soap lifting|frothy|bubbles up|bubbling away|blew bubbles|soap worked up|soap foam|dry|bone dry|all dry|stayed dry|stays dry|bubbles|bubbling|bubble|soap bubbles|suds|lather|fizz|fizzing|foam|foaming|froth|frothing|bubling|blowing bubbles|bubbels|bubbled|bubels|fizzes',
  hiss: 'hissing sound|hissy|airy noise|blowing sound|sssing|sizzling|whispering|air whistling|whistle|whistles|can be heard hissing|hear air rushing|rush of air|air rushing|faint hiss|loud hiss|steady hiss|constant hiss|whooshing|audible leak|hissed|quiet|all quiet|dead quiet|silent now|quiet now|hiss|hissing|hisses|whoosh|sizzle|audible|pssst|hissin|hising|can hear air|hear air|air sound|sound of air|hear air sound|hear sound of air|air noise|hear a his|a his|hear leak|hear it leaking|hear air leaking|whistling|hear a hiss',
  leaks:
    'pin leak|pinhole leak|pin hole leak|hairline leak|lets go air|let go air|letting go air|seep|slight seep|seepage|air loss|loss of air|air escaping|air escapes|escape of air|losing air from|sieving|letting air by|lets air by|lets go of air|air getting past|air getting out|gives off air|spitting air|dribbling|wont hold air|doesnt hold air|leaks like a sieve|blowing out air|porous|slow leak|bad leak|small leak|big leak|leaks by|leaking by|leaking past|letting go|leakage|lekaing|leeks|leeks air|air escape|escapes air|airleak|blows back|blowing back|flows back|passes back|lets it back|leaks back|bleeds back|comes back through|air comes back|air comes back thru|leaks|leaking|air come out|air comes out|air go out|air goes out|come out air|leakin|leakg|leak|laek|leaaking|weeping|weeps|loosing air|pissing|passing|bleeding|seeping|seeps|leaky|leeking|leek|leaked|weep|blowing by|bleeds|leaking air|air leaking|air coming out|letting by|leak off|lets air out|loses air|blowing air|air leak|leeches air|blowing',
  puffs:
    'burps|burping|burped|coughs air|little puffs|chuffs|puffs of air|short bursts|spurts|puffed|puffs|puffing|puff|puffs every|spits',
  exhausts:
    'blows out of the exhaust|vents out|vents continuously|vents constantly|blows off air|exhaust air all the time|dumping out the exhaust|dumping air out|blowing out the exhaust|venting all the time|vents all the time|blows out the bottom port|exhaust air|is exhaust air|exhausts air|exhausting air|exhausts|exhausting|blows off|venting constantly|blows from|dumps air',
  low: 'down on its knees|lowish|squatted|squatty|low riding|low rider|sat lower|lower at the back|sits down|sunk down|down a bit|sagged down|on the low side|rides low|setting low|settin low|down on the ground|down on the deck|down on the floor|flat on the ground|flat on the deck|low|lo|down|hangs low|too low|way down|sits low|riding low|sunk|sunken|squat|squatting|lower|saggy|is down|went down|dropped|sitting down|lower than the other|sat down|lowered|collapsed',
  high: 'highish|too tall|sits up|up in the air|sky high|over height|overheight|rides high|on the high side|stands high|high|too high|riding high|sits high|hi|higher|up too high|jacked up high',
  leans:
    'lying over|lies over|laying over|lays over|lying down to|hanging over|lopsided|cockeyed|off level|leaned|leaned over|canted|sits cockeyed|heeled over|got a lean|has a lean|lean on|leans bad|listing over|sloping|dog legged|unlevel|out of level|not sitting square|hangs to|leans|leaning|lean|listing|lists|tilting|tilts|tilted|tipped|cocked|leans over|crooked|tilt|leans to|leaning to',
  level:
    'all level|sits square|sat square|bang level|perfectly level|even side to side|sits even|dead even|levelled out|leveled out|nice and level|sits flat and level|back level|came level|comes level|standing level|holding level|holds level|held level|staying level|level|sits level|dead level|straight|level now|even|lvl|is level|stays level|stood level',
  'on stops':
    'running on stops|running on the stops|running on its stops|riding on the stops|riding on stops|on the bumps|sat on the bumps|hard down|down hard|right down|all the way down|bottomed|bottomed right out|resting on the stops|down to the bump stops|on its belly|belly on the ground|down on the axle|on the axles|sat right down|flat out on the stops|on the snubbers|on the bumpers|on its stop|on stops|down to the stops|down on the stops|down on its stops|down to its stops|onto the stops|on the stops|on the bump stops|on bump stops|on the rubber bumpers|on bumpers|sitting on the tires|right on the tires|sitting right on the tires|on the rubbers|bottomed out|slammed|on its stops|on the bumpstops|on bumpstops|down on stops|on the deck|flat on the stops|on the bump stop|sitting on the stops|sat on the stops|on the rubber stops|down on the rubber stops|down on the rubber|sitting on the ground|sat on the ground|sitting on the floor|on the rubber|down on the tyres|down on the tires|sat on the tyres|on the tyres|on the tires|on its tires|on its tyres|on its bump stops|on their stops|down on the bumps',
  sags: 'lets itself down|leaks itself down|goes to the ground|down by morning|sinks away|falls down|drops off|settles down overnight|slowly goes down|loses height|losing height|lost height|lowers overnight|sagging down|drooping|droops|drooped|kneels by itself|sinks slowly|wont stay up|doesnt stay up|didnt stay up|cant stay up|creeping down|creeps down|crept down|bleed down|bleeding down|drop overnight|go down|going down|leak down|leaking down|went down overnight|sags|sagging|sag|sinks|sinking|sunk overnight|settles|bleeds down|leaks down|airs down|settles out|sag down|drops overnight|goes down|sinks down|sank|sagged|goes down overnight|comes down|lowers itself|sink|drops down|falls overnight|goes low|sags down|keeps going down',
  rises:
    'goes high|climbs up|rises up|grows taller|comes up too high|rose up|raised itself|keeps going up|keeps rising|overinflates|rises|rising|climbs|creeps up|lifts itself|comes up on its own|goes up on its own|raises|lifts|goes up by itself|goes up|coming up|rose',
  holds:
    'quit dropping|stopped dropping|stops dropping|quit leaking down|stopped leaking down|stopped falling|quit falling|quit losing air|stopped losing air|no longer drops|doesnt drop anymore|no air back|no air comes back|nothing comes back|nothing changed|nothing has changed|hasnt changed|has not changed|unchanged|loses nothing|loses none|drops nothing|losing nothing|not losing anything|not losing any|not budging|holds good|held good|hasnt lost any|lost nothing|no loss|no pressure loss|held all night|still up|stays where it is|stays there|stayed there|stays up fine|stood up|standing up|kept its height|kept its pressure|hasnt lost anything|didnt lose any|didnt lose anything|rock steady|dead steady|holds up|held up fine|never moved a hair|not lost any|holds|holding|hold|held|stays up|stays put|steady|no change|didnt move|hasnt moved|not moved|same as it was|stayed|holds fine|no movement|holds steady|stays the same|does not drop|has not moved|hasnt dropped|didnt drop|no drop|not dropped|doesnt drop|rock solid|stable|not moving|holds air|stays level all night|didnt go down|hasnt budged|not budged|aint moved|holds pressure|not dropping|didn t drop',
  drops:
    'going down slow|losing psi|falls off|falling off|slips back|runs down|losing pressure|lost pressure|drops|drains down|drains off|bleeds off|drains away|bleeds away|leaks away|dropping|falls|falling|loses pressure|drop|dropped|fell|fall|loosing pressure|dropin',
  'comes up driving':
    'evens out once i get going|evens out once i drive|evens out when i drive|evens out driving|evens up driving|evens out on the road|levels out once i get going|levels up once i get going|levels out when i drive|straightens out driving|straightens up once i get going|comes up once i get going|comes up when i get going|levels when driven|levels off driving|good once rolling|fine once rolling|comes back rolling|comes level driving|pumps itself up driving|comes up as you drive|airs up driving|airs up going down the road|airs up when driven|lifts once running|comes right on the road|comes right driving|comes up when i start the engine|comes up when the engine starts|comes up when i start it|comes up when started|comes up with the engine running|comes up after he drives|comes up when he drives|comes up once he drives|comes up after she drives|comes up when she drives|comes up after they drive|comes up when they drive|comes up driving|comes up when driven|comes up when driving|pumps up when driving|comes up after driving|comes up once driven|levels once driven|comes back up driving|comes up on the road|comes up when i drive|comes back up when driving|comes back up when driven|comes up going down the road|picks up when driving|lifts when driving|pumps back up when driving|comes right once driven|comes up after a drive|levels out when driving|levels up when driving|comes up with the engine|comes up when the engine runs|comes up once the engine is running|comes back up when i drive|rises when driving|comes back up on the road|comes up as soon as its driven|levels out driving|comes back up after driving',
  flat: 'squashed flat|not a bit of air|pancaked|empty of air|gone flat|like a pancake|deflating|airless|completely down|completely flat|dead flat|flat|goes flat|flat out|deflated|empty bag|is flat|flattened',
  'runs on':
    'keeps on running|keeps on pumping|keeps pumping|wont give up|just keeps going|over runs|overruns|overrunning|wont knock off|wont quit running|never kicks out|wont kick out|doesnt kick out|doesnt knock off|didnt cut out|didnt kick off|didnt kick out|doesnt know when to stop|wont stop pumping|stays running past|wont shut off|didnt stop|didnt shut off|didnt quit|will not shut down|wont shut itself off|will not cut off|will not kick off|will not quit|does not shut down|doesnt shut down|isnt cutting out|never shuts down|wont stop running|doesnt stop running|never stops running|never stop|no stopping|not stop working|never shuts off|wont stop|never stops|doesnt stop|never quits|wont quit|keeps running past|wont cut out|never cuts out|doesnt shut off|does not shut off|does not stop|runs on|doesnt cut out|does not cut out|will not shut off|will not stop|wont turn off|doesnt turn off|never turns off|not shutting off|not cutting out|not shut off|no stop|not stopping|cant stop it|wont switch off|fails to cut out|doesnt quit|running past cut out|wont shut down|wont kick off|never kicks off|wont cut off|never cuts off|keeps going and going|isnt shutting off|isnt stopping|does not quit|dont stop|not stop|never goes off|wont go off|will not cut out|never switches off|not want stop|doesnt shut itself off|not cutting off',
  'wont run':
    'wont spin|doesnt spin|wont kick|not a peep|not a sound|dead as a doornail|stone dead|nothing happens|never kicked on|never kicked in|wont cut in|doesnt cut in|didnt cut in|didnt kick in|wont come to life|not interested|no joy|inert|no action|refuses|wont operate|doesnt respond|not responding|lifeless|not firing up|not firing|wont crank|not turn|does not turn|doesnt turn|not turning|wont turn over|aint turning over|isnt turning over|not turning over|aint turning|isnt turning|aint running|no start|no run|wont run|wont start|doesnt run|does not run|doesnt start|does not start|no go|silent|wont turn|doesnt turn over|dont want to run|doesnt want to run|dont want run|not want to run|wont fire up|wont do anything|refuses to start|no life|no sign of life|wont run at all|not come on|wont come on|doesnt come on|not running at all|wont kick in|never starts|wont kick on|not starting|doesnt kick in|will not run|will not start|wont go|not start|not run|never comes on|fails to start|fails to run|refuses to run|wont turn on|not coming on|no pump|no sound|doesnt kick on|does nothing|no noise|doesnt do anything|dont run|dont start|wont even start|not kicking in|isnt coming on|no response|completely dead|isnt running|never kicks in|never came on|doesnt turn on',
  'runs constantly':
    'never lets up|never shuts up|goes day and night|goes all day|going all day|pumps all day|pumps constantly|pumping constantly|pumps nonstop|works nonstop|always going|hardly ever stops|barely stops|runs most of the time|constant run|100 duty|on continuous|never stops for long|pump work all time|pump work all the time|pump works all the time|pump work always|runs constantly|runs all night|on all night|runs day and night|runs all morning|always working|working always|working all the time|work all time|always work|always pumping|pumps all the time|runs all the time|constantly running|runs continuously|never rests|runs nonstop|runs non stop|always running|runs constant|always on|on all the time|runs a lot|constant running|runs forever|keeps running|always run|always runs|runs the whole time|goes all the time|running flat out|continuous running|is running all day|works all the time|run all time|runs all day|non stop|nonstop|permanently running',
  'short cycles':
    'cycles rapidly|hunts|hunting|on off on off|cuts in and out all the time|in and out all the time|keeps coming in|keeps coming on|keeps cutting in|keeps kicking on|comes in too often|comes on too often|kicks in too often|starts too often|cycles too fast|rapid fire cycling|cuts in often|comes on a lot|cycling constantly|came on every|came on about every|comes on about every|came on around every|comes on around every|kicks on about every|starts every|starts up every|fires up every|kicks in every|cuts in every|come on and go off again every|come on and go off every|comes on and goes off again|come on and go off|comes on and off again|coming on every|keeps coming on every|keep coming on every|kicks on every|comes on every few minutes|comes on and off|goes on and off|comes on and off every few minutes|keeps coming on and going off|coming on and going off|comes on and goes off|kicks on and off|short cycles|short cycling|cycles often|cycling|on and off|kicks in every few minutes|rapid cycling|cycles|short cycle|cycles a lot|keeps cutting in and out|keeps cycling|keeps kicking in|cycling too much|cuts in and out|cycles constantly|cycling on and off',
  clicks:
    'clks|clix|one click|click click|clicking away|chatters|chattering|clack|clacks|clicks|clicking|click|just clicks|clunks once|clicks only|clicked',
  hums: 'humms|hums only|just hums|just sits and hums|buzz|buzzed|hummed|moans|moaning|growls|hums|humming|hum|buzzes|buzzing|groans',
  stalls:
    'bogs|bogs down|bogging down|labors|laboring|labours|labouring|struggling|strains|straining|drags to a stop|grinds to a halt|locks up|stalls out|stalling out|stuggles|stalls|stalling|stalls against head|grunts|stalled|struggles|stall',
  'no air':
    'pumps nothing|no pumping|doesnt pump any air|makes zero air|no air comes out|no discharge|blows nothing|not putting out|no pressure made|runs but nothing|moves no air|wont pump air|doesnt pump|wont pump|wont make air|cant make air|wont make pressure|doesnt make pressure|never builds|wont build up|doesnt build up|isnt pumping|no air|makes no air|not making air|pumps no air|runs but no air|no output|makes nothing|isnt making air|no air out|no air coming|not building|wont build|wont build pressure|no pressure|wont build air|doesnt build|not pumping|not building pressure|does not build|doesnt make air|isnt building|not build pressure|no build up',
  'slow build':
    'slow as molasses|takes all day|takes forever to build|takes forever to air up|takes an age|slow to air up|slow airing up|builds real slow|crawls up|weak output|poor output|slow to recover|slow to make air|takes too long to build|takes too long to air up|takes ages to build|long time to build|long time to air up|slow fill|slow build|slow to build|builds slow|slow pumping|slow to pump|takes forever|builds slowly|slow to fill|pumps slow|slow to come up|slow building|slow to pump up|takes ages|fills slow|takes for ever|slow build up|takes too long|slow recovery|takes long|pump slow|slow',
  'blows fuse':
    'blows its fuse|keeps popping the fuse|keeps taking fuses out|eats fuses|eating fuses|burns fuses|burns up fuses|trips the fuse|kills fuses|knocks the breaker off|knocks out the breaker|throws the breaker|kicks the breaker|pops the breaker|popping the breaker|fuses keep going|keeps blowing the fuse|blew another fuse|blows fuse|blows fuses|pops fuse|pops the fuse|blows the fuse|keeps blowing fuse|keeps blowing fuses|popping fuses|fuse pops|fuse blows|fuse keeps blowing|fuse goes|fuse keeps popping|fuse blew|blows a fuse|trips the breaker|trips breaker|breaker trips|popped a fuse|blown the fuse',
  'quits hot':
    'quits when its hot|dies hot|dies when hot|shuts off hot|shuts off when hot|stops when it gets hot|cuts out when it gets hot|packs up when hot|thermals off|thermal kicks out|thermal shutdown|overheats and cuts out|overload kicks out|kicks out on thermal|goes off when hot|heat soaks and quits|quits hot|shuts itself off|shuts itself down|shuts off on its own|cuts out on its own|goes off on its own|quits when warm|overheats and stops|overheats and shuts off|quits when hot|cuts out hot|thermal cut out|thermals out|stops when hot|trips on heat|goes off hot|quits after a while|stops hot|quits when it gets hot|thermal trips|cuts out when hot|trips thermal|overheats and quits|shuts down hot',
  starts:
    'restarts|restarted|starts back up|pump started|air pump started|comp started|compressor started|starts|pump took off|pump takes off|takes right off|now pump start|pump start now|pump start again|starts fine|fires up|starts up|kicks off fine|started for me|started at the first attempt|starts first time|started straight away|starts right up|fires right up|starts easy|starts easily|starts alone|starts by itself|starts on its own|kicked in on its own',
  works:
    'works good|works great|works normal|working normal|working properly|works properly|does its job|operating normally|operates ok|works like it should|works as it should|functions ok|functions normally|functioning|works perfectly|pump work|now pump work|works|working|works fine|works ok|functions|operates|works now|working fine|operates fine',
  'not working':
    'kaputt|done for|had the radish|cactus|rooted|stuffed up|borked|hosed|shot to hell|gave up the ghost|deceased|crapped out|pooped|on the fritz|fritzed|not doing its job|not functioning|non functional|malfunctioning|acting funny|playing up|on the blink|messed up|screwed up|no longer works|quit working|stopped working|not up to it|clapped out|dodgy|doesnt pull in|wont pull in|not pulling in|does not pull in|not working|not good working|not work good|no work good|not working good|not working right|not n/w|not operational|n/w|n/g|ng|n g|u/s|inop|inoperative|doesnt work|does not work|wont work|unserviceable|shot|kaput|knackered|duff|faulty|bad|failed|dead|gone|no good|defective|bust|busted|buggered|toast|fubar|isnt working|isnt right|not right|not good|has had it|had its day|goosed|stuffed|dud|fried|packed up|failing|duf|going bad|broke|not work|dont work|no work|on its way out|to blame|the culprit|the problem|acting up|cooked',
  stuck:
    'bound up|seized up|seized solid|jammed up|jammed solid|wont budge|rusted solid|stuck fast|cant move it|hung up|sticks sometimes|gummy|sticking up|stuck in place|stuck|sticking|seized|jammed|sticks|siezed|stuck solid|frozen up solid|sticky',
  'stays closed':
    'sticks closed|sticks shut|sticking shut|sticking closed|wont open up|stuck in closed|hung closed|stays shut|wont crack open|fails closed|failed closed|stays closed|stuck closed|stuck shut|wont open',
  'stays open':
    'sticks open|sticking open|hangs open|wont close up|wont shut|stuck in open|fails open|failed open|doesnt close|wont reseat|doesnt reseat|stays open|stuck open|wont close|hung open',
  reversed:
    'back to front|in backwards|hooked up backwards|plumbed backwards|on the wrong way|in the wrong way|wrong way about|lines swapped|lines crossed|crossed over|piped backwards|plumbed wrong|upside down on|reversed|wrong way round|backwards|on backwards|upside down|fitted backwards|swapped over',
  binding:
    'hard to move|moves stiff|moves hard|drags when moved|rubs when moved|bound|binds up|too tight|notchy|binding|binds|stiff|tight',
  hot: 'smoking hot|burning hot|hot as hell|hot to touch|hot to the touch|scorching|scalding|running hot|runs hot|blazing hot|piping hot|gets hot|getting very hot|got hot|real hot|way too hot|hot|red hot|too hot to touch|o/heating|overheating|overheated|very hot|roasting|overheats|too hot|getting hot|boiling hot|o/heat',
  burnt:
    'burned up|fried up|scorched|singed|discolored|discoloured|blued|heat marks|burn marks|arc marks|pitted up|melted down|toasted|charred up|burnt up|smells burnt|smell of burning|burnt|burn|burns|burned|pitted|burnt out|blackened|charred|arced|burnt contacts|melted|burned out',
  corroded:
    'rotten|rotted|rotted out|rusted out|rusted through|rust through|crudded up|green crud|green fuzz|white fuzz|verdigris|oxidized|oxidised|corroded up|rusty up|flaking rust|pitted with rust|eaten by rust|corroded|corrosion|rusty|rusted|green|crusty|rust|furred up|corrode|rusty as hell',
  welded:
    'fused shut|fused together|stuck shut contacts|contacts stuck|contacts fused|stuck contacts|welded together|welded|welded shut|stuck together|welded closed|contacts welded',
  tripped:
    'keeps tripping|keep tripping|tripping|trips out|knocked off|popped breaker|has tripped|was tripped|found tripped|had tripped|tripped|popped out',
  blown: 'is blow|is blow again|blown|popped|pops|popping|blows',
  loose:
    'flopping|flops|floppy|slack in it|backing off|backing out|come undone|came undone|working loose|rattly|jiggles|wobbles|shaky|got loose|finger loose|finger tight|hand loose|not tight|isnt tight|wasnt tight|wiggles|moves about|not torqued|loose|slack|undone|backed off|wobbly|rattling|come loose|worked loose|lose',
  bent: 'kinked over|bent up|bent over|bent like a banana|knocked out of shape|out of shape|distorted|deformed|hit something|mangled|warped|bent out of shape|curled|bashed|bent|bend|bended|bowed|twisted|buckled',
  broken:
    'snapped off|snapped clean|snapped in two|broke in half|broke clean off|busted off|shattered|sheared off|cracked through|broken clean through|broke through|broken|brake in|break in|a break in|snapped|cracked off|sheared|fell off|broken off|come off|came off|fallen off|fractured|broke off|is off',
  disconnected:
    'not hooked up|not connected|come unhooked|came unhooked|come off its ball|came off its ball|off its stud|off the stud|off the ball|popped loose|off the ball stud|fell off its stud|hanging down|flapping|swinging free|just hanging there|come adrift|came adrift|adrift|had come adrift|has come adrift|disconnected|disconected|is disconnect|is disconected|is disconect|off its ball|popped off|unhooked|hanging|unclipped|hanging off|dangling|hanging loose|detached',
  slipped:
    'moved on its shaft|slipped on the shaft|slipped round|turned on the shaft|rotated on the shaft|slid down|slid up|moved out of place|clamp slipped|slipped in its clamp|slipped|moved on the shaft|slid|clamp moved|slipping',
  missing:
    'gone missing|not present|absent|nowhere|was never fitted|fell out|fallen out|no sign of one|isnt fitted|not on there|missing|not there|not fitted|isnt there',
  kinked:
    'folded over|pinched shut|crimped shut|squashed flat line|crushed flat|trapped flat|bent double|crimped over|folded in half|squeezed shut|twisted shut|kinked|kink|pinched|crushed|kinks|squashed|kinked up|trapped',
  plugged:
    'blocked solid|plugged up|plugged solid|full of crap|full of muck|full of gunk|stopped right up|clogged up|clogged solid|choked up|gunged|obstructed|bunged|wont flow|wont pass air|doesnt pass air|restricted flow|partly blocked|partially blocked|half blocked|plugged|gunged up|clogged|blocked|bunged up|choked|restricted|gummed up|stopped up|clog|blockage|blocked up|blockd|restriction',
  dirty:
    'filthy dirty|mucky inside|grubby|grimy|caked up|caked with dirt|packed with dirt|crap in it|black with dirt|clogged with dust|road dirt|covered in dirt|covered in muck|manky|gunky|muddy inside|fouled|dirty|dust|dusty|full of dust|full of fluff|mucky|filthy|full of dirt|muddy|crud|full of crud|dirt|gunk|black|caked',
  frozen:
    'frosted up|frosted over|ice in it|ice inside|got ice in it|iced over|iced solid|iced up solid|freezing|freezes over|ice plug|ice blocked|ice block|full of ice|ice formed|frozen|frost|frosted|frosty|froze|iced|iced up|ice|freeze up|froze solid|freezes|freezing up|frozen up|froze up|freeze',
  wet: 'soaking wet|dripping wet|sopping|moist|soggy|wet all over|got wet|water soaked|wet|damp|soaked',
  oily: 'oil soaked|greasy|oiled up|oil coming through|oil through it|oil residue|covered in oil|oil mess|oil everywhere|film of oil|oil carryover|oil carry over|sludgy|oily sludge|oil dripping|oily|oil|oil in it|oil film|oil mist',
  water:
    'water coming out|waterlogged|water inside|water in there|rusty water|brown water|lot of water|loads of water|spits water|water spits out|water blows out|water blew out|water dripping out|slug of water|condensation|watery|water|moisture|condensate|wet inside|full of water|water in it|lots of water|water out|water came out|water comes out',
  milky:
    'creamy|cream colored|cream coloured|looks like milk|mayonnaise|like mayonnaise|emulsified|white sludge|grey sludge|gray sludge|coffee and cream|milkshake|milky|mayo|emulsion|like milk|milky water|milky sludge',
  cracked:
    'crack in it|cracks in it|cracks round it|spider cracks|spider webbed|hair cracks|surface cracks|crack starting|starting to crack|cracked right through|crackled|alligatored|checked and cracked|cracks everywhere|cracked all over|cracked bad|small cracks|deep cracks|split open|cracked|cracks|crack|cracking|split|splits|cracks all over|cracks up and down|splitting|crazed|cracky|hairline crack',
  'cords showing':
    'cord coming through|cord exposed|down to the threads|threads coming through|down to the canvas|canvas coming through|fabric coming through|down to fabric|threads visible|cord hanging out|strings showing|strings hanging|can see the threads|can see threads|can see the fabric|can see fabric|plies showing|ply showing|can see the ply|cover worn off|outer cover gone|rubber gone|bare cords|bare cord|bare threads|cords out|cords showing|cord showing|cords|cord|can see cord|cords visible|see the cords|threads showing|cord visible|fabric showing|canvas showing|cover gone|exposed thread|exposed cord|cords exposed|threads coming out|see the cord|can see the cords|can see cords|down to the cord|down to cords|showing cord|showing cords|cords through|cord showing through|exposed cords|see the fabric|see cords|see cord|down to the cords|threads show|cord is visible|see threads',
  chafed:
    'chewed|chewed up|rubbed raw|rubbed bare|rubbing together|rub spot|rub spots|worn where it rubs|wear mark|wear marks|worn shiny|polished spot|scrubbed through|touching the frame|hits the frame|hitting the frame|contacts the frame|fretting|galled|galling|rubbed a hole|wore through|worn through by rubbing|sawed into|sawn into|scraping|scrapes|scuffed up|chafed|touching|touch the frame|touches the frame|fouling|chafing|rubbed|rubbing|rub mark|rub marks|scuffed|worn through by|abrasion|rubs|wore a hole|chafe|rubbed through|shiny spot|rubbing on|rub|chafing on|fretted|chaffed|rubbed thru|scuff mark|scuffing|chaffing',
  torn: 'torn up|ripped open|burst open|blew open|blew apart|blown apart|shredded|exploded|torn away|torn off|ripped off|split wide open|gashed|slashed|cut open|has a hole|got a hole|hole worn in it|hole in the side|slice in it|sliced|nicked|stabbed|ruptured|rupture|bursted|small cut|little cut|has a cut|a small cut|torn|a cut|cut in it|gash|slash|slit|ripped|tear|rip|burst|blown out|hole|puncture|punctured|hole in it|pinhole|pin hole|tore|blew out|popped bag|holed',
  swollen:
    'bellied out|puffed up|blistered|blister|blisters|bubble in the side|swelling|swelled|swelled up|bulges|bulges out|bulging out|ballooning|ballooned out|misshapen|swollen|bulging|bulge|ballooned|bulged',
  'off line':
    'not sitting square on|cocked on its seat|sitting cocked|twisted on its seat|rolled over|rolled over the piston|off to one side|not lined up|skewed|crooked in its seat|banana shaped|out of alignment|hot dogging|off line|walks|odd angle|crooked on its seat|off centre|off center|banana|sits crooked|out of line|misaligned',
  worn: 'wallered out|wallered|wallowed out|wallered oblong|egged out|ovaled out|ovalled out|hogged out|worn oval|worn egg shaped|down to nothing|worn to nothing|worn down to nothing|down to the nubs|worn thin|worn away|oval|egg shaped|slop in it|got slop|has slop|worn round|rounded|rounded off|past it|past its best|worn past limit|wore down|paper thin|no meat left|no meat left on it|beat out|elongated|worn|worn out|wear|wore out|knackered worn|sloppy|play in it|has play|well worn|shagged|worn badly|worn down|worn right down|badly worn|free play in it|got play|shot with wear|wore',
  aged: 'ancient|dry and hard|hard as rock|gone hard|brittle|hardened up|sun rotted|uv damaged|crumbly|crumbling|old as the hills|old and cracked|perishing badly|time expired|past its date|older than dirt|stiff with age|dried up|aged|dry rot|dry rotted|perished|perishing|weather checked|old|dried out|dryrot|dry rotting|weathered|weather cracked|hardened',
  noisy:
    'rubbing noise|rubbing sound|scraping noise|knock|clanks|clanking|clank|squealing|squeal|squeaky|squeaking|creak|creaky|grinds|growling|howls|howling|whines|whining|makes a knocking|knocking noise|clattery|clunky noise|groaning|rumbles|rumbling|sounds rough|sounds bad|sounds like a bag of bolts|make big noise|makes big noise|makes a big noise|make noise|big noise|make much noise|makes much noise|makes a lot of noise|lot of noise|noisy|loud|rattle|rattles|squeals|squeaks|knocks|knocking|grinding|clatter|clattering|squeak|creaks|makes noise|makes a noise|creaking',
  bangs:
    'clunk over bumps|clunks over bumps|bangs over bumps|loud bang|thud|thuds|thudding|knocks over bumps|whacks|crashes|slams down|slamming|clunk|clunks|clunking|clunked|bang|bangs|banging|thump|thumps|bang from the rear|thumping|big bang|bang bang',
  cold: 'ice cold|cold as ice|cold as a stone|stays cold|never warmed up|no heat in it|not warm|isnt warm|still cold|cold|stone cold|cold to touch|dead cold',
  warm: 'warmed|gets warm|slightly warm|warmed up|nice and warm|warm after the run|warmish|hand warm|blood warm|warm|warm to touch|luke warm|lukewarm',
  'leaks oil':
    'weeps oil|oil weep|oil running down|oil down the side|oil down the body|oiled down|pissing fluid|lost its oil|losing oil|oil everywhere on it|wet with oil|oil wet|seeping oil|oil seep|fluid leak|fluid all down it|puking oil|fluid weep|slick with oil|sweating|sweaty|sweats|leaks oil|weeping oil|oil leak|oil all over|oil leaking|weeping fluid|leaking fluid|pissing oil|oil weeping|misting',
  'wrong part':
    'wrong one fitted|wrong size|not the right size|not the same as the other|different from the other side|different part number|wrong spec|odd one|mismatched|doesnt match the other side|wrong part|wrong parts|wrong part number|wrong type|wrong length|not the right part|not the right one|too long|too short|longer than the other|longer than the other one|shorter than the other|shorter than the other one',
  bounces:
    'bounce bounce|keeps bouncing|bouncing down the road|rolls and bounces|boaty|rides like a boat|rides like a pogo stick|like a pogo stick|no damping|undamped|hops along|bobbing|bobs|galloping|gallops|loping|lopes|rocking|rolls around|rolling around|sways|swaying|nods|nodding|jouncy|rocking and rolling|bounces|jumping|jumps|bouncy|bouncing|porpoises|wallows|floaty|bounce|pogo|bounces like a boat|wallowing|bounching|floats|bounces around|hops|bounces up and down',
  bottoms:
    'bottoms hard|hits bottom|hitting bottom|slams the stops|slams down on the stops|whacks the stops|hits the stops hard|bottoming hard|bottoms over bumps|bottoms on bumps|goes metal to metal|bottoms|bottoming|bottoms out|bottoming out|hits the stops|bottom out|hits bump stops|hits the bump stops|crashes over bumps',
  wanders:
    'wandering all over|all over the place|darts|darting|darty|tramlines|tramlining|steers itself|hunts on the road|wont track straight|doesnt track straight|wont hold a line|wont go straight|floats all over the road|moves around on the road|dog tracks|dog tracking|crabs|crabbing|wanders|wander|wandering|drifts|walks all over|wanders all over|wanders on the road|all over the road',
  pulls:
    'pulls hard|tugs|tugging|wants to go left|wants to go right|pulls one way|pulls off|drifting to|pulling hard|fights to the|pull|pulls|pulls left|pulls right|pulls to the left|pulls to the right|pulls to one side|pulling to one side|pulls to left|pulls to right',
  'worn inside':
    'inner edges gone|inside gone|inner shoulder gone|chewed on the inside|scrubbed on the inside|wears on the inside|wearing the inside|worn off on the inside|bald inside edge|bald on the inside|insides bald|inside bald|inner edge bald|worn on the inner edge|inside shoulder worn|wears the inside edge|wear on inside edge|inside worn out|eaten on the inside|eaten in the inside|eaten inside|wearing on inside edges|wearing on the inside edges|inside edges|inner edges|worn on inside edges|inside worn|worn inside|inner edge worn|inside edge wear|inside edge worn|inside edge gone|worn on the inside|inside wear|inner edge wear|worn on inside|inner edge gone|inside edge|worn inner edge|inside edge is gone|inner edge|inners worn|wearing on the inside|wearing inside|inner shoulder worn|wear on the inside',
  'worn outside':
    'outer edges gone|outside gone|outer shoulder gone|chewed on the outside|wears on the outside|wearing the outside|bald outside edge|bald on the outside|outsides bald|outer edge bald|outer edge gone|worn on the outer edge|outside shoulder worn|wears the outside edge|outside worn|worn outside|outer edge worn|outside edge wear|outside edge worn|worn on the outside|outer edge wear|outside wear|outside edge|outer edge|wear on the outside|wearing outside|outer shoulder worn',
  feathered:
    'feather edged|feathering on the edges|sawtooth|saw toothed|sawtoothed|saw tooth wear|feathered edges|sharp edges on the tread|saw edge|feathered|feathering|feather edge|feather wear|feathers|feathery',
  cupped:
    'cups in it|dishing|dips in the tread|scallop wear|cup wear|scalloped out|lumpy|wavy tread|hopping wear|cupping bad|cupped|cupping|scalloped|scalloping|scallops|cups|cuped',
  scrubbed:
    'scrubbed off|scrub wear|chopped|chopped up|choppy wear|diagonal wear|heel toe wear|heel and toe wear|heel and toe|scrubbed|scrub|scrubbing|choppy|scrubs',
  'reads wrong':
    'off by a lot|out of calibration|reads high by|reads low by|reads too high|reads too low|cant trust it|not to be trusted|reads all over the place|miles out|telling lies|reads wrong|not reading correctly|not reading right|not reading true|reads incorrectly|doesnt read right|doesnt read true|reads high|reads low|off by|way off|inaccurate|lying|lies|wrong reading|is wrong|cant be trusted|gauge lies|is lying|reads off|out by|not accurate',
  'reads right':
    'reads correct|bang on right|checks good|reads spot on|in calibration|calibrated|reads right|spot on|accurate|reads true|is right|checks out good|correct reading',
  'does not move':
    'pegged at|needle wont move|needle sits|dead needle|hasnt moved all day|sits at the same|stuck at|hasnt moved|has not moved|didnt move|not moved|havent moved|does not move|doesnt move|not move|wont move|stuck needle|needle stuck|needle doesnt move|never moves|frozen needle|does not budge|dont move|needle dead',
  'gauges agree':
    'matches dash|matches the dash|matches dash gauge|agrees with the dash|agrees with dash|matches mine|agrees with mine|both read the same|gauges are the same|matches my gauge|agrees with my gauge|reads the same as mine|same as my gauge|gauges agree|agrees|same on both gauges|gauges match|both gauges same|both gauges read the same|same on second gauge|agree|second gauge agrees|second gauge same|gauges agree with each other|both gauges the same|two gauges agree|test gauge same|test gauge agrees|second gauge says the same|other gauge says the same',
  'gauges disagree':
    'differ by|differs by|two gauges different|doesnt match my gauge|different from my gauge|disagrees with my gauge|reads different from mine|gauges read different|gauges disagree|disagrees|dont match|dont agree|gauges differ|gauges dont agree|gauges dont match|gauges do not agree|disagree|gauges do not match|second gauge differs|two gauges differ|second gauge disagrees|different on second gauge',
  fills:
    'airs right up|airs up fine|fills right up|pumps up fine|inflates fine|comes right up|lifts fine|raises fine|airs up good|takes air|rises when asked|aired up|fills|fills fine|inflates|airs up|bag fills|fills up|pumps up|comes up|comes up fine|goes up fine|raises ok|fills ok|fills up fine|inflated ok',
  'does not fill':
    'nothing goes into|nothing goes in|nothing goes to|nothing going in|nothing going into|nothing gets into|nothing gets in|nothing gets to|no air goes in|no air goes into|wont inflate at all|wont take air|doesnt take air|no air going in|no air gets in|gets no air|gets no air to it|wont air up at all|wont come up at all|never airs up|never fills|wont pick up|wont lift up|doesnt air up at all|not airing up|isnt airing up|wont raise up|starved of air|not getting air|not getting any air|no air reaching it|wont come back up|doesnt come back up|does not come back up|will not come back up|does not fill|doesnt fill|wont fill|wont inflate|wont air up|no fill|not filling|wont come up|wont raise|wont go up|doesnt come up|does not come up|wont lift|not fill|doesnt raise|doesnt inflate|not come up|never comes up|will not fill|will not come up|not going up|not inflating|wont rise|dont fill|doesnt go up|doesnt lift|doesnt air up|no air to the bag|not rising|not lifting|wont pump up|will not inflate|not coming up',
  empties:
    'dumps ok|deflates fine|goes down when dumped|exhausts fine|lowers fine|dumps right down|lets out fine|comes down fine|empties|dumps fine|dumps|deflates|lets down fine|exhausts ok|vents fine|goes down fine|empties ok|lets down',
  'does not empty':
    'doesnt lower|stays up when dumped|doesnt vent|no dump|does not empty|doesnt dump|wont dump|wont go down|wont deflate|doesnt exhaust|doesnt empty|wont exhaust|wont lower|wont let down|not dumping|wont vent|doesnt go down|does not dump|will not dump|wont come down|doesnt come down|wont empty|will not empty|not emptying',
  ok: 'a ok|all fine|ship shape|fit for service|serviceable|no issue|no defects|no defect|nothing found|nfd|no probs|no probs there|good to go|good nick|in good nick|in good shape|in good order|in good condition|looks alright|looks all right|looks decent|tight and dry|good and tight|snug|nice and tight|all tight|perfectly fine|tip top|sweet as|happy with it|checked ok|checked good|tests fine|up to spec|like new|bang on|spot on|dead on|on the money|right on the money|on the nose|on the button|bang on the money|no play|no free play|no slop|runs straight on the road|runs straight on|runs straight|tracks straight|drives straight|runs straight and true|diagonals the same|diagonals are the same|diagonals equal|diagonals match|ok|okay|fine|good|alright|all right|great|perfect|no problem|checks out|nothing wrong|all good|looks good|looks ok|looks fine|tests good|tests ok|in spec|within spec|to spec|is right|checked out ok|sound|no issues|no fault found|nff|healthy|good condition|a1|as it should be|back to normal|normal|no trouble|good order|clean',
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
