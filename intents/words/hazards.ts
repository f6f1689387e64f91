/**
 * What a note says when someone is about to be hurt. Data only: each line is a pattern over the lower-cased note with
 * apostrophes left out. Bounded repeats only, so that no text can make one run long. A missed hazard is worse than a
 * missed reading: patterns lean towards seeing one.
 */
import type { HazardName } from '../shapes.ts';

export const hazardPatterns: readonly (readonly [HazardName, RegExp])[] = [
  [
    'jack only',
    /\b(?:on|under|using|with|just|only|off|use)\b[^.;]{0,14}\b(?:the |a |an |one |my |two |its )?(?:bottle |trolley |floor |hydraulic |scissor |leveling |levelling |little )?jacks?\b(?! ?stand)[^.;]{0,40}\b(?:under|beneath|underneath|crawl\w*|slid\w*|climb\w*|held|holding|hold|support\w*|no stands?|without stands?|instead of stands?|only|work|working|pull|take|remove|quick)\b|\b(?:under|beneath|underneath|crawl\w*|slid\w*|climb\w*|held up|holding it|work\w*)\b[^.;]{0,50}\bjacks?\b(?! ?stand)(?! up)|\bjack only\b|\bjust (?:a|the|one) (?:bottle |trolley |floor )?jack\b(?! ?stand)|\bonly (?:a|the|on|on a|on the|one) (?:bottle |trolley |floor |levelling |leveling )?jacks?\b(?! ?stand)|\bjack is enough\b|\bjacks? (?:is|are) holding\b|\bjacked (?:it |her )?up\b[^.;]{0,20}\b(?:no stands?|without stands?|went under|under it|get(?:ting)? under|and under|crawl)|\bdont need stands?\b|\bskip the stands\b|\bno need for stands?\b|\bwithout (?:the )?(?:axle )?stands?\b/,
  ],
  [
    'soft ground',
    /\b(?:jack|jacks|stand|stands|blocks?|cribbing|jacked|timber|bricks?)\b[^.;]{0,40}\b(?:grass|soil|dirt|gravel|mud|soft|sand|sandy|lawn|field|tarmac in the heat|earth floor|turf|wet ground)\b|\b(?:grass|gravel|dirt|soft ground|mud|lawn|soil)\b[^.;]{0,40}\b(?:jack|jacks|stands?|blocks?)\b|\b(?:on|with|using|under|got|by)\b[^.;]{0,30}\b(?:stacked|stack of|pile of|couple of|few|some|two|old)? ?(?:wood ?blocks?|wood|bricks?|cinder ?blocks?|concrete blocks?|breeze ?blocks?|timber|timbers|lumber|bits of wood|cinderblocks?)\b(?=[^.;]{0,30}\b(?:under|support|hold|frame|chassis|stands?|prop|jack|$))|\bpropped\b[^.;]{0,30}\b(?:blocks?|bricks?|wood|timber|plank)|\bstand\w* (?:is |are )?(?:sinking|sunk|leaning|tilting)\b|\b(?:blocks?|bricks?|timber)\b[^.;]{0,20}\binstead of (?:the )?stands?\b/,
  ],
  [
    'under unsupported',
    /\b(?:(?:go|going|goin|gonna go|get|getting|got|crawl|crawling|crawled|climb|climbing|climbed|slide|sliding|slid|roll|rolling|rolled|duck|ducking|pop|popping|nip|nipping|dive|diving|scoot|scooting|stick|sticking|reach|reaching|reached|lie|lying|laying|lay|lain|squeeze|squeezing|squeezed|wriggle|wriggling|creep|creeping|went|put|putting|stuck|poke|poking|poked|have a look|look|work|working|worked|been|stay|step|stepping|am|im|hop|sneak|jump|head|heading|hand|arm|reached in|scooch|wiggle|shuffle)\b[^.;,]{0,26}\b(?:under|underneath|beneath|between the (?:wheel|tire|tyre|tires|tyres|body|frame|wheels)|in between the|unders)\b)(?! ?(?:\d|pressure|limit|spec|cut|the limit|load|the spec|power|about))|\b(?:im|i am|hes|hands|arm|head|legs|body|bob|apprentice|lad|mate|boy|kid|helper|am|me|guy)\b[^.;,]{0,16}\b(?:is )?(?:under(?:neath)?|beneath)\b(?: (?:the coach|it|her|there|the bus|the rig|now|the back|the rear|here|the body|the frame|coach|bus|the thing|the chassis|this))|\bnobody chocked\b|\bunder (?:it|her|there|the (?:coach|bus|rig|rear|back|frame|motorhome|body|chassis|back end|tail|vehicle))\b[^.;]{0,30}\b(?:with|while|on|when)\b[^.;]{0,20}\b(?:just )?(?:air|bags?|inflated|aired|up|bellows)\b|\b(?:only|just) (?:the )?(?:air|bags|bellows|airbags|air bags)\b[^.;]{0,14}\b(?:holding|hold|supporting|keeping|under)\b|\bair is holding\b|\bbags (?:are |will )?(?:holding|hold) (?:it|her|the)\b|\bheld (?:up )?(?:by|on) (?:just )?(?:the )?(?:air|bags|bellows)\b|\bunder (?:the )?(?:coach|bus)\b(?![^.;]{0,6}\d)/,
  ],
  [
    'link pulled under',
    /\b(?:pull|pulling|pulled|push|pushing|move|moving|moved|work|working|lift|lifting|yank|yanking|yanked|trip|tripping|unhook|unhooking|disconnect\w*|undo|undoing|drop|dropping|knock\w*|flick\w*|waggle|flip\w*)\b[^.;]{0,26}\b(?:link|linkage|arm|lever|rod)\b[^.;]{0,40}\b(?:by hand|under(?:neath)?|while|from under|lying|laying|beneath|between)\b|\b(?:under|underneath|beneath|lying|laying|between)\b[^.;]{0,44}\b(?:pull|pulling|pulled|push|move|moving|moved|work|working|trip|unhook|lift|yank\w*|disconnect\w*|undo)\b[^.;]{0,20}\b(?:link|linkage|arm|lever|rod)\b/,
  ],
  [
    'open under pressure',
    /\b(?:crack|cracking|cracked|open|opening|opened|loosen|loosening|loosened|undo|undoing|undid|break|breaking|broke|unscrew|unscrewing|unscrewed|remove|removing|removed|pull|pulling|pulled|take|taking|took|disconnect|disconnecting|disconnected|slacken|slackening|slackened|cut|cutting|unplug|unplugging|spin|spinning|back|backing|backed|pop|popping|popped|unhook|unhooking|slack|slacking|split|splitting|swap|swapping|change|changing|whip|whipping|pull off|yank|yanking|release|releasing|undone|brake|breack|unbolt|unbolting|tighten|tightening)\b[^.;]{0,34}\b(?:line|lines|fitting|fittings|hose|hoses|pipe|pipes|plug|drain plug|nut|valve|union|connector|petcock|tube|switch|bag|bellows|air ?bag|joint|cap|connection|check|elbow|tubing|air spring|crimp)\b[^.;]{0,70}\b(?:air in|pressure (?:in|still|on|behind|up)|under pressure|still (?:has|got|have|at|up|under|pressure|air|full|charged)|pressuri[sz]ed|with (?:air|\d+|pressure)|(?:to )?see if (?:there is|theres|its|there|any|air)|if (?:there is|theres) (?:still )?air|\d+ ?(?:psi|in (?:the |it)|bar|kpa|lbs?|pounds)|charged|loaded|live|tank (?:up|full|is (?:up|full|at|still)|still|at \d)|(?:at|got) \d+|without (?:bleeding|draining|venting|dumping|letting)|not (?:drained|vented|bled)|before (?:draining|bleeding|venting)|full of air|air(?:ed)? up|inflated|full tank|not empty|no need to (?:drain|bleed)|hot)\b|\b(?:\d+ ?(?:psi|bar|kpa|lbs?|pounds)?|pressure|air|full|charged)\b[^.;]{0,26}\b(?:in (?:the )?(?:tank|bag|line|system|bags|it)|on (?:the )?(?:tank|gauge|line)|still in|behind it|tank|showing)\b[^.;]{0,40}\b(?:crack\w*|open\w*|loosen\w*|undo|undoing|break\w*|unscrew\w*|remov\w*|pull|pulling|slacken\w*|disconnect\w*|cut|take|taking|swap|swapping)\b[^.;]{0,24}\b(?:line|fitting|hose|pipe|plug|nut|valve|union|connector|tube|switch|bag|bellows|off|it|loose)\b|\b(?:crack|cracking|cracked|break|breaking|broke)\b[^.;]{0,12}\b(?:the )?(?:line|fitting|hose|pipe|nut|union|connector)\b[^.;]{0,10}\b(?:loose|open)\b|\bopen(?:ing|ed)? (?:it|the line|a line|the fitting|the pipe|the hose) (?:up )?(?:under|with) (?:pressure|air)\b|\b(?:crack|cracking|cracked) (?:the |a |that |this |open )?(?:fitting|line|union|nut|hose|pipe)\b|\bunder pressure\b[^.;]{0,20}\b(?:open|undo|crack|loosen|disconnect|remove)|\b(?:tighten\w*|nip\w*|snug\w*|torque\w*|wrench\w*) [^.;]{0,24}\b(?:under pressure|with (?:the )?(?:air|pressure) (?:in|on|up)|pressuri[sz]ed|with air in|while its? pressuri[sz]ed)\b/,
  ],
  [
    'relief defeated',
    /\b(?:plug|plugging|plugged|cap|capping|capped|block|blocking|blocked|tape|taping|taped|wire|wiring|wired|tie|tied|screw down|wind|winding|wound|crank|cranking|cranked|shim|shimmed|raise|raising|raised|turn up|turning up|adjust|adjusting|defeat|bypass|remove|removing|removed|stuff|jam|jammed|blank|blanking|blanked|weld|bung|bunged|hold|holding|held|bend|bolt|bolted|stick|stop|put a plug|set)\b[^.;]{0,30}\b(?:relief|safety valve|pop ?off|prv|blow off)(?: valve)?\b|\b(?:relief|safety valve|pop ?off|prv)(?: valve)?\b[^.;]{0,44}\b(?:plug|plugged|capped|cap|blocked|block|taped|tape|wired|raise|raised|turned up|screwed|higher|wound|cranked|blanked|tied|bolt in|stuff|shut|set up|stop it|with a plug|removed|bung|bunged)\b/,
  ],
  [
    'fuse enlarged',
    /\b(?:bigger|larger|higher|heavier|oversize|oversized|upsize|upsized|upping)\b[^.;]{0,14}\bfuse\b|\b(?:[4-9]0|100) ?(?:a|amp|amps)? ?fuse\b|\bfuse\b[^.;]{0,30}\b(?:bigger|larger|higher|up to|to an? [4-9]0|heavier|with foil|foil|nail|penny|screw|wire|bypass|bypassed|bridged|bridge|[4-9]0 ?a(?:mp)?s?\b)|\b(?:foil|tinfoil|tin foil|nail|penny|paper ?clip|wire|bolt|coin)\b[^.;]{0,26}\bfuse\b|\b(?:bypass|bypassing|bypassed|jumper|jumped|jumping|bridge|bridging|bridged|jump)\b[^.;]{0,14}\b(?:fuse|breaker)\b|\b(?:from|was) (?:20|25|30)[^.;]{0,16}\bto (?:40|50|60)\b[^.;]{0,12}\b(?:fuse|amp)/,
  ],
  [
    'bellows unrestrained',
    /\b(?:inflate|inflating|inflated|air(?:ing|ed)? up|pump(?:ing|ed)? up|blow(?:ing)? up|fill(?:ing|ed)?|pressuri[sz]\w*|test(?:ing|ed)?|put(?:ting)? (?:some )?(?:air|\d+)|blew up|charge|charging)\b[^.;]{0,34}\b(?:bag|bags|bellows|air ?bag|air ?spring|spring)\b[^.;]{0,44}\b(?:on the (?:bench|floor|table|ground)|off the (?:coach|bus|vehicle)|out of the (?:coach|bus)|unmounted|loose|in the vice|in my hands?|before (?:fitting|i fit|mounting|install)|bench|unrestrained|on bench|by hand)\b|\b(?:bag|bags|bellows|air ?bag|air ?spring)\b[^.;]{0,30}\b(?:on the (?:bench|floor|table|ground)|off the (?:coach|bus|vehicle)|unmounted|loose|unrestrained|on bench|in the vice)\b[^.;]{0,44}\b(?:inflat\w*|air(?:ed)? up|pump\w*|blow\w*|fill\w*|pressuri\w*|test\w*|\d+ ?(?:psi|bar)|shop air|air in|with air)\b|\bbench\b[^.;]{0,24}\b(?:inflat\w*|air up|blow up|pump up|fill)\b[^.;]{0,20}\b(?:bag|bellows|air ?bag|spring)\b/,
  ],
  [
    'shop air unregulated',
    /\b(?:shop air|airline|shop line|shop compressor|workshop air|compressor line|yard air|big compressor|line pressure|shop hose)\b[^.;]{0,44}\b(?:straight|direct|directly|full|unregulated|no regulator|without (?:a )?reg\w*|wide open|\d{3} ?(?:psi|lbs?)|1[3-9]\d|not regulated|flat out|no reg)\b|\b(?:straight|direct|directly|full|unregulated|no regulator)\b[^.;]{0,24}\b(?:shop air|shop pressure|workshop air|airline|yard air)\b|\bwithout (?:a |the )?regulator\b|\bno regulator on\b|\bunregulated (?:air|shop)/,
  ],
  [
    'air at person',
    /\b(?:blow|blowing|blew|blast|blasting|dust|dusting|clean|cleaning|cleaned|blown)\b[^.;]{0,28}\b(?:myself|my self|clothes|overalls|coveralls|hands?|face|skin|off me|him|arms|hair|jacket|yourself|me off|me down|me|trousers|shirt|lad|apprentice|boots)\b|\bair ?(?:gun|line|hose)\b[^.;]{0,34}\b(?:myself|clothes|overalls|coveralls|hand|hands|face|skin|him|me|finger|fingers|mate|arm|eyes|jacket|cut)\b|\b(?:hand|finger|thumb|palm)\b[^.;]{0,12}\b(?:over|on)\b[^.;]{0,14}\b(?:air ?(?:line|hose|jet)|nozzle|blow gun|open line|open pipe|the hose|the leak)\b/,
  ],
  [
    'torsion bar under load',
    /\b(?:back|backing|backed|loosen|loosening|loosened|undo|undoing|undid|turn|turning|turned|remove|removing|removed|wind|winding|wound|unbolt|unbolting|slack|slacken|slackening|slackened|crank|cranking|take|taking|took|knock|pull|pulling|adjust|adjusting|unload|unscrew|unwind|drop|break)\b[^.;]{0,28}\b(?:torsion|t ?bar|tbar|torsion bar)\b[^.;]{0,30}\b(?:adjuster|bolt|off|out|under load|anchor|by hand|weight|loaded|bar|on the wheels|back|on the ground|quick)?\b/,
  ],
  [
    'cords driven',
    /\b(?:cords?|threads?|fabric|canvas)\b[^.;]{0,20}\b(?:showing|visible|through|exposed|show|sticking)?\b[^.;]{0,60}\b(?:drive|driving|drove|run it|home|road|trip|send it|inflate|inflated|air it up|pump it|still (?:ok|good|safe|fine|holds|use)|let it go|one more|get home|take it|go out|make it|use it|get away|hold up|ride|leave it|patch|last|pumped?|aired)\b|\b(?:drive|driving|run|send|get|go|drove|is it ok|can i)\b[^.;]{0,34}\b(?:cords?|threads?) (?:are |is )?(?:showing|visible|through|exposed)\b|\b(?:drive|driving|drove|run)\b[^.;]{0,20}\b(?:with|on)\b[^.;]{0,16}\b(?:torn|ripped|split|burst|patched|cracked)\b[^.;]{0,10}\b(?:bag|bellows|air ?bag|spring)|\bpatch(?:ed|ing)? (?:the |a |that )?(?:bag|bellows|air ?bag|air spring)\b|\b(?:tape|taped|taping|plug kit|glue|glued|gluing|duct tape|sleeve)\b[^.;]{0,20}\b(?:bag|bellows|air ?bag)\b/,
  ],
  [
    'drive disabled',
    /\b(?:drive|driving|drove|limp|limping|move|moving|tow|towing|get it home|run it|crawl home|nurse|take it|send it|ride|haul|bring it|cruise|roll it|moved)\b[^.;]{0,44}\b(?:on (?:the )?(?:flat|bump ?stops|stops|empty bag|rubber)|flat bag|bag (?:is )?(?:flat|down|empty|blown|burst|torn)|bags (?:are )?(?:flat|down|empty)|no air|on the stops|one bag|blown bag|burst bag|open line|without air|bags flat|busted bag|with it down|on its stops|slammed|flat bellows|left side down|right side down|side flat|down on|without (?:the )?bag|dead bag|bad bag)\b|\b(?:flat|burst|blown|empty|on (?:the|its) (?:stops|bump ?stops)|no air in|bag blew|bag down|down on (?:the )?stops)\b[^.;]{0,44}\b(?:drive it|driving it|drove it|limp (?:it )?home|get (?:it )?home|move it|make it home|home slow|run it|tow it|take it|limp|drive home|drive slow|keep going|drive on|keep driving|still drive|can (?:i|we) drive|ok to drive|safe to drive|drive)\b|\blimp(?:ing)? (?:it |her )?home\b/,
  ],
  [
    'over-pressure',
    /\b(?:wont|never|doesnt|does not|not|will not|isnt|didnt|fails? to|refuses? to|cant) (?:shut(?:ting)? (?:it |itself )?(?:off|down)|stop(?:ping)?|cut(?:ting)? (?:out|off)|quit|turn off|kick out|kick off|switch off)\b|\b(?:wont|never|doesnt|not|cant|no)\b[^.;]{0,10}\b(?:shut|cut|stop|turn|switch|quit)s?(?:ting)? ?(?:off|out|itself off|it off)?\b[^.;]{0,40}\b(?:1[3-9]\d|2\d\d|9\d\d ?kpa|1\d\d\d ?kpa|past|climbing|over)\b|\bnever (?:shuts?|stops?|cuts?|kicks?|turns?|quits?|goes off|switches)\b(?: ?(?:off|out|down))?|\b(?:runs?|running|going|pumps?|pumping|climbs?|climbing|goes|went) (?:right |on |straight |way )?past (?:the )?(?:cut ?out|limit|1[2-9]\d|cut off)\b|\b(?:gauge|tank|psi|pressure|reads)\b[^.;]{0,24}\b(?:1[4-9]\d|2\d\d)\b[^.;]{0,30}\b(?:still (?:running|going|pumping|climbing|rising)|and (?:climbing|rising|running|going|pumping))\b|\brelief (?:valve )?(?:is |just |keeps |has )?(?:popp(?:ed|ing)|lift(?:ed|ing)|blow(?:s|ing)|blew|going off|opening|went off|open|blowing off|lifts|pops)\b|\bstill (?:pumping|climbing|running|rising|going)\b[^.;]{0,30}\b(?:1[3-9]\d|2\d\d)\b|\b(?:run|let|pump|take|crank|turn|set)\b[^.;]{0,24}\b(?:it|tank|pressure|switch|her)\b[^.;]{0,20}\b(?:up )?(?:to|past|over|at) (?:1[4-9]\d|2\d\d)\b|\bstill (?:pumping|running)\b[^.;]{0,20}\b(?:over|above|past) (?:cut ?out|the limit)\b/,
  ],
  [
    'eyes bare',
    /\b(?:no|without|forgot(?:ten)?(?: my)?|havent got|left my|dont need|skip(?:ping)?|lost my|not wearing|aint got)\b[^.;]{0,14}\b(?:glasses|goggles|safety glasses|eye protection|specs|safety specs|eyewear|face shield|visor|ppe)\b|\b(?:got|blew|in|something in|dirt in|grit in|soap in|air in) (?:my|his|the) eyes?\b/,
  ],
  [
    'spark at battery',
    /\b(?:spark|sparks|sparked|sparking|grind|grinding|smok\w*|cigarette|fag|lighter|torch|weld|welding|flame|angle grinder|arc|arced|arcing|match)\b[^.;]{0,34}\b(?:batt|battery|batteries)\b|\b(?:batt|battery|batteries)\b[^.;]{0,34}\b(?:spark|sparks|sparked|sparking|smok\w*|lighter|grind\w*|weld\w*|flame|short(?:ed|ing)? across|arc\w*|cigarette)\b|\b(?:spanner|wrench|screwdriver)\b[^.;]{0,16}\bacross (?:the )?(?:batt\w*|terminals)\b/,
  ],
  [
    'weld near line',
    /\b(?:weld|welding|welded|braze|brazing|torch cut|plasma|grinding|grind|tack|tacking|tacked|oxy|gas axe)\b[^.;]{0,44}\b(?:line|lines|bag|bags|bellows|bracket|frame|air ?bag|tubing|hose|airline|nylon|chassis|hanger|tank|crossmember)\b/,
  ],
  [
    'heat on line',
    /\b(?:heat gun|heatgun|torch|blow ?torch|blow ?lamp|flame|gas torch|propane|butane|hair ?dryer|boiling water|hot water|kettle|antifreeze|methanol|alcohol|meths|brake cleaner|de ?icer|starting fluid|blowlamp|rosebud|lighter|salamander)\b[^.;]{0,54}\b(?:line|lines|valve|tank|drain|frozen|ice|iced|froze|hose|pipe|bag|dryer|fitting|thaw|bellows|petcock|nylon|unfreeze|it|system)\b|\b(?:frozen|froze|ice|iced|thaw|thawing|unfreeze|defrost)\b[^.;]{0,54}\b(?:heat gun|heatgun|torch|blow ?torch|blow ?lamp|flame|propane|lighter|boiling|kettle|antifreeze|methanol|alcohol|meths|de ?icer|blowlamp)\b|\bheat(?:ing|ed)? (?:up )?(?:the |a |that )?(?:line|frozen line|valve|fitting|pipe|nylon|air line)\b/,
  ],
  [
    'relay tapped',
    /\b(?:tap|tapped|tapping|hit|hitting|whack|whacked|knock|knocked|smack|smacked|thump|thumped|bang|banged|bump|bumped|kick|kicked|clout|clouted|belt|belted|flick|flicked|rap|rapped|beat)\b[^.;]{0,30}\b(?:relay|switch|motor|pump|compressor|comp|solenoid|rly|press switch)\b|\b(?:relay|switch|pump|comp|compressor|motor|solenoid)\b[^.;]{0,20}\b(?:tap|tapped|whack|a knock|a thump|a bang|a kick|tapping|a hit)\b/,
  ],
  [
    'interlock defeated',
    /\b(?:jumper|jumpered|jumpering|jump|jumped|jumping|bypass|bypassed|bypassing|bridge|bridged|bridging|hot ?wire|hot ?wired|hotwiring|short|shorted|shorting|link(?:ed)? out|wire|wired|linking out)\b[^.;]{0,28}\b(?:switch|relay|pressure switch|across|thermal|cut ?out|direct|straight to (?:the )?batt\w*|interlock|key|governor|psw|points)\b|\bwir\w* (?:the )?(?:pump|comp|compressor|motor) (?:straight|direct)\b|\bpump\b[^.;]{0,20}\bstraight (?:to|off) (?:the )?batt|\bjumper (?:wire )?(?:is )?(?:still )?(?:in|on|left)\b|\bleft the jumper\b/,
  ],
  [
    'pump may start',
    /\b(?:hand|hands|finger|fingers|arm|work|working|take|taking|pull|pulling|strip|stripping|remove|removing|unbolt|unbolting|spin|spinning|turn|turning|feel|feeling|clean|cleaning|touch|touching|check|checking|reach|reaching|open|opening|poke|undo|change|changing|grab)\b[^.;]{0,26}\b(?:pump|comp|compressor|fan|motor|flywheel|head|crank|belt)\b[^.;]{0,44}\b(?:power on|fuse in|key on|still (?:on|live|powered|connected|hooked)|live|plugged in|not isolated|without (?:pulling|isolating|cutting|taking|killing|disconnecting)|with the (?:power|key|fuse)|may start|could start|powered|breaker on|breaker in|while it rests|its resting|while (?:its )?(?:resting|stopped|running)|its off anyway|not running anyway|running)\b|\b(?:power|key|fuse|breaker)\b[^.;]{0,12}\b(?:still )?(?:on|in|live)\b[^.;]{0,30}\b(?:hand|hands|finger|fingers|strip|stripping|working on|unbolt|take|taking|pull|pulling|remove|removing)\b[^.;]{0,20}\b(?:pump|comp|compressor|motor|head)\b/,
  ],
  [
    'hot parts',
    /\b(?:touch|touched|touching|grab|grabbed|grabbing|burn|burned|burnt|hand on|feel|feeling|hold|holding|undo|loosen|pull|take|remove|work on|working on|unbolt|pulling|lean|leaned|leaning)\b[^.;]{0,28}\b(?:head|discharge|pump|comp|compressor|discharge line|cylinder|exhaust pipe|manifold)\b[^.;]{0,26}\b(?:hot|just ran|been running|burning|while hot|straight after|still warm|just stopped|boiling|right after|burnt|after it ran|after running)\b|\b(?:burn|burned|burnt|scalded|singed)\b (?:my|his|a) (?:hand|hands|finger|fingers|arm|thumb|palm|wrist|knuckles)\b|\b(?:hot|red hot|boiling) (?:head|pump|comp|compressor|discharge|discharge line|pipe)\b[^.;]{0,20}\b(?:touch|grab|hand|undo|loosen|pull|take)\b/,
  ],
  [
    'brakes opened',
    /\b(?:open|opening|opened|crack|cracking|cracked|undo|undoing|undid|disconnect|disconnecting|disconnected|bleed|bleeding|bled|loosen|loosening|loosened|remove|removing|removed|pull|pulling|pulled|take|taking|took|cut|cutting|strip|break|breaking)\b[^.;]{0,22}\b(?:brake (?:line|lines|hose|hoses|pipe|pipes|chamber|chambers|caliper|drum|drums|can|cans)|break line|break hose|break chamber|hub|hubs|drum|brake chambers|spring brake|maxi)\b|\b(?:brake line|brake hose|brake pipe|hub|spring brake)\b[^.;]{0,24}\b(?:opened|cracked|off|undone|disconnected|loosened|removed|apart|loose|open)\b/,
  ],
];

/** Words near a hazard that say in which mood it stands. Checked in this order. */
export const moods: readonly (readonly ['asked' | 'warned' | 'intended' | 'doing' | 'done', RegExp])[] = [
  [
    'asked',
    /\?|\b(?:can i|can we|may i|should i|shall i|is it (?:ok|okay|safe|alright|fine|dangerous|possible|a problem|bad)|ok to|okay to|safe to|alright to|could i|can you|is ok|am i ok|do i need|do i have to|do i|is there (?:a )?problem|allowed|must i|would it|is this|what if i|what happens if|how about i|does it matter|possible to|i can|can one|can u|is good to|its ok if|it ok if|ok if|are we ok|any harm|any reason not|need i|why not just|why cant i|will it be ok|can it be|is that ok|am i allowed|mind if)\b/,
  ],
  [
    'warned',
    /\b(?:dont|do not|never|stay out|keep out|stay clear|keep (?:\w+ ){0,2}(?:out|clear|away|off)|not going|wont go|not gonna|nobody (?:goes|is|gets|under)|no one (?:goes|is|gets|under)|before (?:i|anyone|anybody|we|you)|refus\w+|told (?:him|them|the|her|\w+) (?:\w+ ){0,2}not|not to|until|unless|wouldnt|will not|stopped (?:him|her|them)|should not|shouldnt|kept (?:out|clear)|warned|instead of going|must not|mustnt|not allowed|no way im|aint going|keeping clear|isnt going|stay from|not getting|not opening|not open|without going)\b/,
  ],
  [
    'intended',
    /\b(?:gonna|going to|goin to|about to|will|ill|plan to|planning|want to|wanna|lets|let me|thinking of|thinking about|fixing to|gotta|need to|have to|next i|gunna|im going|going under|tempted|might|could just|might just|try to|trying to|ready to|intend|gon|ima|fancy|id like to|want|then i|later|try|quick look|be right back|off to|popping|nipping|going in)\b/,
  ],
  [
    'doing',
    /\b(?:im|i am|hes|were|am|is|are|currently|right now|now|just)\b[^.;]{0,20}\b\w{3,14}ing\b|\b(?:im|i am|hes|he is) (?:now )?(?:under|beneath|between)\b|\bunder (?:it|there|the coach) now\b|\bstill\b/,
  ],
  [
    'done',
    /\b(?:ed|went|put|got|did|took|blew|cut|slid|crawled|opened|cracked|plugged|taped|tapped|hit|jumped|undid|was|were|had|been|fitted|used|drove|broke|ran|swapped|pulled|loosened|burnt|burned|inflated|bypassed|wired|jumpered|bridged|knocked|whacked|welded|patched|removed|raised|left|moved|disconnected|propped|aired|heated|touched|turned|backed)\b/,
  ],
];
