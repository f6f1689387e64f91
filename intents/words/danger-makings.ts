/**
 * Dangers by their makings: what must stand together in one sentence, in any order. They see wordings that neither the
 * patterns of words/hazards.ts nor the deeds of words/dangers.ts list. Data only; over lower-cased words without
 * apostrophes. A missed danger is worse than a caution too many: they lean towards seeing one.
 */
import type { HazardName } from '../shapes.ts';

export type Making = {
  hazard: HazardName;
  /** Each must stand in the sentence. */
  all: readonly RegExp[];
  /** Letters from the first to the last of them, at most. */
  within: number;
  /** What must not stand in the sentence. */
  unless?: RegExp;
};

const onStands =
  /\b(?:on|with|over|put|set|got) (?:the |her |it |some |all |four |proper |rated |axle |jack |a pair of ){0,3}stands\b(?! (?:first|next|later))|\bstands (?:in|under|set|took|up|placed)\b/;
const noStands =
  /\b(?:no|without|forget|forgot|skip\w*|aint got|havent got|have no|dont own|dont have|not own|didnt (?:use|bother)|cant be bothered|not bother\w*|never mind|instead of|lacking)\b[^.;]{0,18}\bstands?\b|\bunsupported\b|\bunpropped\b/;
const onAir =
  /\b(?:nothing|nowt|nothin|only|just|sat|sitting|held|holding|resting|floating|stood|standing|kept up)\b[^.;]{0,18}\b(?:the )?(?:bags?|bellows|airbags?|air springs?|air)\b|\bon (?:its|her|the) (?:own )?(?:air|bags?|bellows|airbags?)\b/;
const beneath = /\b(?:under(?:neath)?(?! (?:\d|pressure|load|the (?:limit|spec)))|beneath|below)\b/;
const jack =
  /\b(?:bottle ?jack|trolley ?jack|floor ?jack|hydraulic ?jack|scissor ?jack|farm ?jack|jack)\b(?! ?stands?\b)/;
const damage =
  /\b(?:c(?:h)?ords?|canvas|threads?|fabric|plies|torn|tear|tore|split|ripped|rip|bulg\w+|perished|shredded)\b/;
const bag = /\b(?:air ?bags?|bags?|bellows?|air ?springs?)\b/;
const drive =
  /\b(?:driv(?:e|es|en|ing|in)|drove|limp\w*|trip|off to|to the shop|to the dealer|home|back in service|returned to service|on the road|goes out|went out|sent (?:it|her) out|leave the yard|left the yard|take(?:s|n)? (?:it|her) out|nurse|crawl it|roll(?:in|ing|ed)? (?:it|her)|move[ds]?|moving|pull(?:ing)? (?:her|it) (?:round|around|out|in|over))\b/;
const notDriven =
  /\b(?:not|nobody|no one|wont|never|isnt|aint|arent|didnt|havent|hasnt|refused to|refuse to)\b[^.;]{0,12}\b(?:driv\w+|drove|going anywhere|move|moving|moved|leaving)\b|\btow(?:ed|ing|truck)?\b|\blow ?loader\b|\btrailer\b|\bstays? (?:put|parked|here)\b|\bparked up\b|\bafter (?:the |a |his |my )?(?:drive|trip|run)\b/;
const shopAir =
  /\b(?:shop|workshop|garage|garidge|yard|factory|tire shops?|tyre shops?|truck stop|station|mains?)(?: compressor)? (?:air|hose|line|main|supply|airline)\b|\bair ?(?:line|hose) (?:at|of|from|in) the (?:shop|workshop|garage|yard|station)\b|\bbig (?:workshop |shop )?compressor\b|\bexternal air\b|\b(?:workshop|shop|garage|yard) (?:compressor|main)\b|\b(?:the|a) (?:garage|shop|workshop) (?:air|line|hose)\b/;
const regulated =
  /\bthrough (?:a |the |my )?reg\w*|\b(?:with|got|fitted|has|put) (?:a |the |my )?reg(?:ulator)?\b|\bregulated\b|\bturned down\b|\breg(?:ulator)? (?:is |was )?(?:set|at|on|down)\b|\bset (?:to|at) \d/;
const glasses =
  /\b(?:gla(?:s)?ses|goggles|eye ?protection|eye ?wear|safety (?:glasses|specs)|specs|visor|face shield|bare ?eyed)\b|\b(?:over|on|for) (?:his|my|her|the|your) eyes\b/;
const bareHot =
  /\b(?:too hot|hot|smoking hot|burn(?:s|ed|t|ing)?|bernt|blister\w*|scald\w*|scorch\w*|singe\w*|red hot|right after (?:pumping|a run|it ran|running)|straight after (?:a run|it ran|pumping|running)|after (?:a )?long run|after a run|take(?:s)? your skin|cool(?:ed|s)?(?: down| off)?)\b/;
const hotPart =
  /\b(?:head|pump|pomp|comp|compressor|motor|cylinder|discharge (?:line|pipe)|delivery (?:line|pipe)|exhaust pipe|filter)\b/;
const touching =
  /\b(?:bare hands?|my hands?|your hands?|his hands?|take hand|hands? on|with (?:my|the|his) hand|going in with|touch\w*|grab\w*|hold of|got hold|took hold|knuck\w*|fingers?|forearm|(?:my|his|her|your|an|bare) arm|palm|skin|gloves|pull(?:ing|ed)? the (?:\w+ )?(?:head|line)|undo\w*|reach(?:ing|ed)?|lean(?:ed|ing) on|change the (?:intake )?filter|burn myself|handling|feel(?:ing)? the (?:motor|pump|head))\b/;
const livePower =
  /\b(?:power|current|juice|supply|electric\w*|ignition|key)\b(?: (?:was|is|were|still|left|being))* (?:on|live)\b|\bwith the (?:ignition|key|power) on\b|\bnot isolated\b|\bisolate\b|\bkill the power\b|\b(?:nobody|not|never|didnt|without|not bothering to|no one|havent|hasnt)\b[^.;]{0,14}\b(?:pull\w*|tak\w*|cut\w*|kill\w*|isolat\w*|remov\w*|disconnect\w*)\b[^.;]{0,12}\b(?:fuse|power|breaker|battery|supply|plug)\b|\bstart(?:s|ed|ing)?(?: up)? (?:by itself|on its own|on me|up on me|while|when)\b|\bcould (?:the )?(?:pump|comp\w*|it) start\b|\bclose at any time\b|\bstart(?:ed|s)? wh?ile\b|\b(?:power|fuse|current) (?:need|have|has) to be (?:off|out)\b|\bdoes the power\b/;
const inPump =
  /\b(?:hands? (?:is |are )?(?:in|inside|on|near)|fingers?|put hand|open(?:ed|ing)? the (?:pump|pomp|compressor|comp)|chang(?:e|ed|ing) the (?:brushes|reeds|filter|valves?)|clean(?:ing)? the (?:reeds|head|pump|filter)|work(?:ing)? on (?:the )?(?:pump|comp|compressor|it)|before work|holding (?:it|the pump)|head (?:is )?(?:off|removed)|pumps? not running|will start by itself|start by itself)\b/;
const brake =
  /\bbr(?:ake|eak|akes|eaks) (?:lines?|hoses?|pipes?|chambers?|cans?|arms?|drums?|unions?|fittings?)\b|\b(?:lines?|hoses?|pipes?) of (?:the )?brakes?\b|\bcaliper\b|\bslack adjuster\b|\bspring brake\b|\bhubs?\b|\bbrake drum\b|\bfree the drum\b/;
const opening =
  /\b(?:open\w*|take(?:s|n)? (?:off|the|it)?|taking|took|touch\w*|back(?:in|ing|ed)?(?: it| the \w+)? off|backin|loos\w*|undo\w*|undid|undone|remov\w*|disconnect\w*|crack(?:ed|ing)?|slacken\w*|off to get|off for)\b/;

export const makings: readonly Making[] = [
  { hazard: 'under unsupported', all: [beneath, noStands], within: 120 },
  { hazard: 'under unsupported', all: [beneath, onAir], within: 90, unless: onStands },
  {
    hazard: 'under unsupported',
    all: [
      /\b(?:(?:air|air ?bags?|bags?|bellows)\b.{0,30}\b(?:hold|holding|held|keep|keeping|kept)|(?:hold|holding|held|keep|keeping|kept)) (?:it|her|him|the (?:coach|bus|back|rear|body)) up\b/,
      /\b(?:while|whilst|when|so) (?:i|we|he|they|the lad)\b/,
    ],
    within: 90,
    unless: onStands,
  },
  {
    hazard: 'jack only',
    all: [
      jack,
      /\b(?:only thing|only|just|nothing but|by itself|alone|on its own|one jack|own stands|no stands|without stands|instead of|nothing else)\b/,
    ],
    within: 50,
    unless: onStands,
  },
  {
    hazard: 'jack only',
    all: [
      /\bon (?:the|a|my|one|its|just the|only the) (?:\w+ )?jack\b(?! ?stands?\b)/,
      /\b(?:do|doing|work\w*|pull\w*|chang\w*|replac\w*|shocks?|crawl\w*|under\w*|bolts?|remov\w*|fit\w*)\b/,
    ],
    within: 70,
    unless: onStands,
  },
  { hazard: 'jack only', all: [/\btrust\b/, jack], within: 24 },
  {
    hazard: 'jack only',
    all: [/\b(?:one|a|the) jack\b(?! ?stands?\b)/, /\b(?:ok|okay|enough|safe|do)\b/, beneath],
    within: 60,
    unless: onStands,
  },
  {
    hazard: 'soft ground',
    all: [
      /\b(?:(?:jack|axle) ?stands?|stands?|jacks?|jackstands?|blocked up|block(?:ed|ing) (?:it|her)|crib\w*|timbers?|planks?|propped|chocked up|supported)\b/,
      /\b(?:field|dirt|earth|mud|muddy|grass|gravel|sand|soil|lawn|verge|soft|turf|firewood|logs?|bare ground|rain)\b/,
    ],
    within: 80,
    unless:
      /\boff the (?:grass|dirt|gravel|mud|field|verge)\b|\bonto (?:the )?(?:concrete|hard|slab)\b|\bhard standing\b/,
  },
  {
    hazard: 'soft ground',
    all: [
      /\b(?:stack(?:ed)?|pile|loose|couple of|few|one on top of (?:another|the other)|on top of each other)\b/,
      /\b(?:planks?|timbers?|4x4s?|2x4s?|firewood|bits of wood|lumps of wood|wood|bricks?|lumber|pallets?|cinder ?blocks?|breeze ?blocks?)\b/,
      /\b(?:under|jack|frame|chassis|axle|coach|bus|crib\w*|stands?|level\w*|up on|holding|her|it)\b/,
    ],
    within: 60,
  },
  {
    hazard: 'under unsupported',
    all: [
      /\b(?:do|should|must|shall) (?:i|we|you|they) (?:really |even |still )?(?:need|have to|got to|want|use|put|bother)\b/,
      /\b(?:jack ?stands?|axle stands?|stands)\b/,
    ],
    within: 60,
    unless: /\bwhat (?:size|rating|kind)\b|\bwhere\b|\bhow (?:high|many|far)\b|\bwhich\b/,
  },
  {
    hazard: 'open under pressure',
    all: [
      /\b(?:do|must|should|shall) (?:i|we|you) (?:really )?(?:have to |need to |got to )?(?:let (?:the |all |out )*(?:air|pressure|it)(?! sit)|empty|drain|vent|bleed|dump)\b|\b(?:do|must|should) (?:the )?(?:air|tank|pressure) (?:have to |need to )?(?:be |come )/,
      /\b(?:remov\w*|chang\w*|replac\w*|undo\w*|open\w*|swap\w*|take|pull\w*|crack\w*)\b/,
    ],
    within: 90,
  },
  {
    hazard: 'open under pressure',
    all: [
      /\b(?:replac\w*|remov\w*|chang\w*|swap\w*|undo\w*|undid|open\w*|loos\w*|unscrew\w*|disconnect\w*|took|taking|pull\w*|back\w* (?:the|that|a) \w+ out|crack\w*)\b/,
      /\b(?:valves?|lines?|fittings?|unions?|hoses?|pipes?|gauge|relief|plug|drain plug|switch|connections?|conection|check|dryer|bellows|bags?|panel)\b/,
      /\bunder pressure\b|\bnot (?:vented|drained|bled)\b|\bunvented\b|\bundrained\b|\bout of a full tank\b|\bstill (?:pressuri[sz]ed|charged|under pressure)\b|\b(?:w|with) (?:the )?air (?:still|stil) in\b/,
    ],
    within: 110,
    unless: /\b(?:not|never|nothing|nobody)\b[^.;]{0,24}\bunder pressure\b/,
  },
  {
    hazard: 'open under pressure',
    all: [
      /\b(?:loos(?:en|n)ing|undoing|opening|cracking|unscrewing|backing|slackening|disconnecting|unhooking)\b/,
      /\b(?:valves?|lines?|fittings?|unions?|hoses?|pipes?|gauge|plug|connections?|conection|nut|joint)\b/,
      /\b(?:at|with|on) (?:\d{2,3} ?(?:psi|kpa|lbs)|[2-9](?:\.\d)? ?bar)\b/,
    ],
    within: 90,
    unless: /\b(?:noise|hiss\w*|start\w*|opens? at|leak\w*)\b/,
  },
  {
    hazard: 'open under pressure',
    all: [
      /\b(?:hoses?|lines?|pipes?|fittings?|unions?|plug|drain|elbow|gauge|joint|airline)\b/,
      /\b(?:had|got|took|pulled|popped|whipped|cracked|undid|slackened|broke)\b[^.;]{0,30}\b(?:off|open|out|apart|undone|loose)\b/,
      /\b(?:with|and|had|still)\b[^.;]{0,12}\b(?:\d{2,3} ?(?:psi|kpa|lbs?|pounds|#)?|\d(?:\.\d)? ?bar|air|pressure)(?: still)? (?:in (?:it|there|the (?:tank|bag|line|system))|on it|behind it)(?![a-z])/,
    ],
    within: 90,
    unless: /\b(?:no|zero|without|never) (?:air|pressure)\b|\b(?:vented|drained|bled) (?:it |first|down|off)/,
  },
  {
    hazard: 'open under pressure',
    all: [
      /\b(?:dont|do not|never|nobody|no one)\b[^.;]{0,10}\b(?:open|undo|touch|crack|loosen|pull|unscrew|take)\w*\b/,
      /\b(?:its|it has|theres|there is|still|thats)\b[^.;]{0,8}\b(?:got|has|have)?\b[^.;]{0,6}\b(?:\d{2,3}(?: ?(?:psi|lbs?|pounds|kpa))?|air|pressure) (?:still )?(?:in it|in there|on it|behind it)\b/,
    ],
    within: 80,
  },
  {
    hazard: 'open under pressure',
    all: [
      /\b(?:loosened|undid|cracked|backed|opened|unscrewed|slackened)\b[^.;]{0,20}\b(?:plug|fitting|union|line|hose|drain|nut|valve)\b/,
      /\b(?:bit|some|little) (?:of )?(?:air|pressure) (?:still )?(?:left|in|behind)\b/,
    ],
    within: 80,
  },
  {
    hazard: 'relief defeated',
    all: [
      /\b(?:relief|safety ?valve|pop[ -]?off(?: valve)?|prv)\b/,
      /\b(?:plug\w*|plugd|stopper|bung\w*|cap|capped|capping|blank\w*|block\w*|crank\w*|tape|taped|taping|wired? (?:it )?shut|clamp\w*|weld\w*|stiffer|stronger|screw\w* (?:it |the |that )?(?:\w+ ?(?:off|valve)? )?(?:down|in)\b|turn\w* (?:it |the |that )?(?:\w+ ?(?:off|valve)? )?(?:down|in)\b|so it (?:stops|quits|wont|doesnt) (?:lift|pop|blow|vent)\w*|tighten\w*|wind\w* (?:it )?(?:down|in)|spring down|higher)\b|\b(?:swap\w*|chang\w*|replac\w*|put)\b[^.;]{0,24}\b(?:1[5-9]\d|2\d\d) ?psi\b/,
    ],
    within: 70,
    unless:
      /\bnothing\b[^.;]{0,40}\b(?:capped|plugged|blocked)\b|\b(?:not|nt|never|isnt|aint|wasnt|nobody)\b[^.;]{0,12}\bplug\w*|\bplugged (?:with|by) (?:dirt|rust|carbon)\b|\b(?:drain|line|port)\b[^.;]{0,10}\bplug(?:ged)?\b/,
  },
  {
    hazard: 'fuse enlarged',
    all: [
      /\bfuses?\b|\b\d{2} ?amp\b/,
      /\b(?:foil|nail|coin|bolt|bigger|biger|larger|oversized?|uprat\w*|size up|sizes up|next size|more strong|stronger|heavier|more big|higher amp\w*|too big|bent wire|bit of wire|piece of wire|strand of wire|wire across|wire over|no wire)\b/,
    ],
    within: 80,
    unless:
      /\bsame (?:size|rating)\b|\bback to\b|\b(?:took|taken|pulled|removed)\b[^.;]{0,20}\b(?:bigger|oversized?|foil|nail)\b|\bright (?:size|one|fuse)\b|\bwhat (?:is|was) (?:written|on the)\b/,
  },
  {
    hazard: 'fuse enlarged',
    all: [
      /\b(?:put|stuck|threw|fitted|used|run|running|got|using)\b[^.;]{0,6}\b(?:a |an )?(?:2[05]|3[05]|4[05]|50|60|thirty|forty|fifty|sixty)(?: ?a(?:mps?)?)? (?:in )?(?:where|instead of|in place of|for) (?:a |an |the |it (?:had|was) a )?(?:5|7\.5|10|15|2[05]|3[05]|40|ten|fifteen|twenty|thirty|forty)\b/,
    ],
    within: 60,
    unless: /\b(?:psi|kpa|bar|shim|minutes?|hours?|tyres?|tires?)\b/,
  },
  {
    hazard: 'bellows unrestrained',
    all: [
      /\b(?:air ?bags?|bags?|bellows|air ?springs?)(?: is| are| was)? (?:off|out)\b/,
      /\b(?:gonna|going to|will|ill|then|to|and)\b[^.;]{0,12}\b(?:air|pump|blow|inflate|fill) (?:it|them|her|that) (?:up|with|to|by)\b/,
    ],
    within: 70,
    unless: /\b(?:back on|refitted|bolted|new (?:bag|one) (?:on|in)|cage)\b/,
  },
  {
    hazard: 'bellows unrestrained',
    all: [
      /\b(?:air ?bags?|bags?|bellows?|air ?springs?|spring|fill one|filled one|one off)\b/,
      /\b(?:inflat\w*|air(?:ed|ing)? (?:it |them |one )?up|fill\w*|pump\w*|put(?:ting)? air|(?:hold|holds|holding|held) \d+|blow\w* (?:it )?up|blew (?:it )?up|at \d+ ?(?:psi|bar)|\d+ ?(?:psi|bar) in)\b/,
      /\b(?:bench|table|floor|driveway|workbench|off the coach|off coach|out of the coach|not mounted|unmounted|not bolted|isnt bolted|thats not|before (?:installing|fitting|mounting|bolting|it goes)|undone|unrestrained|unbolted|bolts? (?:out|off)|plate (?:off|undone|loose)|not fitted|not fixed|lies? on|lying on|fitted and held|in the vice|in my hands?)\b/,
    ],
    within: 110,
    unless: /\b(?:no air in|not inflated|without air|deflated|flat|vented|cage|fixture|clamped)\b/,
  },
  {
    hazard: 'shop air unregulated',
    all: [
      shopAir,
      /\b(?:unregulated|no reg\w*|without (?:a |any )?reg\w*|straight|direct(?:ly)?|havent got (?:a )?reg\w*|aint got (?:a )?reg\w*|nothing (?:for|to) (?:make|reduce|drop|lower)|wide open|full (?:pressure|blast)|only through|\d\d bar|1[3-9]\d ?psi)\b/,
    ],
    within: 110,
  },
  {
    hazard: 'shop air unregulated',
    all: [
      /\b(?:shop|workshop|garage|garidge|yard|tire shops?|tyre shops?|truck stop)(?: compressor)? (?:air|hose|line|main|airline|air line)\b|\bworkshop line\b/,
      /\b(?:fill\w*|hit|tee|connect\w*|hook\w*|put|puts|putting|stuck|stick|get her up|charge\w*|inflat\w*|pump(?:ed|ing)? up|blow\w*|use|used|using|straight)\b/,
      /\b(?:tank|bags?|bellows|lines?|system|test port|port|it|her|suspension|in|on)\b/,
    ],
    within: 90,
    unless: new RegExp(regulated.source),
  },
  {
    hazard: 'shop air unregulated',
    all: [
      /\b(?:air ?line|hose|compressor|external air)\b/,
      /\b(?:unregulated|no regulat\w*|without (?:a |any )?regulat\w*|havent got a reg\w*|not? reg\b|never straight|straight from the main)\b/,
    ],
    within: 90,
    unless: /\bpump regulator\b/,
  },
  {
    hazard: 'over-pressure',
    all: [
      /\b(?:pump|comp|compressor)\b[^.;]{0,10}\b(?:stays? on|stayed on|runs?|ran|keeps? (?:on|running|going|pumping)|goes|went|wont (?:shut off|cut out|stop|quit))\b[^.;]{0,8}\b(?:til|till|until|to|up to)\b(?: about)? (?:1[3-9]\d|2\d\d)\b(?! ?(?:deg|f\b|mm|kpa|miles))/,
    ],
    within: 60,
  },
  {
    hazard: 'over-pressure',
    all: [
      /\b(?:left|leave|leaving|kept|keep)\b[^.;]{0,10}\b(?:it|her|the pump|the comp\w*|pump|comp\w*) (?:running|pumping|going)\b/,
      /\b(?:at|past|over) (?:1[3-9]\d|2\d\d)\b/,
    ],
    within: 60,
    unless: /\b(?:miles?|mph|degrees|km)\b/,
  },
  {
    hazard: 'over-pressure',
    all: [
      /\b(?:tank|gauge|pressure|system|its at|now at)\b/,
      /\b(?:12[5-9]|1[3-9]\d|2\d\d) ?(?:psi|lbs?|pounds|#)|\b(?:9[5-9]\d|1[0-4]\d\d) ?kpa\b|\b(?:9\.[5-9]|1[0-6](?:\.\d)?) ?bar\b/,
      /\b(?:dont|doesnt|wont|not|never|still|keeps?|keep|no)\b[^.;]{0,12}\b(?:shut|stop|stops|stopping|cut|quit|going|running|pumping|climbing|rising|off)\b|\b(?:danger\w*|safe|ok|okay|bad|too (?:much|high))\b|\bplugg?e?d\b/,
    ],
    within: 90,
    unless: /\b(?:relief|safety valve) (?:opens|lifts|set|rated|tested)\b|\b(?:tyres?|tires?)\b/,
  },
  {
    hazard: 'over-pressure',
    all: [
      /\b(?:over|past|above|passes|beyond|exceeds?) (?:its|the|a)? ?(?:limit|cut[ -]?out|red line|max\w*|rating)\b/,
      /\b(?:tank|pump|comp|compressor|pressure)\b/,
    ],
    within: 70,
  },
  {
    hazard: 'air at person',
    all: [
      /\bair ?(?:gun|hose|line|jet|nozzle)\b|\bblow ?gun\b|\bcompressed air\b|\bair (?:on|in|into|under|coming out|through|jet)\b/,
      /\b(?:skin|kids?|each other|anybody|anyone|somebody|someone|(?:at|on|off) (?:his|her|my|him|me|people|the lad|the apprentice|himself|myself|yourself)|his back|joke|for a laugh|horseplay|goofballs|lads?|apprentice|clothes|overalls|hair|ear|mouth)\b/,
      /\b(?:point\w*|shoot\w*|shot|dust\w*|blow\w*|blew|aim\w*|break|danger\w*|squirt\w*|clean\w*|pierc\w*|joke|laugh|on skin|skin|messing|playing)\b/,
    ],
    within: 100,
    unless: /\b(?:told|asked|off)\b[^.;]{0,6}\bairline fitter\b/,
  },
  {
    hazard: 'air at person',
    all: [
      /\b(?:bare|my|his|her) (?:bare )?(?:thumb|finger|fingers|palm)\b/,
      /\b(?:jet|leak|hiss|hole|blowing|air)\b/,
      /\b(?:feel\w*|along|over|find\w*|search\w*|run(?:ning)?|put\w*|plug\w*|stop\w*|block\w*)\b/,
    ],
    within: 90,
    unless: /\bsoap\w*|\bno (?:air|pressure)\b|\bdrained\b/,
  },
  {
    hazard: 'torsion bar under load',
    all: [
      /\bt(?:o|u)rs(?:i)?on ?bars?\b|\bt[ -]?bars?\b/,
      /\b(?:wound(?: up)?|preload\w*|still (?:loaded|wound|under load)|under load|loaded|without (?:the )?unload\w*|not unloaded|store energy|unwind\w*|unloading tool|hammer\w*|sledge|knock\w*|stay (?:out|clear|away)|load is off|in line with)\b/,
    ],
    within: 100,
    unless:
      /\b(?:unloaded (?:it|them|first|and|with|by|now|before)|is unloaded|load (?:is |was )?(?:all )?off (?:it )?(?:now|first|before|so|then))\b|\bunwound (?:it|them|fully|first|all)\b|\b(?:turns?|low|sags?|height)\b/,
  },
  {
    hazard: 'cords driven',
    all: [damage, bag, drive],
    within: 110,
    unless: new RegExp(`${notDriven.source}|\\btest drive\\b.*\\b(?:replaced|renewed|new bag)\\b|\\bold one\\b`),
  },
  {
    hazard: 'cords driven',
    all: [
      damage,
      bag,
      /\bpump(?:ing|ed)? (?:it|her|up|that|the bag|more)\b|\b(?:inflat\w*|air(?:ed|ing)? (?:it )?up|fill(?:ed|ing)? it|see how far)\b|\bi pump\b/,
    ],
    within: 80,
    unless: /\b(?:not|never|wont|before|no longer|new bag|replaced|renewed)\b/,
  },
  {
    hazard: 'cords driven',
    all: [/\bc(?:h)?ords? (?:are |is )?show\w*/, drive],
    within: 100,
    unless: notDriven,
  },
  {
    hazard: 'drive disabled',
    all: [
      /\b(?:bag|bellows|air|air ?bag) (?:line|hose|pipe)s? (?:is |are |was |still )*(?:open|off|disconnected|hangin\w*|undone|loose)\b|\bline is open\b|\bno air in the (?:suspension|bags?|bellows|system|back|rear)\b|\b(?:bags?|bellows|airbags?) (?:is |are |was |were )*(?:flat|empty|deflated|down|burst|blown)\b|\bon (?:the |its |her )?(?:bump ?)?stops\b|\b(?:till|til|until|unless) there(?:s| is) air\b|\bwithout air\b|\bflat (?:bags?|bellows|airbags?)\b/,
      drive,
    ],
    within: 100,
    unless:
      /\b(?:nobody|no one|wont be|isnt|arent|not being)\b[^.;]{0,8}\b(?:driv\w+|moving|moved)\b|\btow(?:ed|ing|truck)?\b|\bsince (?:the|that|his) (?:drive|trip)\b|\bcomes? up\b|\bafter (?:the |a )?(?:drive|trip|miles)\b|\bwait\w*\b|\bwhile (?:it|she) (?:is )?parked\b|\bovernight\b|\bby morning\b|\bhits?\b|\bbottoms\b/,
  },
  {
    hazard: 'link pulled under',
    all: [
      /\b(?:hands?|fingers?|head)\b[^.;]{0,16}\b(?:in|by|between|near|at|under)\b/,
      /\b(?:links?|linkage|levers?|arms?|rods?|bags?|bellows)\b/,
      /\b(?:while|when|as)\b[^.;]{0,12}\b(?:airing|filling|inflating|coming up|going down|dropping|lowering|raising|levelling|leveling|moving)\b/,
    ],
    within: 90,
  },
  {
    hazard: 'link pulled under',
    all: [
      /\b(?:links?|linkage|levers?|leaver|(?:valve )?arms?|rods?)\b/,
      /\b(?:under(?:neath)?(?! (?:\d|load|pressure))|beneath|when i am below|a man|man|guys?|mate|lad|fitter|persons?|people|wheel ?well|wheel ?arch|over the ty?ire|over the tyre|between|lying)\b/,
      /\b(?:pull\w*|yank\w*|touch\w*|mov(?:e|es|ed|ing)|undo\w*|undid|disconnect\w*|push\w*|unhook\w*|trip(?:ped|ping)?|flick\w*|knock\w*)\b/,
      /\b(?:under(?:neath)?|beneath|below|man|guys?|mate|lad|fitter|persons?|people|wheel ?well|wheel ?arch|tyre|between|lying)\b/,
    ],
    within: 90,
    unless:
      /\b(?:nobody|no one|noone) (?:is |was )?(?:under|beneath|near|below)\b|\bclear of\b|\bfrom (?:the )?(?:outside|pit)\b|\bcontrol arms?\b|\bshock\b/,
  },
  {
    hazard: 'eyes bare',
    all: [
      glasses,
      /\b(?:no|without|never bother\w*|forgot|forget|are in the|in the (?:truck|van|box|office)|havent got|havent|aint|nowt|nothing|anything|bare|bare ?eyed|not wearing|dont bother|cant find|lost|broke|left|off|enough)\b/,
    ],
    within: 60,
    unless:
      /\b(?:water|oil|tea) glass\w*|\bglasses on\b|\bgoggles on\b|\bwearing (?:my|his|the)? ?(?:glasses|goggles|specs)\b|\b(?:i|we|he) (?:wear|wore|am wearing) (?:my |the )?(?:safety )?(?:glasses|goggles|specs)\b/,
  },
  {
    hazard: 'eyes bare',
    all: [
      /\b(?:put|get|keep|need|must wear|wear your|to be worn)\b/,
      /\b(?:glasses|goggles|eye ?protection|safety specs|visor)\b/,
    ],
    within: 40,
    unless: /\b(?:got|have|had|with) (?:my |the )?(?:\w+ )?(?:glasses|goggles|specs) on\b/,
  },
  { hazard: 'eyes bare', all: [/\bbare ?eyed\b|\beyes bare\b/], within: 40 },
  {
    hazard: 'spark at battery',
    all: [
      /\b(?:batt|battery|batteries|terminals?|acid level|charger|charging|chargin|on charge|(?:on|across) the posts?)\b/,
      /\b(?:spark\w*|arc(?:ed|ing|s)?|lighter|lighting up|smok(?:e|es|ed|ing)|cigarettes?|fag|match|flame|grind\w*|touch\w* (?:the )?(?:two )?cables|(?:spanner|spaner|wrench|screwdriver)[^.;]{0,20}(?:across|over)|(?:dropp?e?d|dropt|laid|across)[^.;]{0,16}(?:spanner|spaner|wrench|screwdriver))\b/,
    ],
    within: 100,
    unless: /\bno sparks?(?:\b[^.;]{0,12}\b(?:seen|now)\b| ?$)|\bbrush\w*\b/,
  },
  {
    hazard: 'spark at battery',
    all: [
      /\b(?:live|positive|plus|red)\b[^.;]{0,14}\boff\b[^.;]{0,10}\bfirst\b|\b(?:live|positive|red) (?:lead |cable |side )?first\b/,
      /\b(?:earth|ground|negative|spanner|wrench|battery|terminal|metal|cable|lead)\b/,
    ],
    within: 90,
    unless: /\bback on\b|\bconnect(?:ed|ing)? the (?:positive|live|red)\b|\brefit/,
  },
  {
    hazard: 'weld near line',
    all: [
      /\b(?:weld(?:ing|er|s)?|weld up|run(?:ning)? a bead|mig|tig|stick weld\w*|braz(?:e|ed|ing)|welded (?:the|a|on|near|it|over|up|by|beside|next)|torch)\b/,
      /\b(?:air ?lines?|lines?|air pipes?|pipes?|hoses?|bags?|bellows|tank|nylon|tubes?|tubing)\b/,
    ],
    within: 80,
    unless:
      /\b(?:contacts?|relay|switch)\b[^.;]{0,10}\bwelded\b|\bwelded (?:shut|closed|together)\b|\b(?:ice|iced|frozen|froze|thaw\w*)\b|\bweld (?:seam|seems|leaks?|cracked|crack)\b|\btorch light\b/,
  },
  {
    hazard: 'hot parts',
    all: [bareHot, hotPart, touching],
    within: 100,
    unless:
      /\b(?:i|we|he) (?:let|waited|left)\b[^.;]{0,16}\bcool\w*|\bcold now\b|\bstone cold\b|\bgone cold\b|\bcooled (?:down|off|an hour|overnight)\b|\bcool (?:now|to (?:the )?touch)\b|\b(?:can ?not|cant|could not|couldnt) (?:be )?touch\w*|\btoo hot to touch\b/,
  },
  {
    hazard: 'hot parts',
    all: [
      /\b(?:mind|watch) your (?:hands?|fingers?)\b|\bgloves,? or wait\b|\bcant wait for it to cool\b|\blet (?:it|the \w+) cool before\b/,
    ],
    within: 40,
    unless: /\b(?:belt|fan|valve|link|arm)\b/,
  },
  {
    hazard: 'pump may start',
    all: [livePower, inPump],
    within: 110,
    unless:
      /\b(?:fuse|breaker) (?:is |was )?(?:out|pulled|off|in my pocket)\b|\bpower (?:is |was )?(?:off|cut|killed)\b|\bunplugged\b|\b(?<!not )isolated\b|\bpulled the fuse\b(?<!nobody pulled the fuse)/,
  },
  {
    hazard: 'pump may start',
    all: [
      /\bnobody pulled the (?:pump )?fuse\b|\b(?:pump|pomp|comp|compressor) start(?:ed|s)? (?:up )?(?:on me|w[h]?ile (?:i|my|his|he))\b/,
    ],
    within: 60,
  },
  {
    hazard: 'pump may start',
    all: [/\bpump\b/, /\bput (?:my )?hands? in\b/],
    within: 40,
    unless: /\bfuse (?:is )?out\b(?<!take out fuse)|\bunplugged\b/,
  },
  {
    hazard: 'pump may start',
    all: [
      /\b(?:pump|pomp|comp|compressor|motor|fan)\b[^.;]{0,12}\b(?:came on|kicked (?:in|on)|started|comes on|kicks (?:in|on)|cut in|fired up|turned over)\b/,
      /\b(?:my|his|her|me|a) (?:hands?|fingers?|arm|sleeve|thumb)\b/,
    ],
    within: 80,
    unless: /\bby hand\b|\b(?:breaker|fuse) (?:is )?(?:out|off|pulled)\b/,
  },
  {
    hazard: 'brakes opened',
    all: [brake, opening],
    within: 60,
    unless:
      /\b(?:not|wasnt|werent|never|nothing|didnt) (?:been )?(?:open(?:ed)?|touch(?:ed)?|removed?)\b|\bhub ?cap\b|\bbrake (?:pipe|line|hose) (?:bracket|clip|mount|support)\b|\bbrake (?:light|test|pedal)s?\b|\bno need to\b/,
  },
  {
    hazard: 'heat on line',
    all: [
      /\b(?:fire|torch|weed burner|burner|heat ?gun|hot air gun|flame|lighter|blow ?lamp|hair ?dryer|boiling|kettle|hot water|washer fluid|antifreeze|alcohol|meths|brake cleaner|de ?icer|propane)\b/,
      /\b(?:ice|iced|icy|frozen|froze|freeze\w*|thaw\w*|unfreeze|defrost\w*|melt\w*)\b/,
    ],
    within: 90,
    unless:
      /\b(?:no|never used|didnt use|without|instead of) (?:a |any |the )?(?:torch|flame|heat|fire)\b|\bwarm (?:shop|bay|garage)\b/,
  },
  {
    hazard: 'relay tapped',
    all: [
      /\b(?:relay|relays|solenoid|rly)\b/,
      /\b(?:tap|taps|tapped|tappd|whack\w*|knock\w*|hammer|thump\w*|hit|hits|bang(?:ed|ing)?|smack\w*|clout\w*|freed)\b/,
    ],
    within: 60,
    unless:
      /\b(?:so i|so we|then|and) (?:\w+ )?(?:replaced|renewed|changed|swapped|fitted)\b|\bfitted (?:a )?new\b|\bnew relay\b/,
  },
  {
    hazard: 'interlock defeated',
    all: [
      /\b(?:pressure switch|switch(?:es)?|ignition(?: lock| key)?|key|interlock|thermal|cut[ -]?out|compressor|pump)\b/,
      /\b(?:jump(?:ed|er|ered|ers|erd|ering|ing)?|jumperd|bridg(?:e|ed|ing)|bypass\w*|link wire|linked out|wire over|make wire|wired (?:it|the|round|past|across|direct|straight)|hot ?wir\w*|without (?:a )?(?:switch|the (?:ignition )?key|ignition)|direct(?:ly)? (?:to|on|onto) (?:the )?batter\w*|straight (?:to|off|onto) (?:the )?batter\w*)\b/,
      /\b(?:lea?ve|leaving|left|till|until|weekend|overnight|stays?|stay so|down the road|constantly|handier|so (?:it|she) (?:runs|pumps|can)|found|sent|runn?in(?:g)?|home|customer|tonight|for (?:the|a) (?:night|week|trip)|permanently|always|not to be|to battery|direct|release)\b/,
    ],
    within: 120,
    unless:
      /\bfor a (?:second|sec|moment|test)\b|\b(?:took|taken|pulled|removed?) (?:the |it |my )?(?:jumper|bridge|link wire)\b|\bjumper (?:removed|off|out|back off)\b|\b(?:just|only) to test\b|\bmomentarily\b|\bno jumpers?\b/,
  },
];

/** Words that a danger hangs on: a slip in one of them is mended before it is looked for. */
export const dangerWords: readonly string[] =
  'relief safety valve plugged plugging capped stopper fuse bigger larger bellows inflate inflated bench table regulator unregulated workshop garage compressor tank pressure gauge skin blowgun torsion loaded preload torn cords showing driving disconnected link lever underneath beneath stands glasses goggles battery terminals spark sparks spanner lighter welding welder nylon burned burnt knuckles blistered power fuse isolated brake brakes caliper loosening loosened undoing opening removing connection frozen thawed thawing torch burner relay tapped hammer jumper jumpered bypassed bridged switch ignition jack grass gravel stacked timber planks support unsupported crawling sending running replaced tomorrow vented drained'.split(
    ' ',
  );
