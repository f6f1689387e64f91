/**
 * What a note says when someone is about to be hurt. Data only: each line is a pattern over the lower-cased note with
 * apostrophes left out. Bounded repeats only, so that no text can make one run long. A missed hazard is worse than a
 * missed reading: patterns lean towards seeing one.
 */
import type { HazardName } from '../shapes.ts';

export const hazardPatterns: readonly (readonly [HazardName, RegExp])[] = [
  [
    'jack only',
    /\b(?:up|it|her|coach|bus|rig|sat|sitting|sits|frame|axle|held) (?:is )?on (?:a|the|one|my|two) (?:bottle|trolley|floor|hydraulic|scissor|farm|hi ?lift) jacks?\b(?! ?stand)|\b(?:on|under|using|with|just|only|off|use)\b[^.;]{0,14}\b(?:the |a |an |one |my |two |its )?(?:bottle |trolley |floor |hydraulic |scissor |leveling |levelling |little )?jacks?\b(?! ?stand)[^.;]{0,40}\b(?:under|beneath|underneath|crawl\w*|slid\w*|climb\w*|held|holding|hold|support\w*|no stands?|without stands?|instead of stands?|only|work|working|pull|take|remove|quick)\b|\b(?:under|beneath|underneath|crawl\w*|slid\w*|climb\w*|held up|holding it|work\w*)\b[^.;]{0,50}\bjacks?\b(?! ?stand)(?! up)|\bjack only\b|\bjust (?:a|the|one) (?:bottle |trolley |floor )?jack\b(?! ?stand)|\bonly (?:a|the|on|on a|on the|one) (?:bottle |trolley |floor |levelling |leveling )?jacks?\b(?! ?stand)|\bjack is enough\b|\bjacks? (?:is|are) holding\b|\bjacked (?:it |her )?up\b[^.;]{0,20}\b(?:no stands?|without stands?|went under|under it|get(?:ting)? under|and under|crawl)|\bdont need stands?\b|\bskip the stands\b|\bno need for stands?\b|\bwithout (?:the )?(?:axle )?stands?\b/,
  ],
  [
    'soft ground',
    /\b(?:two|2) ?(?:by|x) ?(?:four|six|4|6)(?:e?s)?\b[^.;]{0,40}\b(?:under|frame|chassis|axle|prop)|\b(?:jack|jacks|stand|stands|blocks?|cribbing|jacked|timber|bricks?)\b[^.;]{0,40}\b(?:grass|soil|dirt|gravel|mud|soft|sand|sandy|lawn|field|tarmac in the heat|earth floor|turf|wet ground)\b|\b(?:grass|gravel|dirt|soft ground|mud|lawn|soil)\b[^.;]{0,40}\b(?:jack|jacks|stands?|blocks?)\b|\b(?:on|with|using|under|got|by)\b[^.;]{0,30}\b(?:stacked|stack of|pile of|couple of|few|some|two|old)? ?(?:wood ?blocks?|wood|bricks?|cinder ?blocks?|concrete blocks?|breeze ?blocks?|timber|timbers|lumber|bits of wood|cinderblocks?)\b(?=[^.;]{0,30}\b(?:under|support|hold|frame|chassis|stands?|prop|jack|$))|\bpropped\b[^.;]{0,30}\b(?:blocks?|bricks?|wood|timber|plank)|\bstand\w* (?:is |are )?(?:sinking|sunk|leaning|tilting)\b|\b(?:blocks?|bricks?|timber)\b[^.;]{0,20}\binstead of (?:the )?stands?\b/,
  ],
  [
    'under unsupported',
    /\b(?:stick|sticking|stuck|put|putting|poke|poking|poked|get|getting|have|reach|reaching|reached|lean|leaning|leaned|squeeze|squeezing|squeezed|shove|shoving)\b[^.;,]{0,16}\b(?:head|hands?|arms?|shoulders?|body|fingers?)\b[^.;]{0,24}\b(?:above|over|between|on top of|in behind)\b[^.;]{0,24}\b(?:axles?|wheels?|tyres?|tires?|frame|body|bags?|bellows|airbags?)\b|\bunder (?:it|her|there|the (?:coach|bus|rig)) on air\b|\b(?:(?:go|going|goin|gonna go|get|getting|got|crawl|crawling|crawled|climb|climbing|climbed|slide|sliding|slid|roll|rolling|rolled|duck|ducking|pop|popping|nip|nipping|dive|diving|scoot|scooting|stick|sticking|reach|reaching|reached|lie|lying|laying|lay|lain|squeeze|squeezing|squeezed|wriggle|wriggling|creep|creeping|went|put|putting|stuck|poke|poking|poked|have a look|look|work|working|worked|been|stay|step|stepping|am|im|hop|sneak|jump|head|heading|hand|arm|reached in|scooch|wiggle|shuffle)\b[^.;,]{0,26}\b(?:under|underneath|beneath|between the (?:wheel|tire|tyre|tires|tyres|body|frame|wheels)|in between the|unders)\b)(?! ?(?:\d|pressure|limit|spec|cut|the limit|load|the spec|power|about))|\b(?:im|i am|hes|hands|arm|head|legs|body|bob|apprentice|lad|mate|boy|kid|helper|am|me|guy)\b[^.;,]{0,16}\b(?:is )?(?:under(?:neath)?|beneath)\b(?: (?:the coach|it|her|there|the bus|the rig|now|the back|the rear|here|the body|the frame|coach|bus|the thing|the chassis|this))|\bnobody chocked\b|\bunder (?:it|her|there|the (?:coach|bus|rig|rear|back|frame|motorhome|body|chassis|back end|tail|vehicle))\b[^.;]{0,30}\b(?:with|while|on|when)\b[^.;]{0,20}\b(?:just )?(?:air|bags?|inflated|aired|up|bellows)\b|\b(?:only|just) (?:the )?(?:air|bags|bellows|airbags|air bags)\b[^.;]{0,14}\b(?:holding|hold|supporting|keeping|under)\b|\bair is holding\b|\bbags (?:are |will )?(?:holding|hold) (?:it|her|the)\b|\bheld (?:up )?(?:by|on) (?:just )?(?:the )?(?:air|bags|bellows)\b|\bunder (?:the )?(?:coach|bus)\b(?![^.;]{0,6}\d)/,
  ],
  [
    'link pulled under',
    /\b(?:pull|pulling|pulled|push|pushing|move|moving|moved|work|working|lift|lifting|yank|yanking|yanked|trip|tripping|unhook|unhooking|disconnect\w*|undo|undoing|drop|dropping|knock\w*|flick\w*|waggle|flip\w*)\b[^.;]{0,26}\b(?:link|linkage|arm|lever|rod)\b[^.;]{0,40}\b(?:by hand|under(?:neath)?|while|from under|lying|laying|beneath|between)\b|\b(?:under|underneath|beneath|lying|laying|between)\b[^.;]{0,44}\b(?:pull|pulling|pulled|push|move|moving|moved|work|working|trip|unhook|lift|yank\w*|disconnect\w*|undo)\b[^.;]{0,20}\b(?:link|linkage|arm|lever|rod)\b/,
  ],
  [
    'open under pressure',
    /\b(?:pull|pulled|pulling|take|took|taking|knock|knocked|cut|unplug\w*|disconnect\w*|undid|undo|unscrew\w*|remov\w*)\b[^.;]{0,20}\b(?:air ?line|hose|pipe|line|fitting|plug)\b[^.;]{0,24}\bwith \d+|\b(?:loosen|loosening|loosened|undo|undoing|undid|crack|cracking|open|opening|slacken|back off)\b[^.;]{0,40}\b(?:fitting|line|nut|union|hose|pipe|plug|elbow|connector)\b[^.;]{0,40}\b(?:let|bleed|release|dump|blow|vent|get)\b[^.;]{0,12}\b(?:air|pressure|rest)\b|\b(?:crack|cracking|cracked|open|opening|opened|loosen|loosening|loosened|undo|undoing|undid|break|breaking|broke|unscrew|unscrewing|unscrewed|remove|removing|removed|pull|pulling|pulled|take|taking|took|disconnect|disconnecting|disconnected|slacken|slackening|slackened|cut|cutting|unplug|unplugging|spin|spinning|back|backing|backed|pop|popping|popped|unhook|unhooking|slack|slacking|split|splitting|swap|swapping|change|changing|whip|whipping|pull off|yank|yanking|release|releasing|undone|brake|breack|unbolt|unbolting|tighten|tightening)\b[^.;]{0,34}\b(?:line|lines|air ?line|fitting|fittings|hose|hoses|pipe|pipes|plug|drain plug|nut|valve|union|connector|petcock|tube|switch|bag|bellows|air ?bag|joint|cap|connection|check|elbow|tubing|air spring|crimp)\b[^.;]{0,70}\b(?:air in|pressure (?:in|still|on|behind|up)|under pressure|still (?:has|got|have|at|up|under|pressure|air|full|charged)|pressuri[sz]ed|with (?:air|\d+|pressure)|(?:to )?see if (?:there is|theres|its|there|any|air)|if (?:there is|theres) (?:still )?air|\d+ ?(?:psi|in (?:the |it)|bar|kpa|lbs?|pounds)|charged|loaded|live|tank (?:up|full|is (?:up|full|at|still)|still|at \d)|(?:at|got) \d+|without (?:bleeding|draining|venting|dumping|letting)|not (?:drained|vented|bled)|before (?:draining|bleeding|venting)|full of air|air(?:ed)? up|inflated|full tank|not empty|no need to (?:drain|bleed)|hot)\b|\b(?:\d+ ?(?:psi|bar|kpa|lbs?|pounds)?|pressure|air|full|charged)\b[^.;]{0,26}\b(?:in (?:the )?(?:tank|bag|line|system|bags|it)|on (?:the )?(?:tank|gauge|line)|still in|behind it|tank|showing)\b[^.;]{0,40}\b(?:crack\w*|open\w*|loosen\w*|undo|undoing|break\w*|unscrew\w*|remov\w*|pull|pulling|slacken\w*|disconnect\w*|cut|take|taking|swap|swapping)\b[^.;]{0,24}\b(?:line|fitting|hose|pipe|plug|nut|valve|union|connector|tube|switch|bag|bellows|off|it|loose)\b|\b(?:crack|cracking|cracked|break|breaking|broke)\b[^.;]{0,12}\b(?:the )?(?:line|fitting|hose|pipe|nut|union|connector)\b[^.;]{0,10}\b(?:loose|open)\b|\bopen(?:ing|ed)? (?:it|the line|a line|the fitting|the pipe|the hose) (?:up )?(?:under|with) (?:pressure|air)\b|\b(?:crack|cracking|cracked) (?:the |a |that |this |open )?(?:fitting|line|union|nut|hose|pipe)\b|\bunder pressure\b[^.;]{0,20}\b(?:open|undo|crack|loosen|disconnect|remove)|\b(?:tighten\w*|nip\w*|snug\w*|torque\w*|wrench\w*) [^.;]{0,24}\b(?:under pressure|with (?:the )?(?:air|pressure) (?:in|on|up)|pressuri[sz]ed|with air in|while its? pressuri[sz]ed)\b/,
  ],
  [
    'relief defeated',
    /\b(?:relief|safety valve|pop ?off|prv)\b[^.;]{0,60}\b(?:close|shut|stop|plug|block|cap|seal|tape|bung(?:ed)?) (?:it|that|this)\b|\b(?:plug|pipe plug|cap|bung|bolt|screw) (?:in|into|on|over) (?:the |that )?(?:relief|safety valve|prv)\b|\b(?:plug|plugging|plugged|cap|capping|capped|block|blocking|blocked|tape|taping|taped|wire|wiring|wired|tie|tied|screw down|wind|winding|wound|crank|cranking|cranked|shim|shimmed|raise|raising|raised|turn up|turning up|adjust|adjusting|defeat|bypass|remove|removing|removed|stuff|jam|jammed|blank|blanking|blanked|weld|bung|bunged|hold|holding|held|bend|bolt|bolted|stick|stop|put a plug|set)\b[^.;]{0,30}\b(?:relief|safety valve|pop ?off|prv|blow off)(?: valve)?\b|\b(?:relief|safety valve|pop ?off|prv)(?: valve)?\b[^.;]{0,44}\b(?:plug|plugged|capped|cap|blocked|block|taped|tape|wired|raise|raised|turned up|screwed|higher|wound|cranked|blanked|tied|bolt in|stuff|shut|set up|stop it|with a plug|removed|bung|bunged)\b/,
  ],
  [
    'fuse enlarged',
    /\b(?:fuse|breaker)\b[^.;]{0,30}\b(?:in place of|instead of)\b|\b(?:forty|fifty|sixty|seventy|eighty|hundred) ?amp(?:s)? (?:fuse|one)\b|\bfuses\b[^.;]{0,30}\b(?:bigger|larger)\b|\b(?:bigger|larger|heavier) (?:fuses|one in (?:the )?(?:fuse|holder))\b|\b(?:bigger|larger|higher|heavier|oversize|oversized|upsize|upsized|upping)\b[^.;]{0,14}\bfuse\b|\b(?:[4-9]0|100) ?(?:a|amp|amps)? ?fuse\b|\bfuse\b[^.;]{0,30}\b(?:bigger|larger|higher|up to|to an? [4-9]0|heavier|with foil|foil|nail|penny|screw|wire|bypass|bypassed|bridged|bridge|[4-9]0 ?a(?:mp)?s?\b)|\b(?:foil|tinfoil|tin foil|nail|penny|paper ?clip|wire|bolt|coin)\b[^.;]{0,26}\bfuse\b|\b(?:bypass|bypassing|bypassed|jumper|jumped|jumping|bridge|bridging|bridged|jump)\b[^.;]{0,14}\b(?:fuse|breaker)\b|\b(?:from|was) (?:20|25|30)[^.;]{0,16}\bto (?:40|50|60)\b[^.;]{0,12}\b(?:fuse|amp)/,
  ],
  [
    'bellows unrestrained',
    /\b(?:bag|bellows|air ?bag|air ?spring)\b[^.;]{0,16}\b(?:be |being |been |get |was |is )?(?:blown|pumped|aired|inflated|filled|tested|charged)(?: up)?\b[^.;]{0,14}\b(?:on|in) (?:the |my |a )?(?:bench|vice|floor|table)\b|\b(?:inflate|inflating|inflated|air(?:ing|ed)? up|pump(?:ing|ed)? up|blow(?:ing|n)?(?: up)?|blew(?: up)?|fill(?:ing|ed)?|test(?:ing|ed)?)\b[^.;]{0,34}\b(?:bag|bags|bellows|air ?bag|air ?spring)\b[^.;]{0,44}\b(?:on (?:the |my |a )?(?:work ?bench|bench|floor|table|ground|driveway)|off the rig|out of the rig)\b|\b(?:bag|bags|bellows|air ?bag|air ?spring)\b[^.;]{0,30}\b(?:on (?:the |my |a )?(?:work ?bench|bench|floor|table|ground)|unmounted|in the vice)\b[^.;]{0,44}\b(?:air ?line|air hose|shop air|air on it|air in it|inflat|blow)|\b(?:inflate|inflating|inflated|air(?:ing|ed)? up|pump(?:ing|ed)? up|blow(?:ing)? up|fill(?:ing|ed)?|pressuri[sz]\w*|test(?:ing|ed)?|put(?:ting)? (?:some )?(?:air|\d+)|blew up|charge|charging)\b[^.;]{0,34}\b(?:bag|bags|bellows|air ?bag|air ?spring|spring)\b[^.;]{0,44}\b(?:on the (?:bench|floor|table|ground)|off the (?:coach|bus|vehicle)|out of the (?:coach|bus)|unmounted|loose|in the vice|in my hands?|before (?:fitting|i fit|mounting|install)|bench|unrestrained|on bench|by hand)\b|\b(?:bag|bags|bellows|air ?bag|air ?spring)\b[^.;]{0,30}\b(?:on the (?:bench|floor|table|ground)|off the (?:coach|bus|vehicle)|unmounted|unrestrained|on bench|in the vice)\b[^.;]{0,44}\b(?:inflat\w*|air(?:ed)? up|pump\w*|blow\w*|fill\w*|pressuri\w*|test\w*|\d+ ?(?:psi|bar)|shop air|air in|with air)\b|\bbench\b[^.;]{0,24}\b(?:inflat\w*|air up|blow up|pump up|fill)\b[^.;]{0,20}\b(?:bag|bellows|air ?bag|spring)\b/,
  ],
  [
    'shop air unregulated',
    /\b(?:blow|blowing|fill|filling|inflate|inflating|hit|hitting|pump|hook|hooking|hooked|put|putting|feed|feeding|charge|charging|connect\w*|air up|used?|using)\b[^.;]{0,36}\b(?:with|to|on|from|using|up) (?:the )?(?:shop air|workshop air|yard air|shop compressor)\b(?![^.;]{0,20}\b(?:regulat|through a reg|turned down))|\bshop air\b[^.;]{0,20}\bno reg\b|\b(?:shop air|airline|shop line|shop compressor|workshop air|compressor line|yard air|big compressor|line pressure|shop hose)\b[^.;]{0,44}\b(?:straight|direct|directly|full|unregulated|no regulator|without (?:a )?reg\w*|wide open|\d{3} ?(?:psi|lbs?)|1[3-9]\d|not regulated|flat out|no reg)\b|\b(?:straight|direct|directly|full|unregulated|no regulator)\b[^.;]{0,24}\b(?:shop air|shop pressure|workshop air|airline|yard air)\b|\bwithout (?:a |the )?regulator\b|\bno regulator on\b|\bunregulated (?:air|shop)/,
  ],
  [
    'air at person',
    /\b(?:fingers?|hand|thumb|palm|cheek|face)\b[^.;]{0,30}\b(?:feel|check|find|test|over|on|near)\b[^.;]{0,24}\b(?:air|leak|hiss\w*|hole|jet|bubbl\w*)\b|\b(?:blow|blowing|blew|blast|blasting|dust|dusting|clean|cleaning|cleaned|blown)\b[^.;]{0,28}\b(?:myself|my self|clothes|overalls|coveralls|hands?|face|skin|off me|(?<!clean )(?<!cleaned )(?<!cleaning )him|arms|hair|jacket|yourself|me off|me down|me|trousers|shirt|lad|apprentice|boots)\b|\bair ?(?:gun|line|hose)\b[^.;]{0,34}\b(?:myself|clothes|overalls|coveralls|hand|hands|face|skin|him|me|finger|fingers|mate|arm|eyes|jacket|cut)\b|\b(?:hand|finger|thumb|palm)\b[^.;]{0,12}\b(?:over|on)\b[^.;]{0,14}\b(?:air ?(?:line|hose|jet)|nozzle|blow gun|open line|open pipe|the hose|the leak)\b/,
  ],
  [
    'torsion bar under load',
    /\b(?:back|backing|backed|spin|spun|spinning|loosen|loosening|loosened|undo|undoing|undid|turn|turning|turned|remove|removing|removed|wind|winding|wound|unbolt|unbolting|slack|slacken|slackening|slackened|crank|cranking|take|taking|took|knock|pull|pulling|adjust|adjusting|unload|unscrew|unwind|drop|break)\b[^.;]{0,28}\b(?:torsion|t ?bar|tbar|torsion bar)\b[^.;]{0,30}\b(?:adjuster|bolt|off|out|under load|anchor|by hand|weight|loaded|bar|on the wheels|back|on the ground|quick)?\b/,
  ],
  [
    'cords driven',
    /\b(?:cords?|threads?)\b[^.;]{0,60}\b(?:limp\w*|cover \d+ miles|deliver)\b|\b(?:drive|driving|drove|run|ran)\b[^.;]{0,20}\b(?:with|on)\b[^.;]{0,26}\b(?:torn|ripped|split)\b|\b(?:cords?|threads?|fabric|canvas)\b[^.;]{0,20}\b(?:showing|visible|through|exposed|show|sticking)?\b[^.;]{0,60}\b(?:drive|driving|drove|run it|home|road|trip|send it|inflate|inflated|air it up|pump it|still (?:ok|good|safe|fine|holds|use)|let it go|one more|get home|take it|go out|make it|use it|get away|hold up|ride|leave it|patch|last|pumped?|aired)\b|\b(?:drive|driving|run|send|get|go|drove|is it ok|can i)\b[^.;]{0,34}\b(?:cords?|threads?) (?:are |is )?(?:showing|visible|through|exposed)\b|\b(?:drive|driving|drove|run)\b[^.;]{0,20}\b(?:with|on)\b[^.;]{0,16}\b(?:torn|ripped|split|burst|patched|cracked)\b[^.;]{0,10}\b(?:bag|bellows|air ?bag|spring)|\bpatch(?:ed|ing)? (?:the |a |that )?(?:bag|bellows|air ?bag|air spring)\b|\b(?:tape|taped|taping|plug kit|glue|glued|gluing|duct tape|sleeve)\b[^.;]{0,20}\b(?:bag|bellows|air ?bag)\b/,
  ],
  [
    'drive disabled',
    /\bon (?:the |its )?(?:stops|bump ?stops)\b[^.;]{0,30}\b(?:creep|creeping|crawl|nurse|baby|ease|roll) (?:it|her|on|home|to|along)\b|\b(?:drive|driving|drove|run|running|ran|limp\w*|move|moving|take|taking|go|going|get|nurse|crawl)\b[^.;]{0,50}\bon (?:an? |the |one |two |its )?(?:flat|burst|blown|empty|dead|torn)\b[^.;]{0,18}\b(?:bags?|bellows|air ?bags?|springs?)\b|\b(?:drive|driving|drove|limp|limping|move|moving|tow|towing|get it home|run it|crawl home|nurse|take it|send it|ride|haul|bring it|cruise|roll it|moved)\b[^.;]{0,44}\b(?:on (?:the )?(?:flat|bump ?stops|stops|empty bag|rubber)|flat bag|bag (?:is )?(?:flat|down|empty|blown|burst|torn)|bags (?:are )?(?:flat|down|empty)|no air|on the stops|one bag|blown bag|burst bag|open line|without air|bags flat|busted bag|with it down|on its stops|slammed|flat bellows|left side down|right side down|side flat|down on|without (?:the )?bag|dead bag|bad bag)\b|\b(?:flat|burst|blown|empty|on (?:the|its) (?:stops|bump ?stops)|no air in|bag blew|bag down|down on (?:the )?stops)\b[^.;]{0,44}\b(?:drive it|driving it|drove it|limp (?:it )?home|get (?:it )?home|move it|make it home|home slow|run it|tow it|take it|limp|drive home|drive slow|keep going|drive on|keep driving|still drive|can (?:i|we) drive|ok to drive|safe to drive|drive)\b|\blimp(?:ing)? (?:it |her )?home\b/,
  ],
  [
    'over-pressure',
    /\b(?:runs?|running|going|pumps?|pumping|climbs?|climbing|goes|went) (?:right |on |straight |way |well )?(?:past|over|above|beyond) (?:the )?(?:cut ?out|limit|1[2-9]\d|cut off|red line|red)\b|\b(?:gauge|tank|psi|pressure|reads|its at|its)\b[^.;]{0,24}\b(?:1[3-9]\d|2\d\d)\b[^.;]{0,30}\b(?:still (?:running|going|pumping|climbing|rising|building)|and (?:climbing|rising|running|going|pumping|building))|\brelief(?: valve)? (?:is |just |keeps |has |keep |its )?(?:popp(?:ed|ing)|lift(?:ed|ing)|blow(?:s|ing)|blew|going off|opening|went off|blowing off|lifts|pops|venting|letting go|letting off)\b(?! ?(?:at|test))|\bstill (?:pumping|climbing|running|rising|going|building)\b[^.;]{0,30}\b(?:1[3-9]\d|2\d\d)\b|\b(?:run|let|pump|take|crank|turn|set|wind)\b[^.;]{0,24}\b(?:it|tank|pressure|switch|her|cut ?out)\b[^.;]{0,20}\b(?:up )?(?:to|past|over|at) (?:1[4-9]\d|2\d\d)\b|\bstill (?:pumping|running|going)\b[^.;]{0,20}\b(?:over|above|past) (?:the )?(?:cut ?out|limit|cut off)\b|\bgauge (?:is )?(?:pegged|off the (?:scale|clock|dial)|in the red)\b|\bneedle (?:is )?(?:in the red|pegged|past the red)\b/,
  ],
  [
    'eyes bare',
    /\b(?:glasses|goggles|specs|eye protection)\b[^.;]{0,50}\b(?:took|take|taken|taking|pulled|pushed) (?:them|it|my|the|his|her)? ?(?:off|up)\b|\b(?:no|without|forgot(?:ten)?(?: my)?|havent got|left my|dont need|skip(?:ping)?|lost my|not wearing|aint got)\b[^.;]{0,14}\b(?:glasses|goggles|safety glasses|eye protection|specs|safety specs|eyewear|face shield|visor|ppe)\b|\b(?:got|blew|in|something in|dirt in|grit in|soap in|air in) (?:my|his|the) eyes?\b/,
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
    /\b(?:fire|torch|blow ?torch|blow ?lamp|flame|lighter|heat ?gun|burner)\b[^.;]{0,30}\b(?:make (?:it )?warm|warm|thaw|defrost|melt|unfreeze|free)\b|\b(?:thaw|defrost|melt|warm|heat)\w*\b[^.;]{0,30}\b(?:with|using) (?:a |the |my )?(?:fire|torch|blow ?torch|blow ?lamp|flame|lighter|heat ?gun|burner)\b|\b(?:heat gun|heatgun|torch|blow ?torch|blow ?lamp|flame|gas torch|propane|butane|hair ?dryer|boiling water|hot water|kettle|antifreeze|methanol|alcohol|meths|brake cleaner|de ?icer|starting fluid|blowlamp|rosebud|lighter|salamander)\b[^.;]{0,54}\b(?:line|lines|valve|tank|drain|frozen|ice|iced|froze|hose|pipe|bag|dryer|fitting|thaw|bellows|petcock|nylon|unfreeze|it|system)\b|\b(?:frozen|froze|ice|iced|thaw|thawing|unfreeze|defrost)\b[^.;]{0,54}\b(?:heat gun|heatgun|torch|blow ?torch|blow ?lamp|flame|propane|lighter|boiling|kettle|antifreeze|methanol|alcohol|meths|de ?icer|blowlamp)\b|\bheat(?:ing|ed)? (?:up )?(?:the |a |that )?(?:line|frozen line|valve|fitting|pipe|nylon|air line)\b/,
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
    /\b(?:hands?|fingers?|arm|touch|touching|touched|reach|reaching|reached|turn|turning)\b[^.;]{0,30}\b(?:inside|in|into|on|at|it|pump|compressor|comp|belt|fan)\b[^.;]{0,50}\b(?:key (?:is )?(?:still )?on|power (?:is )?(?:still )?on|still (?:live|on|powered)|fuse (?:is )?(?:still )?in|it can (?:kick|start|come)|can kick in|can start)\b|\b(?:hand|hands|finger|fingers|arm|work|working|take|taking|pull|pulling|strip|stripping|remove|removing|unbolt|unbolting|spin|spinning|turn|turning|feel|feeling|clean|cleaning|touch|touching|check|checking|reach|reaching|open|opening|poke|undo|change|changing|grab)\b[^.;]{0,26}\b(?:pump|comp|compressor|fan|motor|flywheel|head|crank|belt)\b[^.;]{0,44}\b(?:power on|fuse in|key on|still (?:on|live|powered|connected|hooked)|live|plugged in|not isolated|without (?:pulling|isolating|cutting|taking|killing|disconnecting)|with the (?:power|key|fuse)|may start|could start|powered|breaker on|breaker in|while it rests|its resting|while (?:its )?(?:resting|stopped|running)|its off anyway|not running anyway|running)\b|\b(?:power|key|fuse|breaker)\b[^.;]{0,12}\b(?:still )?(?:on|in|live)\b[^.;]{0,30}\b(?:hand|hands|finger|fingers|strip|stripping|working on|unbolt|take|taking|pull|pulling|remove|removing)\b[^.;]{0,20}\b(?:pump|comp|compressor|motor|head)\b/,
  ],
  [
    'hot parts',
    /\b(?:head|pump|comp|compressor|discharge|line|motor)\b[^.;]{0,12}\bhot\b[^.;]{0,20}\b(?:touch\w*|grab\w*|burn\w*|hand|took hold)\b|\b(?:touch|touched|touching|grab|grabbed|grabbing|burn|burned|burnt|hand on|feel|feeling|hold|holding|undo|loosen|pull|take|remove|work on|working on|unbolt|pulling|lean|leaned|leaning)\b[^.;]{0,28}\b(?:head|discharge|pump|comp|compressor|discharge line|cylinder|exhaust pipe|manifold)\b[^.;]{0,26}\b(?:hot|just ran|been running|burning|while hot|straight after|still warm|just stopped|boiling|right after|burnt|after it ran|after running)\b|\b(?:burn|burned|burnt|scalded|singed)\b (?:my|his|a) (?:hand|hands|finger|fingers|arm|thumb|palm|wrist|knuckles)\b|\b(?:hot|red hot|boiling) (?:head|pump|comp|compressor|discharge|discharge line|pipe)\b[^.;]{0,20}\b(?:touch|grab|hand|undo|loosen|pull|take)\b/,
  ],
  [
    'brakes opened',
    /\b(?:open|opening|opened|crack|cracking|cracked|undo|undoing|undid|disconnect|disconnecting|disconnected|bleed|bleeding|bled|loosen|loosening|loosened|remove|removing|removed|pull|pulling|pulled|take|taking|took|cut|cutting|strip|break|breaking)\b[^.;]{0,22}\b(?:brake (?:line|lines|hose|hoses|pipe|pipes|chamber|chambers|caliper|drum|drums|can|cans)|break line|break hose|break chamber|hub|hubs|drum|brake chambers|spring brake|maxi)\b|\b(?:brake line|brake hose|brake pipe|hub|spring brake)\b[^.;]{0,24}\b(?:opened|cracked|off|undone|disconnected|loosened|removed|apart|loose|open)\b/,
  ],
];

/** Words of the sentence that say in which mood a danger stands; asked first, then warned, then intended. */
export const asking =
  /\?|\b(?:it is|is it|is that|its|that is|this is) (?:ok|safe|fine|alright|allowed)\b ?\?|(?:^|[.;:] ?)(?:will|would|does) (?:an?|the|it|this|that|one|she|my|our) |(?:^|[,.;:] ?|\b(?:and|but|or) )(?:can|could|may|should|shall|must|would|do) (?:i|we|he|she|they|you|it|one)\b|\b(?:is it|is that|would it be|will it be|am i|are we) (?:ok|okay|safe|alright|all right|fine|good|bad|dangerous|possible|a problem|allowed)\b|\b(?:ok|okay|safe|alright) (?:to|if)\b|\bis (?:ok|okay|good|safe)\b|\bwhat (?:if i|happens if)\b|\b(?:any harm|any reason not|any problem|why not just|why cant i|mind if|is there a problem|does it matter|do i (?:need|have) to|need i)\b/;
export const warning =
  /\b(?:dont(?! need| have| think| worry| care| know)|do not|never(?! mind)|stay (?:out|clear|away|from)|keep (?:\w+ ){0,2}(?:out|clear|away|off)|keeping (?:clear|out|away|off)|not going (?:to|under|near|in)|wont (?:go|be going|get|open|touch|drive|do)|not gonna|nobody (?:goes|is|gets|under)|no one (?:goes|is|gets|under)|refus\w+|(?:told|asked) (?:him|them|the|her|\w+) (?:\w+ ){0,2}(?:not|dont|never|stay)|not to\b|wouldnt|should not|shouldnt|kept (?:out|clear|off|away|everyone|everybody)|warned|instead of going|must not|mustnt|not allowed|no way im|aint (?:going|gonna)|isnt going|not (?:getting|opening|driving|touching|going)|without going|no one should|nobody should)\b/;
export const intending =
  /\b(?:gonna|going to|goin to|going (?:under|in|beneath|underneath)|about to|will|ill|plan(?:s|ning)?|wants?|wanna|lets|let me|thinking (?:of|about)|fixing to|got to|need to|needs to|have to|tempted|might|try|trying|figured (?:id|ill|i would|on|we)|ready to|intend|ima|fancy|id like|off to|popping (?:under|in|down|round)|nipping (?:under|in|down|round)|hoping to|was going to|next step is|should just|time to|then i)\b/;
export const soon =
  /\b(?:tomorrow|tonight|later|in a (?:minute|sec|bit|mo|moment)|next week|this afternoon|after lunch|in the morning|first thing|soon)\b/;
/** Verbs of what was done. */
export const doneVerbs =
  /^(?:went|put|got|did|took|blew|cut|slid|crawled|opened|cracked|plugged|taped|tapped|hit|jumped|undid|fitted|used|drove|broke|ran|swapped|pulled|loosened|burnt|burned|inflated|bypassed|wired|jumpered|bridged|knocked|whacked|welded|patched|removed|raised|left|moved|disconnected|propped|aired|heated|touched|turned|backed|bled|came|let|held|pushed|lifted|bumped|bunged|set|stuck|made|grabbed|reached|climbed|lay|laid|was|were|had|been|lit|brazed|slackened|unscrewed|spun|popped|kicked|thumped|smacked|dusted|cleaned|linked|upped|stuffed|capped|blocked|clamped|wedged|fed|hooked|gave|tried|rolled|ducked|stood|worked|wound|limped|tore|shorted|hotwired|gone|done|driven|undone|taken|changed|wrapped|poured|warmed|thawed)$/;
export const notPast =
  /^(?:red|need|speed|feed|bed|shed|stacked|pressurized|pressurised|unregulated|regulated|frozen|loaded|charged|unmounted|supported|unsupported|rated|tired|bleed|chocked|braided|tread|weed)$/;
/** What a danger is when no verb says: a state goes on, an act was done. */
export const usual: Readonly<Partial<Record<HazardName, 'doing' | 'done' | 'intended'>>> = {
  'jack only': 'doing',
  'soft ground': 'done',
  'under unsupported': 'doing',
  'heat on line': 'doing',
  'fuse enlarged': 'done',
  'relief defeated': 'done',
  'over-pressure': 'doing',
  'eyes bare': 'doing',
  'pump may start': 'doing',
  'air at person': 'done',
  'interlock defeated': 'done',
  'hot parts': 'done',
  'relay tapped': 'done',
  'bellows unrestrained': 'doing',
  'spark at battery': 'doing',
  'shop air unregulated': 'doing',
  'cords driven': 'doing',
  'drive disabled': 'doing',
};
