/** Spellings of parts, `|` between them; lower case, apostrophes left out. Data only. */
import type { parts } from '../names.ts';

export const partWords: Readonly<Record<(typeof parts)[number], string>> = {
  tank: 'tank|tk|tnk|air tank|receiver|wet tank|ping tank|air reservoir|reservoir|res|resv|accessory tank|aux tank|air bottle|air can|tank gauge|tank gage|tank pressure|tank pres|tank press|tank psi|tank air|system pressure|system|sys pressure|store|main tank|air receiver|gauge pressure',
  drain:
    'drain|drain cock|draincock|petcock|pet cock|drain valve|drain plug|cable drain|auto drain|spitter|bleeder|drain tap|tank drain|drain off',
  relief: 'relief|relief valve|safety valve|prv|pop off|pop off valve|popoff|blow off valve|safety relief',
  gauge:
    'the dash|dash|cab gauge|gauge|gauge itself|gage|guage|dash gauge|dash gage|needle|pressure gauge|air gauge|dial',
  'test port': 'test port|test gauge|the test gauge|test point|test fitting|schrader|test connection',
  'protection valve': 'protection valve|pressure protection valve|ppv|prot valve|priority valve',
  regulator: 'regulator|reg|press reg|pressure regulator',
  dryer: 'dryer|drier|air dryer|air drier|desiccant|cartridge|dryer cartridge',
  'supply line':
    'supply line|supply|supply hose|supply pipe|feed line|air supply|main line|supply tube|supply tubing|tank line|line from tank|line off the tank|inlet line|supply fitting',
  'height valve':
    'hght valve|hght vlv|hgt valve|hgt vlv|valve of height|height valve|hv|hvs|height value|hight value|leveling value|levelling value|height vlv|leveling valve|levelling valve|leveller|leveler|air leveling valve|height control valve|hcv|ride height valve|rhv|ride height control|ride height control valve|level valve|leveling vlv|levelling vlv|lev valve|lev vlv|ht valve|ht vlv|height valv|valve|vlv|valv|levelling valv|height control|lvl valve|lvl vlv|levelling control valve|air levelling valve|lvling valve',
  'valve cover': 'valve cover|at the cover|the cover|cover gasket|valve gasket|valve body gasket|height valve cover',
  'inlet seat': 'inlet seat|intake seat|supply seat|feed seat',
  'inlet check': 'inlet check|inlet check valve|inlet chk|check in the valve|inlet nrv|height valve check',
  'exhaust seat': 'exhaust seat|exh seat|dump seat',
  'exhaust port':
    'exhaust hose|exhaust in water|hose from the exhaust|exhaust port|exhaust|exh|exh port|valve exhaust|exhaust of the valve|vent port|dump port|exhaust hole|valve exh|height valve exhaust|levelling valve exhaust|leveling valve exhaust',
  'valve to panel line':
    'line from the height valve to the panel|line from the valve to the panel|line from height valve to panel|line between the height valve and the panel|line between the valve and the panel|line between valve and panel|valve to panel line|valve to panel|line to the panel|line to panel|panel line|valve panel line|hose to the panel',
  link: 'link clamp|arm clamp|clamp|link|linkage|link rod|rod|drop link|overtravel lever|rubber coupling|coupling|link arm|valve link|height link|connecting link|dog bone|dogbone|valve linkage|levelling link|leveling link|drop rod',
  arm: 'arm|valve arm|lever|actuating arm|valve lever|control lever|height arm|levelling arm|leveling arm|height valve arm',
  panel:
    'panel|dump valve|air dump|levelling panel|leveling panel|control panel|manual panel|panel valve|dump switch|air panel|panel knob|knob|panel control|levelling controls|leveling controls',
  'panel feed': 'panel feed|panel supply|feed to the panel|panel feed line',
  'bellows line':
    'bellows line|bag union|bellows union|air bag union|bag elbow|bag line|delivery line|delivery|line to the bag|line to bag|bag hose|delivery pipe|line to the bellows|line to bellows|airbag line|line to the airbag|air bag line|bag supply line|spring line|bellows pipe|bag pipe|delivery hose|delivery tube|hose to the bag|hose to bag|pipe to the bag|pipe to bellows|bag line fitting|bag fitting|bellows fitting|delivery fitting|airbag fitting|air bag fitting|spring fitting|airbag pipe',
  fitting:
    'fttg|fttngs|fitting|line fitting|hose fitting|ftg|connector|compression fitting|push in|union|elbow|tee|nut|olive|ferrule|joint|connection|push fit',
  line: 'line|hose|tube|tubing|nylon|nylon line|air line|airline|pipe|air pipe|air hose|nylon tube|nylon tubing|poly line|plastic line',
  'gauge line': 'gauge line|gage line|dash line|cab line|line to the gauge|gauge pipe|line to gauge|gauge tube',
  bellows:
    'air cushion|air cushions|bellow|air pillow|pillow|rubber bag|rubber pillow|rubber air pillow|bag|air bag|airbag|air spring|airspring|air chamber|spring bag|donut|ballon|balloon|air spring bag|rear bag|baloon|air balloon|spring',
  'bellows crimp':
    'bellows crimp|bag crimp|crimp|crimp ring|airbag crimp|air bag crimp|bellow crimp|air spring crimp|bead|lower crimp|the crimp|upper crimp|top crimp|bottom crimp',
  'bellows fold':
    'bellows fold|where it folds|where it rolls|at the fold|in the fold|bag fold|fold|airbag fold|air bag fold|bellow fold|rolling lobe|lobe|air spring fold|convolution',
  'bead plate': 'bead plate|top plate|upper plate|bag plate|bead ring',
  piston: 'piston|pedestal|bag piston|bellows piston|lower piston',
  'bump stop': 'bump stop|bumpstop|rubber stop|rubber bumper|jounce bumper|jounce stop',
  pump: 'pump|comp|cmp|compressor|compresor|compressore|compr|compress|air pump|aux compressor|cmprsr|air comp|air compressor|12v compressor|the comp|commpress|cmpr|pmp|kompressor',
  motor:
    'motor|pump motor|comp motor|compressor motor|mtr|motor terminal|motor lead|motor lug|motor post|motor connector',
  'pump head': 'pump head|head|comp head|compressor head|cyl head|cylinder head',
  'intake filter':
    'intake filter|air filter|filter|intake|intake element|inlet filter|comp filter|compressor filter|pump filter|air intake|pump intake|filter element|suction filter',
  unloader: 'unloader|unloader valve|unldr|blow down valve|blowdown valve|unloader port|head unloader',
  'discharge check':
    'discharge check|discharge check valve|tank check|tank check valve|pump check|pump check valve|compressor check valve|comp check valve|outlet check|reservoir check valve|tank nrv|pump nrv|comp check|discharge chk|tank chk|compressor check',
  'discharge line':
    'discharge line|discharge hose|discharge|outlet line|outlet hose|braided hose|pump outlet|pump line|comp line|discharge pipe|compressor line|delivery side of the pump|pump discharge|comp hose|outlet pipe',
  'check valve':
    'n/r valve|n r valve|nr valve|n/r|check valve|one way valve|nrv|non return|non return valve|chk valve|check vlv|chk vlv',
  reeds: 'the reads|reed|reed valve|reed plate',
  rings: 'ring|piston ring|pump rings',
  'pressure switch':
    'pressure switch|press switch|pres switch|press sw|pressure sw|pres sw|psw|p switch|pressur switch|switch|sw|governor|points|contacts|cut off switch|switch contacts|pressure swich|s/w|air switch|pump switch|comp switch',
  'switch input':
    'pressure switch input|switch input|switch in|sw in|switch inlet terminal|into the pressure switch|into pressure switch|into the switch|into switch|in to the pressure switch|in to the switch|feed side of the switch|feed side of the pressure switch|input of the switch|input side of the switch|switch feed|pressure switch feed|in at the switch|going into the switch|coming into the switch',
  'switch output':
    'out of it|switch out|sw out|pressure switch output|switch output|out of the pressure switch|out of pressure switch|out of the switch|load side of the switch|load side of the pressure switch|output of the switch|output side of the switch|coming out of the switch|past the switch|past the pressure switch',
  'relay coil': 'relay coil|coil|coil of the relay|relays coil|coil terminal|relay coil terminal',
  'relay output':
    'relay out|relay output|the relay output|out of the relay|out of relay|output of the relay|load side of the relay|output side of the relay|past the relay|relay load side',
  relay: 'relay|rly|rely|pump relay|comp relay|compressor relay|relay contact|relay points',
  fuse: 'fuse|inline fuse|in line fuse|pump fuse|comp fuse|fuse holder|fuseholder',
  breaker: 'breaker|circuit breaker|cb|mcb',
  battery:
    'battery|batt|bat|batteries|coach battery|house battery|house batts|batt post|battery post|battery terminals|battry',
  ground:
    'ground|earth|ground stud|earth stud|ground post|ground bolt|ground strap|earth strap|gnd|ground wire|earth lead|ground lug|earth wire|earth cable|ground cable',
  'feed cable':
    'feed cable|feed wire|power wire|power lead|feed|power feed|hot wire|supply cable|wire|wiring|cable|harness|power cable|live feed|live wire|main cable',
  'key switch': 'key switch|ignition switch|ign switch|ignition feed|key feed|ign feed',
  solenoid: 'solenoid|sol|solenoid valve|air solenoid',
  brushes: 'brushes|brush|motor brushes|carbon brushes',
  wheel: 'wheel|whl',
  tyre: 'tyre pressure|tire pressure|tyre|tire|tyr|tread',
  'wheel bearing': 'wheel bearing|bearing|hub bearing',
  shock: 'shock|shock absorber|damper|shocky|shockie|shokky|shocker|absorber|telescopic|shok',
  'shock bushing': 'shock bushing|shock bush|shock bushes|shock eye|damper bush|damper bushes|damper bushing',
  'control arm':
    'control arm|lower control arm|upper control arm|lower arm|upper arm|swing arm|trailing arm|suspension arm|radius arm|radius rod',
  pin: 'pin|swing arm pin|pivot pin|arm pin|pivot|king pin|kingpin',
  bushing: 'bushing|bush|bushes',
  bracket: 'bracket|arm bracket|brkt|hanger bracket|hanger',
  shim: 'shim|shim pack',
  bolt: 'bolt|stud',
  'torsion bar': 'torsion bar|tbar|t bar|torsion adjuster|torsion bar adjuster|torsion|torsion anchor',
  frame: 'frame|frame rail|chassis|chassis rail|rail|subframe',
  axle: 'axle|bogie|bogy|boggy|tandem',
  floor: 'floor|shop floor|ground level|pad|concrete',
  coach:
    'coach|bus|rig|motorhome|motor home|rv|unit|machine|vehicle|body|whole coach|whole bus|all round|all four corners|all 4 corners|4 corners|four corners|all corners|all around|the whole thing|camper',
  'panel port': 'panel port|ports on the panel',
  ambient:
    'ambient|outside|outside temp|outdoor|air temp|ambient temp|shop temp|outside temperature|out side|weather|shop temperature|ambient temperature|yard temp',
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
