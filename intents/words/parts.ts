/** Spellings of parts, `|` between them; lower case, apostrophes left out. Data only. */
import type { parts } from '../names.ts';

export const partWords: Readonly<Record<(typeof parts)[number], string>> = {
  tank: 'air storage tank|storage tank|supply tank|air supply tank|susp tank|suspension tank|suspension air tank|susp air tank|dry tank|service tank|accessory air tank|auxiliary air tank|auxiliary tank|air cylinder|pressure vessel|air storage|reserve tank|air vessel|resevoir tank|reservoir tank|compressed air tank|tank|tk|tnk|air tank|receiver|wet tank|ping tank|air reservoir|reservoir|res|resv|accessory tank|aux tank|air bottle|air can|tank gauge|tank gage|tank pressure|tank pres|tank press|tank psi|tank air|system pressure|system|sys pressure|store|main tank|air receiver|gauge pressure',
  drain:
    'drain petcock|tank petcock|bleed cock|bleed valve|bottom drain|pull cord drain|lanyard drain|moisture drain|water drain|bleed screw|drain screw|drain nut|tank bleed|spit valve|spitter valve|drain fitting|pull drain|drain|drain cock|draincock|petcock|pet cock|drain valve|drain plug|cable drain|auto drain|spitter|bleeder|drain tap|tank drain|drain off',
  relief:
    'pressure relief|pressure relief valve|pop valve|safety pop|safety pop off|tank relief|overpressure valve|safety blow off|relief vlv|relief|relief valve|safety valve|prv|pop off|pop off valve|popoff|blow off valve|safety relief',
  gauge:
    'dashboard gauge|dash air gauge|pressure dial|cab air gauge|air pressure gauge|susp gauge|panel gauge|tank dial|gauge on the dash|gauge in the cab|gauge in the dash|pressure meter|drivers gauge|driver gauge|dial gauge|the dash|dash|cab gauge|gauge|gauge itself|gage|guage|dash gauge|dash gage|needle|pressure gauge|air gauge|dial',
  'test port':
    'test nipple|schrader valve|schrader port|shrader|gauge port|gauge tee|test tee|test connector|quick test port|tapping point|pressure tapping|test port|test gauge|the test gauge|test point|test fitting|schrader|test connection',
  'protection valve':
    'pressure protection|brake protection valve|ppv valve|pp valve|protection vlv|pressure protect valve|protection valve|pressure protection valve|ppv|prot valve|priority valve',
  regulator:
    'air regulator|pressure reducer|reducing valve|limiting valve|pressure limiter|reg valve|regulator|reg|press reg|pressure regulator',
  dryer:
    'drier cartridge|dryer can|desiccant can|desiccant canister|dryer canister|desiccant cartridge|moisture trap|water separator|drier canister|purge valve on the dryer|dryer purge valve|air dryer cartridge|dryer|drier|air dryer|air drier|desiccant|cartridge|dryer cartridge',
  'supply line':
    'feed hose|feed pipe|main air line|tank to valve line|line from the tank|line out of the tank|supply airline|air feed|hose from the tank|pipe from the tank|main supply|supply to the valves|line to the height valves|line to the valves|supply line|supply|supply hose|supply pipe|feed line|air supply|main line|supply tube|supply tubing|tank line|line from tank|line off the tank|inlet line|supply fitting',
  'height valve':
    'ride height vlv|ride control valve|ride valve|leveler valve|leveller valve|height sensing valve|load leveling valve|load levelling valve|self leveling valve|self levelling valve|air leveler|suspension valve|susp valve|rh valve body|ride height controller|height controller|levelling vlv unit|hght valve|hght vlv|hgt valve|hgt vlv|valve of height|height valve|hv|hvs|height value|hight value|leveling value|levelling value|height vlv|leveling valve|levelling valve|leveller|leveler|air leveling valve|height control valve|hcv|ride height valve|rhv|ride height control|ride height control valve|level valve|leveling vlv|levelling vlv|lev valve|lev vlv|ht valve|ht vlv|height valv|valve|vlv|valv|levelling valv|height control|lvl valve|lvl vlv|levelling control valve|air levelling valve|lvling valve',
  'valve cover':
    'cover plate of the valve|valve lid|cover plate gasket|top cover gasket|valve top cover|valve body cover|cover of the valve|valve cap|valve cover|at the cover|the cover|cover gasket|valve gasket|valve body gasket|height valve cover',
  'inlet seat':
    'inlet screen|valve screen|valve inlet screen|height valve screen|screen in the valve|screen in the inlet|valve strainer|inlet strainer|screen|inlet seat|intake seat|supply seat|feed seat',
  'inlet check':
    'inlet check ball|inlet non return|valve inlet check|check in the inlet|check in the height valve|check on the inlet|supply check valve in the height valve|inlet check|inlet check valve|inlet chk|check in the valve|inlet nrv|height valve check',
  'exhaust seat': 'exhaust seat|exh seat|dump seat',
  'exhaust port':
    'exhaust outlet|exhaust vent|dump vent|vent hole|exhaust fitting on the valve|port three|valve vent|valve exhaust port|exhaust pipe of the valve|bottom vent|vent on the valve|exhaust hose|exhaust in water|hose from the exhaust|exhaust port|exhaust|exh|exh port|valve exhaust|exhaust of the valve|vent port|dump port|exhaust hole|valve exh|height valve exhaust|levelling valve exhaust|leveling valve exhaust',
  'valve to panel line':
    'line from the height valve to the panel|line from the valve to the panel|line from height valve to panel|line between the height valve and the panel|line between the valve and the panel|line between valve and panel|valve to panel line|valve to panel|line to the panel|line to panel|panel line|valve panel line|hose to the panel',
  link: 'clamp|link bushing|link bushings|link bush|link grommet|link rubber|link ball joint|link rod end|link ball|link end|link assembly|vertical link|linkage rod|height link rod|height rod|levelling rod|leveling rod|level rod|height valve link|height valve rod|valve rod|drop arm link|ball link|linkage arm|tie link|connector rod|linkrod|droplink|adjuster rod|rose joint|link clamp|arm clamp|link|linkage|link rod|rod|drop link|overtravel lever|rubber coupling|coupling|link arm|valve link|height link|connecting link|dog bone|dogbone|valve linkage|levelling link|leveling link|drop rod',
  arm: 'drop arm|sensing arm|height valve lever|levelling valve arm|leveling valve arm|swing lever|operating arm|operating lever|valve swing arm|horizontal arm|lever arm|arm|valve arm|lever|actuating arm|valve lever|control lever|height arm|levelling arm|leveling arm|height valve arm',
  panel:
    'air controls|air control panel|suspension panel|susp panel|ride panel|level control panel|manual control panel|hand controls|hand valves|selector|air selector|raise lower switch|manual valves|control knobs|panel switches|raise and lower valve|raise lower valve|ride control panel|levelling box|panel|dump valve|air dump|levelling panel|leveling panel|control panel|manual panel|panel valve|dump switch|air panel|panel knob|knob|panel control|levelling controls|leveling controls',
  'panel feed':
    'tank to panel pipe|tank to panel hose|tank to panel line|pipe from the tank to the panel|line from the tank to the panel|line from tank to panel|panel feed|panel supply|feed to the panel|panel feed line',
  'bellows line':
    'line feeding the bag|feed to the bag|bag feed line|hose into the bag|hose going to the bag|line going to the bag|line into the bag|pipe going to the bag|tube to the bag|tube going into the bag|bag tube|bag nipple|bag inlet fitting|bag inlet|bag port fitting|fitting on the bag|fitting at the bag|fitting on top of the bag|elbow on the bag|elbow at the bag|union on the bag|air spring line|air spring hose|air spring fitting|bellow line|bellow fitting|bellows hose|bellows elbow|bellows line|bag union|bellows union|air bag union|bag elbow|bag line|delivery line|delivery|line to the bag|line to bag|bag hose|delivery pipe|line to the bellows|line to bellows|airbag line|line to the airbag|air bag line|bag supply line|spring line|bellows pipe|bag pipe|delivery hose|delivery tube|hose to the bag|hose to bag|pipe to the bag|pipe to bellows|bag line fitting|bag fitting|bellows fitting|delivery fitting|airbag fitting|air bag fitting|spring fitting|airbag pipe',
  fitting:
    'bulkhead fitting|bulkhead union|bulkhead connector|pushfit|push fit|push in fitting|pushin|push lock|pushlock|ptc fitting|barb|hose barb|coupler|coupling nut|swivel|adaptor|hose tail|tube nut|brass fitting|compression nut|flare nut|tee piece|t piece|fttg|fttngs|fitting|line fitting|hose fitting|ftg|connector|compression fitting|push in|union|elbow|tee|nut|olive|ferrule|joint|connection',
  line: 'line|hose|tube|tubing|nylon|nylon line|air line|airline|pipe|air pipe|air hose|nylon tube|nylon tubing|poly line|plastic line',
  'gauge line':
    'gauge hose|gauge tubing|line for the gauge|line behind the dash|capillary|cab gauge line|line to the dash|dash gauge line|pilot line to the gauge|switch line|line to the switch|gauge line|gage line|dash line|cab line|line to the gauge|gauge pipe|line to gauge|gauge tube',
  bellows:
    'air bellows|air bellow|air sleeve|rolling lobe bag|suspension bag|suspension bags|susp bag|susp bags|ride bag|rubber air spring|rubber bellows|air ride bag|rear air bag|firestones|convoluted bag|air spring assembly|spring bellows|air cushion|air cushions|bellow|air pillow|pillow|rubber bag|rubber pillow|rubber air pillow|bag|air bag|airbag|air spring|airspring|air chamber|spring bag|donut|ballon|balloon|air spring bag|rear bag|baloon|air balloon|spring',
  'bellows crimp':
    'crimped edge|crimp band|crimped ring|crimp collar|bead ring crimp|bottom crimp ring|top crimp ring|rolled edge|swage|swaged end|girdle ring|where the rubber meets the plate|rubber to metal joint|where rubber meets metal|bellows crimp|bag crimp|crimp|crimp ring|airbag crimp|air bag crimp|bellow crimp|air spring crimp|bead|lower crimp|the crimp|upper crimp|top crimp|bottom crimp',
  'bellows fold':
    'rolling fold|roll of the bag|rolled part|crease of the bag|bottom roll|fold of the bag|rolling part of the bag|where the bag rolls|where it creases|lower roll|bag roll|bellows fold|where it folds|where it rolls|at the fold|in the fold|bag fold|fold|airbag fold|air bag fold|bellow fold|rolling lobe|lobe|air spring fold|convolution',
  'bead plate':
    'upper bead plate|top bead plate|mounting plate of the bag|bag top plate|bag mounting plate|upper bag plate|end plate|crimp plate|bag mount plate|air spring plate|bead plate|top plate|upper plate|bag plate|bead ring',
  piston:
    'bag pedestal|air spring piston|lower cup|bottom cup|bag base|base of the bag|pedestal of the bag|spring base|bottom pedestal|piston|pedestal|bag piston|bellows piston|lower piston',
  'bump stop':
    'bump rubber|bump rubbers|snubber|rubber snubber|rubber bump stop|rebound stop|bumper rubber|inner bumper|jounce|stop rubber|bump pad|bump stop|bumpstop|rubber stop|rubber bumper|jounce bumper|jounce stop',
  pump: 'air maker|electric air pump|electric compressor|12 volt compressor|24v compressor|24 volt compressor|aux air compressor|auxiliary compressor|on board compressor|onboard compressor|compessor|compresser|compresssor|compressor unit|air pmp|susp compressor|suspension compressor|little compressor|pump|comp|cmp|compressor|compresor|compressore|compr|compress|air pump|aux compressor|cmprsr|air comp|air compressor|12v compressor|the comp|commpress|cmpr|pmp|kompressor',
  motor:
    'compressor electric motor|electric motor|motor of the pump|pump electric motor|motor windings|armature|comp mtr|motor positive|motor plus terminal|motor feed terminal|motor plug|motor|pump motor|comp motor|compressor motor|mtr|motor terminal|motor lead|motor lug|motor post|motor connector',
  'pump head':
    'cylinder head of the pump|head of the pump|head of the compressor|compressor cylinder|pump cylinder|pump top end|compressor top|head casting|cylinder of the pump|compressor barrel|pump head|head|comp head|compressor head|cyl head|cylinder head',
  'intake filter':
    'compressor air filter|pump air filter|comp air filter|intake screen|intake strainer|filter foam|foam filter|intake silencer|breather filter|air cleaner|intake cleaner|filter on the compressor|filter on the pump|inlet air filter|felt filter|intake filter|air filter|filter|intake|intake element|inlet filter|comp filter|compressor filter|pump filter|air intake|pump intake|filter element|suction filter',
  unloader:
    'unloader vlv|unloading valve|head relief|start unloader|unloader pin|unloader assembly|decompression valve|unloader solenoid|bleed down valve|unloder|unloader|unloader valve|unldr|blow down valve|blowdown valve|unloader port|head unloader',
  'discharge check':
    'check at the tank|check valve at the tank|check valve on the tank|tank inlet check|check valve before the tank|check valve between the pump and the tank|outlet check valve|pump outlet check|check valve on the pump|check valve at the pump|compressor outlet check|tank nonreturn|tank non return valve|discharge non return|discharge check|discharge check valve|tank check|tank check valve|pump check|pump check valve|compressor check valve|comp check valve|outlet check|reservoir check valve|tank nrv|pump nrv|comp check|discharge chk|tank chk|compressor check',
  'discharge line':
    'pipe from dryer to tank|pipe from the dryer to the tank|line from dryer to tank|line from the dryer to the tank|hose from the dryer to the tank|dryer to tank line|dryer to tank pipe|pump discharge hose|pump outlet hose|line from the pump|line from the compressor|line off the compressor|line off the pump|line from the pump to the tank|hose from the pump|pump to tank line|pump to tank hose|compressor to tank line|compressor hose|compressor outlet line|stainless braided line|copper line from the compressor|hot line|delivery pipe from the compressor|discharge line|discharge hose|discharge|outlet line|outlet hose|braided hose|pump outlet|pump line|comp line|discharge pipe|compressor line|delivery side of the pump|pump discharge|comp hose|outlet pipe',
  'check valve':
    'oneway valve|nonreturn valve|non return vlv|back check|chck valve|chk vlve|checkvalve|check vlve|nrv valve|n/r valve|n r valve|nr valve|n/r|check valve|one way valve|nrv|non return|non return valve|chk valve|check vlv|chk vlv',
  reeds:
    'reed petals|reed petal|flapper valves|flappers|valve plate reeds|leaf valves in the head|head reeds|the reads|reed|reed valve|reed plate',
  rings:
    'compression rings|compressor rings|piston cup|piston seal|cup seal|pump piston ring|comp rings|ring|piston ring|pump rings',
  'pressure switch':
    'presure switch|air pressure switch|compressor switch|air governor|pump pressure switch|cut in switch|cut out switch|tank switch|tank pressure switch|switch on the tank|compressor governor|pressure switch|press switch|pres switch|press sw|pressure sw|pres sw|psw|p switch|pressur switch|switch|sw|governor|points|contacts|cut off switch|switch contacts|pressure swich|s/w|air switch|pump switch|comp switch',
  'switch input':
    'pressure switch input|switch input|switch in|sw in|switch inlet terminal|into the pressure switch|into pressure switch|into the switch|into switch|in to the pressure switch|in to the switch|feed side of the switch|feed side of the pressure switch|input of the switch|input side of the switch|switch feed|pressure switch feed|in at the switch|going into the switch|coming into the switch',
  'switch output':
    'out of it|switch out|sw out|pressure switch output|switch output|out of the pressure switch|out of pressure switch|out of the switch|load side of the switch|load side of the pressure switch|output of the switch|output side of the switch|coming out of the switch|past the switch|past the pressure switch',
  'relay coil': 'relay coil|coil|coil of the relay|relays coil|coil terminal|relay coil terminal',
  'relay output':
    'relay out|relay output|the relay output|out of the relay|out of relay|output of the relay|load side of the relay|output side of the relay|past the relay|relay load side',
  relay:
    'power relay|relay block|relay socket|relay base|contactor|pump contactor|motor relay|ice cube relay|relay|rly|rely|pump relay|comp relay|compressor relay|relay contact|relay points',
  fuse: 'compressor fuse|blade fuse|fuse block|main fuse|fuse link|fusible link|maxi fuse|mega fuse|fuse|inline fuse|in line fuse|pump fuse|comp fuse|fuse holder|fuseholder',
  breaker:
    'comp breaker|compressor breaker|pump breaker|thermal breaker|breaker switch|manual breaker|resettable breaker|breaker|circuit breaker|cb|mcb',
  battery:
    'house batteries|chassis battery|chassis batteries|coach batteries|start battery|start batteries|battery|batt|bat|batteries|coach battery|house battery|house batts|batt post|battery post|battery terminals|battry',
  ground:
    'chassis ground|frame ground|ground connection|earth connection|neg side|negative side|ground side|earth side|motor ground|pump ground|ground return|ground|earth|ground stud|earth stud|ground post|ground bolt|ground strap|earth strap|gnd|ground wire|earth lead|ground lug|earth wire|earth cable|ground cable',
  'feed cable':
    'battery cable to pump|battery cable to the pump|cable to the pump|pump cable|hot lead|positive cable|positive wire|pos cable|supply wire|positive feed|red wire|hot side|feed side|power side|motor feed|pump feed wire|pos side|positive side|battery cable|feed cable|feed wire|power wire|power lead|feed|power feed|hot wire|supply cable|wire|wiring|cable|harness|power cable|live feed|live wire|main cable',
  'key switch':
    'ignition|key ignition|ignition barrel|ign sw|key switch|ignition switch|ign switch|ignition feed|key feed|ign feed',
  solenoid:
    'dump solenoid|kneel solenoid|solenoid vlv|sol valve|ride height solenoid|susp solenoid|solenoid|sol|solenoid valve|air solenoid',
  brushes: 'carbons|brush set|brush gear|pump brushes|comp brushes|brushes|brush|motor brushes|carbon brushes',
  wheel: 'wheel|whl',
  tyre: 'tire tread|tyre tread|rim and tire|tires on|outer tyre|inner tyre|outer tire|inner tire|steer tires|steer tyres|drive tires|drive tyres|tag tires|tag tyres|tyre pressure|tire pressure|tyre|tire|tyr|tread',
  'wheel bearing': 'hub|hubs|wheel hub|wheel brgs|hub brg|brg|wheel hub bearing|wheel bearing|bearing|hub bearing',
  shock:
    'shox|struts|shock body|shock tube|shock|shock absorber|damper|shocky|shockie|shokky|shocker|absorber|telescopic|shok',
  'shock bushing':
    'shock eye bush|shock eye bushing|shock rubber|shock rubbers|shock mount bushing|shock mount rubber|shock grommet|shock grommets|shock mount bush|shock bushing|shock bush|shock bushes|shock eye|damper bush|damper bushes|damper bushing',
  'control arm':
    'torque arm|torque rod|a arm|wishbone|tie bar|locating arm|panhard|panhard rod|v rod|locating rod|reaction rod|swingarm|trailing link|control arm|lower control arm|upper control arm|lower arm|upper arm|swing arm|trailing arm|suspension arm|radius arm|radius rod',
  pin: 'hinge pin|control arm pin|pivot bolt pin|pin|swing arm pin|pivot pin|arm pin|pivot|king pin|kingpin',
  bushing:
    'silent block|silentbloc|silentblock|arm bush|arm bushing|arm bushes|rubber bush|pivot bush|pivot bushing|pivot bushings|trailing arm bushing|trailing arm bush|control arm bushing|control arm bush|radius rod bush|torque rod bush|torque rod bushing|bushing|bush|bushes',
  bracket:
    'bracketry|mounting bracket|pivot bracket|mount bracket|frame bracket|arm mount|bracket|arm bracket|brkt|hanger bracket|hanger',
  shim: 'spacer shim|packing shim|alignment shim|wedge shim|shim stack|shim|shim pack',
  bolt: 'bolt|stud',
  'torsion bar':
    'torsion rod|front torsion bar|torsion bar|tbar|t bar|torsion adjuster|torsion bar adjuster|torsion|torsion anchor',
  frame: 'chassis member|sub frame|crossmember|cross member|frame|frame rail|chassis|chassis rail|rail|subframe',
  axle: 'axle housing|axle tube|axle|bogie|bogy|boggy|tandem',
  floor: 'floor|shop floor|ground level|pad|concrete',
  coach:
    'coach|bus|rig|motorhome|motor home|rv|unit|machine|vehicle|body|whole coach|whole bus|all round|all four corners|all 4 corners|4 corners|four corners|all corners|all around|the whole thing|camper',
  'panel port': 'panel port|ports on the panel',
  ambient:
    'outdoor temperature|outside air|outdoor temp|temp outside|overnight temp|ambient|outside|outside temp|outdoor|air temp|ambient temp|shop temp|outside temperature|out side|weather|shop temperature|ambient temperature|yard temp',
  load: 'axle load|corner weight|wheel weight|axle weight|scale weight|scale|weighbridge',
  'water tank': '',
  jack: '',
  stand: '',
};

/** Parts that belong to the air side of one rear side: an end said with them adds nothing. */
export const airSide: ReadonlySet<string> = new Set([
  'height valve',
  'valve cover',
  'inlet seat',
  'inlet check',
  'exhaust seat',
  'exhaust port',
  'valve to panel line',
  'link',
  'arm',
  'bellows line',
  'bellows',
  'bellows crimp',
  'bellows fold',
  'bead plate',
  'piston',
]);

/** Qualifiers that turn one part into another when both are said together ("bag" + "crimp"). */
export const partJoins: Readonly<Record<string, Readonly<Record<string, (typeof parts)[number]>>>> = {
  bellows: {
    'bellows crimp': 'bellows crimp',
    'bellows fold': 'bellows fold',
    piston: 'piston',
    'bead plate': 'bead plate',
    fitting: 'bellows line',
    line: 'bellows line',
    gauge: 'bellows',
    ring: 'bellows crimp',
    rings: 'bellows crimp',
  },
  'height valve': {
    'exhaust port': 'exhaust port',
    'valve cover': 'valve cover',
    'inlet seat': 'inlet seat',
    'exhaust seat': 'exhaust seat',
    'inlet check': 'inlet check',
    link: 'link',
    arm: 'arm',
    fitting: 'height valve',
  },
  tank: {
    drain: 'drain',
    gauge: 'tank',
    fitting: 'tank',
    'discharge check': 'discharge check',
    'check valve': 'discharge check',
    relief: 'relief',
    line: 'supply line',
    'test port': 'test port',
  },
  pump: {
    'pump head': 'pump head',
    motor: 'motor',
    relay: 'relay',
    fuse: 'fuse',
    'intake filter': 'intake filter',
    'discharge line': 'discharge line',
    'check valve': 'discharge check',
    unloader: 'unloader',
    'pressure switch': 'pressure switch',
    line: 'discharge line',
    rings: 'rings',
    reeds: 'reeds',
    breaker: 'breaker',
    ground: 'ground',
  },
  'pump head': { unloader: 'unloader' },
  shock: { bushing: 'shock bushing', 'shock bushing': 'shock bushing' },
  tyre: { axle: 'tyre' },
  wheel: { 'wheel bearing': 'wheel bearing', tyre: 'tyre' },
  'control arm': { pin: 'pin', bushing: 'bushing', bracket: 'bracket' },
  'pressure switch': { line: 'gauge line' },
  'intake filter': { 'inlet check': 'inlet check' },
  supply: { fitting: 'supply line' },
  'supply line': { fitting: 'supply line', line: 'supply line' },
  'valve to panel line': { fitting: 'valve to panel line', line: 'valve to panel line' },
  'discharge line': { fitting: 'discharge line' },
  'gauge line': { fitting: 'gauge line' },
  'bellows line': { fitting: 'bellows line', line: 'bellows line' },
  panel: { line: 'valve to panel line', 'panel port': 'panel port', fitting: 'panel port' },
  gauge: { line: 'gauge line' },
  'torsion bar': { bolt: 'torsion bar', bracket: 'torsion bar' },
  relay: { ground: 'ground' },
  breaker: { fitting: 'breaker' },
  fuse: { fitting: 'fuse' },
  battery: { fitting: 'battery' },
  ground: { fitting: 'ground' },
  'feed cable': { fitting: 'feed cable' },
  motor: { brushes: 'brushes', ground: 'ground' },
  dryer: { 'intake filter': 'dryer' },
};
