/**
 * Dangers by their make-up: a deed, what it is done to, and what makes it dangerous. They stand beside the patterns of
 * words/hazards.ts and see wordings that no pattern lists. Data only; over lower-cased words without apostrophes.
 */
import type { HazardName } from '../shapes.ts';

export type Danger = {
  hazard: HazardName;
  /** One word: what is done. */
  deed: RegExp;
  /** One word within `near` words after the deed: what it is done to. */
  thing: RegExp;
  near: number;
  /** What must, and what must not, stand in the text that begins at the thing. */
  then?: RegExp;
  never?: RegExp;
  /** What must, and what must not, stand anywhere in the sentence. */
  also?: RegExp;
  unless?: RegExp;
};

const person =
  /^(?:go|going|goin|gone|went|get|gets|getting|got|crawl\w*|climb\w*|slid\w*|slip\w*|roll|rolled|rolling|duck\w*|pop|popped|popping|nip|nipped|nipping|div(?:e|ed|ing)|dove|scoot\w*|scooch\w*|stick|sticking|stuck|reach\w*|lie|lying|lay|laying|laid|squeez\w*|wriggl\w*|wiggl\w*|creep\w*|crept|put|putting|pok(?:e|ed|ing)|peek\w*|peep\w*|look|looked|looking|work|worked|working|been|am|im|hop|hopped|jump|jumped|sneak\w*|snuck|keep\w*|kept|shimm[iy]\w*|shuffl\w*|kneel\w*|knelt|bend|bending|stay\w*|sit|sitting|sat|head|hand|hands|arm|leg|legs|fingers?|inspect\w*|check\w*)$/;
const opener =
  /^(?:crack|cracking|cracked|screw|screwed|screwing|loosen\w*|undo|undoing|undid|undone|slack\w*|unscrew\w*|disconnect\w*|unhook\w*|unbolt\w*|unplug\w*|uncouple\w*|break|breaking|broke|open|opened|opening|remov\w*|pull|pulled|pulling|pop|popped|popping|cut|cutting|take|taking|took|whip\w*|yank\w*|spin|spun|spinning|releas\w*|detach\w*|separat\w*|tighten\w*|snug\w*|torqu\w*|dismantl\w*|strip|stripped|stripping|unthread\w*)$/;
const airPart =
  /^(?:lines?|airlines?|hoses?|pipes?|fittings?|unions?|nuts?|plugs?|petcock|drain|cock|valves?|bags?|airbags?|bellows|tube|tubing|connectors?|couplings?|elbow|joint|olive|ferrule|switch|check|unloader|dryer|cartridge|reservoir|regulator|tee|cap|port|connection|fitment)$/;
/** Air is behind it, said in the same breath. */
const pressed =
  /\b(?:with|while|when|w|had|has|have|got|still|its?|at|and)\b[^,.;]{0,24}\b(?:air|pressure|pressuri[sz]ed|charged|\d{2,3} ?(?:psi|lbs?|pounds|kpa|#)?|\d(?:\.\d)? ?bar|(?:ten|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred)(?: \w+)? (?:psi|pounds|in)|full|live|aired up|pumped up)\b|\bunder (?:pressure|air)\b|\bpressuri[sz]ed\b|\b(?:without|before|instead of) (?:i |we )?(?:dump|drain|vent|bleed|let|releas|exhaust|empty)\w*|\b(?:not|didnt|havent|hasnt|never|forgot to|no need to|dont need to|dont bother|cant be bothered)\b[^,.;]{0,14}\b(?:dump\w*|drain\w*|vent\w*|bleed\w*|bled|let|releas\w*|empt\w*)|\bto (?:see|hear|feel|find out|check) if\b[^,.;]{0,20}\b(?:air|pressure)\b|\blet(?:ting)? (?:the |some |all )?(?:the )?(?:air|pressure) out\b|\bair inside\b|\band it (?:blew|shot|popped|sprayed|hissed|let go)\b/;
/** A tank or line that is up, said anywhere in the note. */
const standing =
  /\b(?:tank|gauge|system|reservoir|line|bag|bags|it)\b[^.;]{0,14}\b(?:\d{2,3}|full|charged|up|pressuri[sz]ed)\b|\b\d{2,3} ?(?:psi|lbs?|kpa|#)?\b[^.;]{0,10}\b(?:in|on) (?:the |it)/;
const safe =
  /(?<!\b(?:prob|probably|maybe|perhaps|might|may|should|could|must|think|hope|hopefully|guess|reckon|supposed to|if|almost|nearly)(?: (?:be|its|it|is|already|all|been))* )\b(?:drained|vented|bled (?:it|the)|emptied|dumped|no pressure|no air|at zero|air out|reads? (?:zero|0)|depressuri[sz]ed)\b/;

/** A part that cannot be taken off or out without opening the circuit. */
const circuitPart =
  /^(?:lines?|airlines?|hoses?|pipes?|fittings?|unions?|valves?|bags?|airbags?|bellows|tube|tubing|couplings?|elbow|olive|ferrule|unloader|dryer|cartridge|reservoir|regulator)$/;
/** The deed is still to come. */
const intended =
  /\b(?:gonna|going to|about to|wanna|want to|ill|i will|lets|let me|gotta|fixing to|planning to)\b|(?:undo|loosen|slacken|unscrew|disconnect|unhook|unbolt|uncoupl|remov|pull|popp|cutt|tak|detach|unthread|replac|swapp|chang)ing\b[^,.;]{0,40}\bnow\b/;
const notIntended =
  /\b(?:not|isnt|arent|aint|wont|never|dont|doesnt|didnt)\b[^,.;]{0,10}\b(?:gonna|going to|wanna|want|about to)\b|\bdeclin/;

/** "under" that no person is: a pressure under a limit, a leak under a bag. */
export const notUnder =
  /^(?:under|underneath|beneath) (?:\d|about \d|pressure|load|the limit|limit|spec|cut|power|voltage|control|warranty|way|vacuum|normal|a hundred|ninety|eighty|seventy|sixty|fifty|the (?:spec|limit|bag|bags|panel|dash|valve|seat|bonnet|hood|label|cover))\b/;
/** The frame stands on something that holds, said as a fact and not as a condition to come. */
export const supported =
  /\bstands (?:in|set|under)\b(?= (?:and|n|&|wheels|,|b4|before))|\b(?:on|with|over|got)\b[^,.;]{0,20}\b(?:stands|cribbing|pit|ramps)\b/;
export const notSupported =
  /\b(?:till|until|unless|before|no|not|bothered|skip|never mind|without|off|need|needs|forgot|should|isnt|arent|instead of|soft|grass|dirt|gravel|sinking|leaning)\b[^.;]{0,24}\b(?:stands|cribbing|pit|ramps)\b|\bstands\b[^.;]{0,24}\b(?:grass|dirt|gravel|sinking|leaning|next|first|later|soon|after)\b/;
/** A thing, not a person, is put under. */
export const putUnder =
  /^(?:put|putting|stuck|stick|sticking|slid|slide|sliding|lay|laid|set)\b[^.;]{0,20}\b(?:blocks?|jacks?|stands?|wood|timbers?|chocks?|pan|bucket|light|boards?|cardboard|tray|tarp|camera|phone|4x4|planks?|pads?|cribbing)\b/;

export const dangers: readonly Danger[] = [
  {
    hazard: 'under unsupported',
    deed: person,
    thing: /^(?:under|underneath|beneath|unders)$/,
    near: 7,
    never: notUnder,
  },
  {
    hazard: 'under unsupported',
    deed: person,
    thing: /^between$/,
    near: 6,
    then: /^between\b[^.;]{0,30}\b(?:wheels?|tires?|tyres?|frame|body|axles?|bags?|bellows|chassis|duals)\b/,
    unless: /\b(?:on|with) (?:the )?(?:axle |jack |rated )?stands\b|\bgap\b|\bmeasur|\bline\b|\bhose\b|\bshim/,
  },
  {
    hazard: 'under unsupported',
    deed: /^(?:go|going|goin|get|getting|crawl\w*|climb\w*)$/,
    thing: /^(?:down|below)$/,
    near: 3,
    then: /^(?:down|below) (?:of )?(?:the )?(?:coach|bus|it|body|vehicle|machine)\b/,
  },
  {
    hazard: 'open under pressure',
    deed: /^(?:bust\w*|wiggl\w*|work|working|worked|twist\w*|shak\w*|rock\w*|knock\w*|break|breaking|broke)$/,
    thing: airPart,
    near: 5,
    then: /^\w+\b[^,.;]{0,12}\bloose\b/,
    unless: safe,
  },
  {
    hazard: 'open under pressure',
    deed: opener,
    thing: airPart,
    near: 5,
    then: pressed,
    never: /\band now\b|\bwrench and\b/,
    unless: safe,
  },
  {
    hazard: 'open under pressure',
    deed: opener,
    thing: airPart,
    near: 5,
    then: /^\w+\b[^,.;]{0,12}\b(?:till|until|unless)\b[^,.;]{0,30}\b(?:zero|0|empty|drained|vented|bled|dead|no (?:more )?(?:air|pressure))\b/,
  },
  {
    hazard: 'open under pressure',
    deed: /^(?:crack|cracking|loosen|loosening|undo|undoing|slacken|slackening|unscrew|unscrewing|disconnect|disconnecting|open|opening|break|breaking|pull|pulling|take|taking|unhook|unhooking|remove|removing|unbolt|unbolting|pop|popping)$/,
    thing: airPart,
    near: 5,
    also: standing,
    unless: safe,
  },
  // "gonna crack the bag line": the same, of what only holds air in
  {
    hazard: 'open under pressure',
    deed: /^(?:crack|break|bust|(?:crack|break|bust)ing)$/,
    thing: /^(?:lines?|airlines?|hoses?|pipes?|fittings?|unions?|tube|tubing|couplings?|elbow|olive|ferrule)$/,
    near: 5,
    also: intended,
    unless: new RegExp(`${safe.source}|${notIntended.source}`),
  },
  // to be opened, and nothing said of the air in it
  {
    hazard: 'open under pressure',
    deed: /^(?:undo|loosen|slacken|unscrew|disconnect|unhook|unbolt|uncouple|remove|pull|pop|cut|take|detach|unthread|replace|swap|change|(?:undo|loosen|slacken|unscrew|disconnect|unhook|unbolt|uncoupl|remov|pull|popp|cutt|tak|detach|unthread|replac|swapp|chang)ing)$/,
    thing: circuitPart,
    near: 5,
    also: intended,
    unless: new RegExp(`${safe.source}|${notIntended.source}`),
  },
  {
    hazard: 'jack only',
    deed: /^(?:sat|sitting|sits|held|holding|resting|rests|hanging|supported|standing|leave|left|leaving)$/,
    thing: /^jacks?$/,
    near: 6,
    never: /^jacks? ?stands?/,
    unless: /\bstands (?:in|under|set)\b|\bon stands\b/,
  },
  {
    hazard: 'jack only',
    deed: /^jacks?$/,
    thing: /^(?:enough|hold|holds|do|trust|safe)$/,
    near: 5,
    never: /^do(?:wn|es)?$/,
    unless: /\bstands (?:in|under|set)\b|\bon stands\b/,
  },
  {
    hazard: 'relief defeated',
    deed: /^(?:screw\w*|turn\w*|wind|winding|wound|crank\w*|tighten\w*|adjust\w*|bump\w*|reset|set|shim\w*|clamp\w*|wir\w*|tap(?:e|ed|ing)|block\w*|seal\w*)$/,
    thing: /^(?:relief|prv|safety)$/,
    near: 4,
    then: /^(?:relief|prv|safety)\b[^.;]{0,24}\b(?:down|up|to \d+|higher|tighter|shut|closed|off)\b/,
  },
  {
    hazard: 'bellows unrestrained',
    deed: /^(?:blow\w*|blew|inflat\w*|air|airing|aired|pump\w*|fill\w*|test\w*|charg\w*)$/,
    thing: /^(?:bags?|airbags?|bellows|spring)$/,
    near: 4,
    then: /^(?:bags?|airbags?|bellows|spring)\b[^,.;]{0,20}\b(?:loose|first before|before (?:it goes|i fit|fitting|mounting|i mount|its on)|off the|out of the|unmounted|in the vice|in my hands?|on (?:the |my |a )?(?:bench|floor|table|ground))\b/,
  },
  {
    hazard: 'over-pressure',
    deed: /^(?:keeps?|wont|never|still|doesnt|not|isnt|just|kept)$/,
    thing:
      /^(?:going|running|pumping|climbing|quit|quits|stop|stops|stopping|shut|shutting|off|cut|cutting|building|rising|on)$/,
    near: 4,
    also: /\b(?:tank|gauge|psi|up to|at|reads?|past|now|says?|over|its|pressure)\b[^.;]{0,16}\b(?:12[5-9]|1[3-9]\d|2\d\d)\b(?! ?(?:mm|v\b|volts|a\b|amps|kpa|miles|mi\b|km))|\b(?:8[7-9]|9\d|1\d\d)\d ?kpa\b|\b(?:9|1\d)(?:\.\d)? ?bar\b/,
  },
  {
    hazard: 'over-pressure',
    deed: /^(?:pump\w*|runs?|ran|running|goes|going|went|climb\w*|blows?|blew|straight|right|sails?|carr(?:y|ied|ies|ying)|kept|keeps|shot|shoots|got|gets|on)$/,
    thing: /^(?:past|through|beyond|over)$/,
    near: 3,
    then: /^(?:past|through|beyond|over)(?: the| its)? (?:cut[ -]?out|cut[ -]?off|shut[ -]?off|limit|set ?point|red)/,
  },
  {
    hazard: 'over-pressure',
    deed: /^(?:relief|safety|popoff|prv)$/,
    thing: /^(?:going|popping|lifting|blowing|popped|lifted|blew|pops|lifts|blows|vents|venting)$/,
    near: 5,
    unless: /\b(?:holds|tested|opens? at|should|rated|plug\w*|cap\w*|block\w*|tap\w*|bolt|stop)\b/,
  },
  {
    hazard: 'drive disabled',
    deed: /^(?:driv(?:e|en|ing)|drove|mov(?:e|ed|ing)|tow\w*|limp\w*|nurs\w*|run|ran)$/,
    thing: /^(?:flat|down|deflated|empty|blown|burst|stops|dead|out)$/,
    near: 13,
    never: /^(?:down|flat|out) (?:the|to|a|ground|floor|road|there|here|of)\b/,
    also: /\b(?:with|on)\b[^,.;]{0,20}\b(?:bags?|bellows|airbags?|side|stops|air|left|right)\b/,
    unless: /\bcomes? (?:back )?up\b|\blevels?\b|\bpump\b|\bcomp(?:ressor)?\b|\bpark\w*|\btowed in\b|\btow truck\b/,
  },
  {
    hazard: 'cords driven',
    deed: /^(?:driv(?:e|es|en|ing)|drove|run|running|ran|take|taking|took|limp\w*|mov(?:e|ed|ing)|roll\w*|send)$/,
    thing: /^(?:cords?|threads?|plies|fabric|canvas)$/,
    near: 16,
    also: /\b(?:with|on)\b[^.;]{0,40}\b(?:cords?|threads?|plies|fabric|canvas)\b/,
  },
  {
    hazard: 'pump may start',
    deed: /^(?:hands?|fingers?|arm|thumb)$/,
    thing: /^(?:pump|comp|compressor|belt|fan|motor|flywheel)$/,
    near: 5,
    then: /^\w+\b[^.;]{0,50}\b(?:starts?|started|kick(?:s|ed)?|came on|comes on|turned over)\b/,
    unless: /\bby hand\b|\b(?:breaker|fuse) (?:is )?(?:out|off|pulled)\b|\bpower (?:is )?(?:off|cut)\b/,
  },
  {
    hazard: 'hot parts',
    deed: /^(?:grab\w*|touch\w*|hold\w*|feel\w*|handle|handling|undo\w*|tak(?:e|ing)|remov\w*|put|lay|lean\w*)$/,
    thing: /^(?:discharge|head|cylinder|compressor|comp|pump)$/,
    near: 5,
    then: /^\w+\b[^.;]{0,24}\b(?:right|straight|just) after\b[^.;]{0,14}\b(?:run|runs|running|ran|shut|stops?|stopped|drive)\b|^\w+\b[^.;]{0,24}\bjust ran\b/,
  },
  {
    hazard: 'air at person',
    deed: /^(?:fingers?|thumb|palm|hand|hands|cheek|face)$/,
    thing: /^(?:line|hose|nozzle|pipe|jet|airline)$/,
    near: 6,
    also: /\b(?:over|against|across|in front of|on the end|into)\b/,
    unless: /\b(?:no air|drained|vented)\b/,
  },
  {
    hazard: 'torsion bar under load',
    deed: /^(?:unwind\w*|unwound|undo\w*|undid|spin\w*|spun|releas\w*|slack\w*|loos\w*|back|backed|backing|unload\w*|let|letting)$/,
    thing: /^(?:torsion|tbar)$/,
    near: 4,
    unless: /\b(?:unloaded|load is off|load off|off the ground|on stands)\b/,
  },
  {
    hazard: 'torsion bar under load',
    deed: /^(?:torsion|tbar)$/,
    thing: /^(?:load|weight|loaded)$/,
    near: 9,
    unless: /\b(?:unloaded|load is off|no load|load off)\b/,
  },
  {
    hazard: 'cords driven',
    deed: /^(?:wrap\w*|tap(?:e|ed|ing)|patch\w*|glu(?:e|ed|ing)|sleev\w*|clamp\w*|seal\w*|super\w*)$/,
    thing: /^(?:bags?|airbags?|bellows)$/,
    near: 4,
    also: /\b(?:tape|glue|patch\w*|sealant|duct|cable ties|inner tube|rubber|kit|home|drive)\b/,
  },
  {
    hazard: 'link pulled under',
    deed: /^(?:push\w*|pull\w*|lift\w*|flick\w*|mov(?:e|ed|ing)|trip\w*|yank\w*|shov\w*|knock\w*|rais\w*|lower\w*|hold\w*|held|press\w*|swing\w*|swung)$/,
    thing: /^(?:arm|lever|link|linkage|rod)$/,
    near: 5,
    also: /\b(?:under|underneath|beneath|lying|laying|between)\b/,
    unless: /\bjack\b[^,.;]{0,12}\bunder\b|\b(?:link|arm|lever|rod) under\b|\bnobody under\b|\bfrom outside\b/,
  },
  {
    hazard: 'heat on line',
    deed: /^(?:hit|hitting|heat\w*|warm\w*|thaw\w*|put|putting|point\w*|aim\w*|play|playing|wav\w*|run|running|use|using|used|got|get|take|took|taking|cook\w*)$/,
    thing: /^(?:torch|blowtorch|blowlamp|flame|gun|lamp)$/,
    near: 9,
    also: /\b(?:drain|drn|line|valve|hose|frozen|frozn|froze|fitting|ice|iced|tank|pipe|petcock|tube)\b[^;]*\b(?:torch|blowtorch|blowlamp|flame|heat gun|lamp)\b/,
    unless: /\b(?:head ?lamp|inspection lamp|lead lamp|torch light|timing|with a lamp|grease gun|soap gun)\b/,
  },
  {
    hazard: 'soft ground',
    deed: /^(?:stands?|jacks?|blocks?|timber|cribbing)$/,
    thing: /^(?:asphalt|sand|grass|dirt|gravel|mud|soil|lawn|field|clay|snow|ice|turf)$/,
    near: 6,
  },
  {
    hazard: 'soft ground',
    deed: /^(?:stands?|frame|chassis|propped|sat|sitting|coach|bus)$/,
    thing: /^(?:bricks?|cinderblocks?|breezeblocks?|lumber|pallets?)$/,
    near: 6,
  },
  {
    hazard: 'interlock defeated',
    deed: /^hot$/,
    thing: /^(?:wire|wired|wiring)$/,
    near: 1,
    unless: /\b(?:the|a|burnt|broken|loose) hot wire\b/,
  },
  { hazard: 'interlock defeated', deed: /^hotwir\w+$/, thing: /^(?:pump|comp|compressor|motor|it|switch)$/, near: 4 },
];

/** What stands before "under the coach" when a thing is under it and nobody goes there. */
export const thingsUnder =
  /\b(?:leaks?|leaking|hiss\w*|noise|sound|bubbles|water|drips?|dripping|puddle|oil|rust\w*|air|line|hose|pipe|wire|bracket|bang|knock\w*|smell|stone|mud|cable|somewhere|coming from|heard|hear)\b[^.;]{0,24}$/;

/** What takes a danger back that its words alone would tell: the deed undone, the thing safe. */
export const takenBack: Readonly<Partial<Record<HazardName, RegExp>>> = {
  // the same size again
  'fuse enlarged': /\b(\d{2}) ?(?:a|amps?)?\b[^.;]*\b(?:new|another|same) \1\b/,
  'jack only':
    /\bnot (?:going |getting |been |gone )?(?:under|in under|underneath)\b(?! ?(?:stands|control))|\b(?:set|put|got) (?:\w+ ){0,2}stands (?:under|in|up)\b(?![^.;]{0,20}\b(?:next|later|first)\b)/,
  'soft ground': /\boff the (?:grass|dirt|gravel|mud|field|verge)\b[^.;]{0,14}\bonto\b/,
  'bellows unrestrained': /\bno air in (?:it|them|the bag)\b/,
  // "tank is empty, after that i take off the check valve"
  'open under pressure':
    /\b(?:bled|dumped|vented|released|let out|exhausted) (?:off )?(?:all )?(?:the )?(?:air|system|pressure|everything)(?: down| off| out)?,? (?:then |and |& )?(?:pulled|removed|took|swapped|changed|replaced|opened)\b(?![^.;]*\b(?:still|with \d))|\btank (?:is |at |reads |shows |on )?(?:at )?(?:empty|0(?: ?(?:psi|bar|kpa))?|zero|drained)\b(?! ?\.\d)[, ]+(?:and )?(?:then|after that|so|now)\b[, ]+(?:i|we) (?:take|took|open|pull|undo|remove|unscrew|loosen)\w*\b(?!.*\b(?:with|still|got|has)\b[^.;]{0,12}\d)(?!.*\b(?:bags?|bellows|air ?bags?)\b)/,
  'weld near line': /\b(?:relay|contacts?|points) (?:was |were |is |are |got )?welded\b/,
  'drive disabled': /\b(?:nobody|no one) (?:is )?driving\b/,
  'relay tapped': /\b(?:so|then|and) (?:i|we) (?:replaced|renewed|changed|swapped)\b/,
  'interlock defeated':
    /\b(?:took|taken|pulled) (?:the |my )?(?:jumper|bridge|link wire)\b[^.;]{0,14}\boff\b|^(?:the )?jumpers? (?:is |was )?(?:removed|off|out)\b/,
};
