/** Forms of questions and commands, over the lower-cased sentence with apostrophes left out. Data only; first match wins. */
import type { AskKind } from '../shapes.ts';

/** `topic`: what the question is about, taken from the named group. */
export const askForms: readonly (readonly [AskKind, RegExp])[] = [
  [
    'work out',
    /^(?:so |and |ok |then )?(?:which (?:way|direction)|how far)\b(?<topic>.*\b(?:turn|screw|wind|adjust|move|set|nut|switch)\b.*)|^(?:so |and |ok |then )?which (?:way|direction)(?: (?:then|now|round|do i go|to go|is that))*$|^(?:do|should) i (?:turn|screw|wind)\b(?<topic2>.*)|^(?:the )?(?:local )?atmosphere (?:pressure )?(?:at|up|here)\b(?<topic3>.*)|^(?:so |and )?(?:what|how much|how many volts?)(?: volts?| voltage)? (?:does|do|should|would|will|can) (?:the |my |a )?(?:copper|wires?|wiring|cables?|feed|ground)\b(?<topic4>.*\b(?:lose|drop|loss)\b.*)|^(?:in )?(?:what|which) order\b(?<topic5>.*)/,
  ],
  [
    'summary',
    /^(?:so |and )?(?:whats|what is) (?:still |left )?(?:open|outstanding|unanswered|to do)(?: (?:still|now|yet))?$/,
  ],
  // who did it is asked, and nothing was done
  [
    'work out',
    /^(?:so |and )?who (?:last |has |had )?(?:replaced|changed|fitted|swapped|renewed|adjusted|set|cleaned|drained|repaired|worked on|put) (?<topic>.+)/,
  ],
  [
    'next',
    /^(?:so |and |ok )?(?:are we (?:all )?(?:done|good|finished|through)|is that (?:it|all|everything)|anything else(?: to (?:check|do))?)$/,
  ],
  [
    'how long',
    /^(?:so |and )?how (?:many (?:more )?(?:checks|steps|tests)|much longer)(?: are| is)?(?: left| to go| remaining| now)?$/,
  ],
  ['what is', /^(?:so |and )?(?:remind me|tell me|refresh me) (?:what|which) (?<topic>.+)/],
  ['work out', /^will (?:it|the (?:tank|drain|line|water)|that) freeze\b(?<topic>.*)/],
  [
    'how long',
    /^will (?:it|she|the (?:coach|bus|tank)|that side|this) (?:still )?(?:be (?:level|up|down|flat)|stay|hold|stand|last|sag|go down)\b(?<topic>.*)/,
  ],
  [
    'how sure',
    /^(?:so )?what (?:would|could|will|might) (?:change|make you change|sway) (?:your|the|its) mind\b(?<topic>.*)|^what would (?:prove|disprove) (?:it|that)\b(?<topic2>.*)/,
  ],
  [
    'why',
    /^(?:so |and |but )?what (?:would|could|can|might|will|does|do)? ?(?:cause|causes|make|makes)s? (?<topic5>.+)|^(?:so )?what (?:killed|caused|broke|ruined|wrecked|cooked|burnt|brought) (?:it|that|this|the \w+(?: \w+)?)\b(?<topic>.*)|^what (?:else|other) (?:did|does|has|may|might|could) (?:it|that|this) (?:break|damage|hurt|ruin|take|do|done|broken)\b(?<topic2>.*)|^whats the root cause\b(?<topic3>.*)|^root cause$/,
  ],
  [
    'how',
    /^(?:bench test|test|check) (?:of |for )?(?:the |a )?(?<topic>(?:height |levell?ing )?valve(?: on the bench)?)$|^(?:show me |open |start )?(?:the )?(?<topic2>(?:bench test|soap check|leak ?down|timed leak ?down|pump ?up)(?: guide| test)?)$/,
  ],
  [
    'work out',
    /^if (?:it|she|(?:the |a |my )?(?:tank|bags?|bellows|tyres?|tires?|gauge|pressure|height)|i) .*\d.* (?:whats|what is|how (?:much|many|long|far|fast)) .*|^what (?:does|do|will|would|should) (?=.*\d)(?:the |my )?(?<topic3>.+) (?:become|read|be|show|(?:drop|fall|go) to)\b(?!.* mean).*|^what (?:does|do|is|would) (?<topic2>.+) (?:come to|work out (?:at|to|as)|make|amount to)(?: (?:per|a|an|in) .*)?$|^(?:so |and |ok )?(?:whats|what is|what are|how much is|how many is|convert)\b(?<topic>[^?]{0,40}\d[^?]{0,40} (?:in|to|into|as) (?:psi|kpa|bar|mm|cm|inch|inches|millimet\w+|degrees|minutes|volts|gallons|lit\w+|pounds|kilos?|kg|lbs?|f|c|fahrenheit|celsius|feet|metres|km|miles|scfm|cfm))\b/,
  ],
  [
    'why not',
    /^(?:so |and |but )?why (?:arent (?:we|you|i) (?:looking at|checking|doing|testing)|dont (?:we|you|i) (?:look at|check|test)|not|didnt (?:you|it|we)(?: \w+){0,2}|isnt it|cant it be|couldnt it be|not just|wouldnt it be) (?<topic>.+)/,
  ],
  [
    'what if',
    /^(?:so |and |but |ok )?(?:what if|what happen if|what happen when|what would happen if|what will happen if|what would happen|what will happen|what would it mean if|suppose|lets say|what about if|what happens if|and if|what when)\b (?<topic>.+)/,
  ],
  [
    'how sure',
    /^(?:so )?how (?:much )?(?:sure|certain|confident)\b(?<topic>.*)|^(?:you are|are you|you|we are|are we) (?:sure|certain)\b(?<topic2>.*)|^are you (?:sure|certain)\b|^you sure\b|^how do you know\b/,
  ],
  [
    'next',
    /^(?:so |and )?where (?:do|should|shall|must) (?:i|we) (?:go|start|begin)(?: (?:from here|next|now|then))*$|^(?:so |ok |and |right |now )?(?:what(?:s| is| do i do| should i do| to do| now| else| shall i do| do i check| should i check| do we do)? ?(?:next|now|then)|whats next|what (?:should|do|shall) (?:i|you|we|one) (?:do|check|look at|look for|try|test)(?: at)? (?:next|now|first|then)|(?:now |and )?(?:i|we) (?:must|should|have to|need to|shall) do what(?: now| next)?|what (?:do|should) (?:i|we) (?:do|check|look)|next|next (?:on|up) .*|whats next (?:on|in|for) .*|next check|where (?:do|should) i (?:start|look|begin)|whats? (?:up |do i do |comes )?first|now what|what then|and now|where next|whats the next (?:step|check|test|thing)|what to (?:do|check)(?: next| now| first)?|what i (?:do|check|must do|should do)(?: next| now| first)?|(?:so )?which (?:one|part|side|thing) (?:do|should|shall) i .*|where (?:do |should |to )?i? ?(?:start|begin)|whats? (?:do|should|shall|can) (?:i|we) (?:do|check|try|look at|test|measure)(?: about it| here| next| now| first| then)?|any idea what(?: to do)? next|whats? the next|where (?:do|should|shall) (?:i|we) (?:look|go|start|check)(?: now| next| first)?|what do i have (?:him|her|them|the \w+) (?:do|look at|check|try)(?: next| now| first)?|then what|what to look at(?: next)?|which (?:check|test|step) (?:next|now|first)|next (?:step|check|test) (?:please|then)|what would you (?:check|do|try) (?:next|first|now)?|where to (?:start|begin|look)(?: now| first)?|what now|what (?:should|shall|must|do|does) (?:i|we|you|he|she|they|the \w+(?: \w+)?) (?:do|check|test|look at|look for|try) (?:next|now|first|then)|what should i (?:do|check|test|look at)\b.*)\??$/,
  ],
  [
    'how long',
    /^(?:so |and )?how many (?:miles|km|kms|kilomet\w+) (?:can|could|will|would|do|before|till|until)\b(?<miles>.*)|^(?:so |and )?how (?:long|many (?:hours?|minutes?|mins?|hrs?|days?))\b(?<topic>.*)|^when (?:will|does|is) it (?:be )?(?:down|go down|hit)\b|^how (?:soon|fast)\b(?<fast>.*)|^will (?:it|she) (?:last|stay up|make)\b|^will (?:i hear|soap show)\b|^(?:will|would|does|can) soap (?:even )?(?:show|find|catch|see)\b.*/,
  ],
  [
    'limit',
    /^how many (?:miles|km|kms|kilomet\w+|months|weeks) (?:between|per|for|on)\b(?<topic32>.*)|^(?:whats|what is) an? (?:good|normal|ok|okay|acceptable|reasonable|fair|decent|bad|proper|usual|typical) (?<topic33>.+)|^what (?<topic34>(?:leak|drop|fall|loss|rate|pressure|height|gap|play|volts?|voltage|amps|current|draw|temp\w*)\b.*) (?:is|are) (?:ok|okay|normal|allowed|acceptable|good|fine|too much|too high|too low|permitted|right)$|^is (?<topic31>.*(?:\d|\b(?:one|two|three|four|five|six|seven|eight|ten|half|quarter)\b).*) (?:acceptable|allowed|permitted|tolerable|normal|alright|excessive)$|^(?:query |question )?(?:acceptable|allowed|permitted|normal|max(?:imum)?|min(?:imum)?) (?<topic30>.+)|^how (?:much|many|far|low|high|long|big|fast) (?<topic15>.+?) (?:is|are|can be|would be) (?:ok|okay|allowed|normal|acceptable|fine|too much|too many|too low|too high|permitted|good)\b.*|^is (?:it |that |this )?normal (?:if|when|that|for) (?<topic16>.*\d.*)|^is (?:it |that |this )?too (?:much|many|high|low|long|slow|fast) (?:if|when|that) (?<topic17>.+)|^(?:is|are|was) (?<topic14>.*(?:\d|\b(?:one|two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|half|quarter)\b).*)\btoo (?:much|many|high|low|long|slow|fast|big|hot|cold)\b.*|^how often\b(?<topic13>.*)|^how tight\b(?<topic11>.*)|^what (?!should)(?:[\w-]+ ){1,4}should (?:it|they|she|that|this|the \w+(?: \w+)?)\b(?<topic12>.*)|^normal (?<topic18>(?:pump|tank|fill|build|cut|run|restart|delay)\b.+)$|^(?:max|maximum|min|minimum|limit|normal|spec) (?<topic10>\D+)$|^(?:so |and |ok )?(?:what|whats|what is|wots) (?:the |is the |are the |s the )?(?:max|maximum|min|minimum|most|least|highest|lowest|limit|normal|correct|right|proper|spec|specs|specified|allowed|good|target|supposed)\b(?<topic>.*)|^what (?:should|must)\b(?<topic2>.*)|^(?:what|whats|what is|what are) (?<topic3>.+?) (?:supposed to be|meant to be|should be|spec|limit|normally|allowed)\b.*|^how (?:much|many|high|low) (?:should|is allowed|must|can|psi must|pressure should|bar should|psi should)\b(?<topic4>.*)|^how many (?:psi|bar|kpa|volts|amps)\b(?<topic5>.*)|^is (?<topic6>[^?]*\d[^?]*?) (?:normal|ok|okay|too (?:low|high|much)|in spec|enough|allowed|right|good|bad|high|low|alright|within)\b.*|^(?:what|which) (?:pressure|height|torque|toe|camber|voltage|tyre pressure|tire pressure)\b(?! (?:switch|valve|is it|means|does))(?<topic7>.*)|^what torque\b(?<topic8>.*)|^(?:spec|limit) for (?<topic9>.+)/,
  ],
  [
    'meaning',
    /^what (?<topic21>(?:a |an |the )?(?:fall|drop|loss|rise|reading|\d).+?) (?:points? to|means?|tells? (?:me|us|you)|says?|indicates?|suggests?)$|^what does? mean (?<topic20>.+)|^(?:so |and |ok )?what (?:does|do|is|would|did|was|were)\b(?: it)? ?(?:mean )?(?<topic>.+?) (?:mean|tell|say|signify|indicate|point to)s?\b.*|^(?:whats|what is) (?:the )?meaning of (?<topic2>.+)|^what (?:does|do) (?:it|that|this) mean\b(?<topic3>.*)|^(?:is|does) (?:that|this|it) (?:mean|bad|good|normal)\b(?<topic4>.*)|^is (?:that|this) (?:ok|okay)$|^whats? (?:does |do |is |the |a )*(?<topic10>.+) (?:mean|means|telling me|tell me|tells me|telling us)$|^whats? (?:is |the )*meaning(?: of)? (?<topic11>.+)|^what (?:it|this|that) means? (?<topic12>.+)|^(?<topic13>.+?),? what (?:does )?(?:it|that|this) means?$|^(?<topic14>.+) means? what$|^what(?:s| is| does) it mean (?:if|when) (?<topic15>.+)|^what mean(?:s|ing)?\b (?<topic5>.+)|^meaning (?:of )?(?<topic6>.+)|^(?:explain|why is it) (?:the )?(?<topic7>\d.+)|^so what if\b|^is it (?:normal|bad|a problem|ok) (?:that|if|when|for) (?<topic8>.+)|^whats? (?:it )?mean(?:s|ing)? (?:when|if) (?<topic9>.+)/,
  ],
  [
    'why',
    /^(?:so |and |but |ok |then |kindly |please )*(?:(?:explain|tell me|say|any idea|any ideas|do you know|any clue|wonder|i wonder|wondering) why|why|how come|y|whats the reason|for what reason|what makes you think|what makes you say|whys)\b(?<topic>.*)/,
  ],
  [
    'how',
    /^(?:so |and |ok |please )?(?:(?:which|what) (?:end|way|edge|face|direction)(?: of (?:the |a )?\w+(?: \w+)?)? (?:do|should|shall|must|would|to)(?: (?:i|you|we|one))?\b|how (?:do|can|should|would|must|to|does|did|shall|i (?:do|check|test|set|change|measure|use|adjust|find))(?: (?:i|you|we|one))?\b|hows the|show me how|tell me how|whats the (?:way|procedure|best way|steps|order)|how i|what way|guide (?:for|to|on)|walk me through|talk me through|steps (?:for|to))(?<topic>.*)/,
  ],
  [
    'what is',
    /^(?<topic9>[a-z][a-z -]{2,24}),? what(?:s| is)? (?:it|this|that)(?: thing| part| one)?(?: is)?$|^(?:so |and |ok |er |um )?(?:whats|what is|what are|what s|wats|wots|what(?:s| is| are) (?:an?|the)|define|describe|tell me about|explain|what do you mean by|what you mean by|whats an?|what means)\b(?! (?:next|wrong|the (?:pressure|reading) now))(?<topic>.+)|^(?:where|which)(?:s| is| are)? (?:the )?(?<topic2>.+)|^what does (?:a|an|the) (?<topic3>.+?) do\b.*|^what (?<topic4>.+?) (?:do|does|is for|is doing)\b.*/,
  ],
  [
    'safe',
    /^(?:so |and |ok )?(?:can (?:i|we|he|she|they|you|the customer|customer)|can (?:it|the coach|the bus) (?:leave|go (?:home|back|out|now)|move|roll)|is it (?:safe|ok|okay|alright|fine)|safe to|ok to|okay to|may i|should i|should we|could i|good to go|can it be|do i need to|do i have to|do we need to|must i|is she safe|is it good to|am i ok|alright to|do i dare|its ok if|it ok if|is ok)\b(?<topic>.*)/,
  ],
  [
    'work out',
    /^(?:what (?:size|gauge|wire|shim|shims|thickness|awg|cable)|which (?:wire|shim|size|gauge|cable|awg|leg)|(?:whats |what is )?(?:the )?smallest (?:wire|cable|awg)|what (?:to|(?:do|should|must) (?:i|we)) (?:re-?check|check (?:again|after))|next service|calc(?:ulate)?|work out|convert|figure out|compute|how (?:many|much) (?:scfm|cfm|lpm|turns|shims?|shim|wire|water|degrees|inches|mm|in|thick|load|weight|does|is|will|would|gallons|litres|air)|wire (?:size )?for|shims? for|how thick|how big|tyre at|tire at|whats \d|what is \d|\d.*\bin (?:degrees|kpa|psi|bar|mm|inches)\b|when (?:is|are|was) (?:it|the|next|my|this|that|service|due)|when (?:do|should|must) (?:i|we) (?:drain|change|renew|replace|service|clean) (?:the|my|this)|turns for|turn .* into)\b(?<topic>.*)/,
  ],
  [
    'summary',
    /^(?:give me |give us |show |show me |can i have |write me |write |make me |make |send me |do me )?(?:a |the )?(?:quick |short |brief |little )?(?:summary|read (?:me )?back (?:everything|all|what)|rundown|run ?down|run ?through|overview|summarise|summarize|sum up|sum it up|where (?:are we|do we stand|am i)|recap|what do we know|what (?:all )?have (?:we|you|i) got|what (?:all )?(?:do|did) we have|wrap up|where we at|status|what did we find|what do you have|whats so far|so far|read (?:me |us )?back (?:everything|all|what we)|list (?:the )?(?:findings|readings)|summing up)\b(?<topic>.*)/,
  ],
  [
    'help',
    /^(?:help|help me|what (?:sort|kind) of things? can you do(?: for (?:us|me))?|what are you for|what all can you do|what can you do|how does this work|commands|what can i (?:say|type|ask)|how do i use (?:this|you)|i need help|what do i type)\b(?<topic>.*)/,
  ],
  ['how', /^(?:guide|procedure)\b(?<topic>.*)/],
];

/** Commands to the assistant: canonical name, and the whole sentence that gives it. */
export const commandForms: readonly (readonly [string, RegExp])[] = [
  [
    'start timer',
    /^(?:can you |could you )?(?:make|set|start|put|run|give me)(?: me)?(?: an?| the| up)? (?:\S+ ){0,4}timer\b.*|^(?:please )?(?:start|set|begin|run|put)(?: me)?(?: an?| the)? (?:\S+ ){0,3}(?:timer|clock|stopwatch|leak ?down timer)\b.*|^timer(?: for)?\b.*|^time (?:it|me|this|\d+)\b.*|^remind me (?:in|after)\b.*/,
  ],
  ['stop timer', /^(?:stop|cancel|end|kill)(?: the)? (?:timer|clock|stopwatch)\b.*/],
  [
    'skip check',
    /^(?:nah |no |lets |just |please )?(?:skip(?: (?:it|that|this|the check|that check|this check|that one|this one|check))?|(?:i |we )?(?:cant|cannot|can not|couldnt) (?:check|test|do|measure|get at|reach|see) (?:it|that|this|that one|this one)(?: (?:now|here|today|right now))?|cant check|no way to (?:check|test|do) (?:it|that|this)(?: here| now)?)\.?$/,
  ],
  [
    'next step',
    /^(?:(?:(?:ok|okay|alright|right|ok im|im|all) )?done|next step|step|continue|go on|carry on|done that|ok next|done next|next one)\.?$/,
  ],
  [
    'back',
    /^(?:back|go back|go back one|go back a step|previous|previous step|step back|back one|last step|one back|back a step|back one step|back up a step|repeat(?: the| that)?(?: last| step| last step)?|please repeat(?: the)?(?: last)? step|say again|repeat please|say that again)\.?$/,
  ],
  [
    'stop guide',
    /^(?:stop|quit guide|stop guide|end guide|leave guide|exit guide|stop the guide|abort|stop there|thats enough|close the guide)\.?$/,
  ],
  [
    'practice',
    /^(?:practice|practise|training|start practice|practice mode|give me a practice (?:coach|one)|i want to practi[sc]e|start practi[sc]e(?: level \d)?|practi[sc]e level \d|lets practi[sc]e|test me|quiz me)\b.*/,
  ],
  [
    'close session',
    /^(?:close|close (?:the |this )?(?:session|job|ticket)|finish (?:the |this )?(?:session|job)|end (?:the )?(?:session|job)|sign off|all done close|close it(?: out| up)?|close out|job done close|wrap it up|close this out|close the job)\.?$/,
  ],
  [
    'report',
    /^(?:print|make|show|give me|write|send|get|do|print out|print me)?(?: me)?(?: the| a| an)? ?(?:owners? |customer )?(?:report|transcript|printout|log|print out|job card|job sheet|hand ?over(?: sheet)?|sheet|paperwork|copy|write ?up)(?: please)?\.?$|^print(?: (?:it|this|that))?\.?$|^(?:show|print) (?:the |me the )?(?:session|log|transcript|report)\b.*|^(?:write up|make) (?:the |a )?(?:report|job)\b.*/,
  ],
  [
    'show readings',
    /^(?:can i |could i |may i |let me )?(?:show|list|display|read back|give me|see|look at)(?: me)?(?: all)?(?: the| my)? (?:readings|figures|numbers|heights|pressures|last readings|graph|chart|plan|circuit)\b.*|^what (?:did|was|were) (?:the |our |my )?(?:tank|bags?|heights?|readings?|pressures?|lr|rr|left rear|right rear)(?: (?:pressure|height|reading)s?)?(?: read| at| show| measure| say)?(?: (?:this morning|last night|earlier|before|yesterday|last time|again))?$|^(?:read|read it|read that|read them) (?:back|out)\b.*/,
  ],
  [
    'save sheet',
    /^(?:save|store|put)\b.* (?:on|to|in|into|as) (?:the )?(?:sheet|spec sheet|new sheet)\b.*|^save (?:the )?sheet\b.*/,
  ],
];

/** Other systems: a note about these is not about the suspension. Canonical word, spellings. */
export const elsewhere: readonly (readonly [string, RegExp])[] = [
  [
    'brakes',
    /\bbreak (?:pedal|lights?|pads?|shoes?|fluid|drums?)\b|\b(?:stop|brake) (?:lamps?|lights?)\b|\b(?!brake in\b)(?:brakes?(?! ?clean)|brk (?:chambers?|cans?|pads?|shoes?|drums?|lines?)|brake (?:pedal|pads?|shoes?|light|lining|drum|disc|fluid|chamber|air|tank|warning|pressure|circuit|test)|handbrakes?|parking brake|park brake|abs|maxi brake|slack adjusters?|brake can|spring brakes?|breaks (?:are|pull|grab|squeal|feel)|calipers?|air brakes?|brake shoes)\b/,
  ],
  ['fridge', /\b(?:fridge|refrigerator|freezer|fridge compressor|icebox|ice ?maker|reefer)\b/],
  [
    'air conditioning',
    /\b(?:ac|a\/c|air ?cons?|aircons?|air conditioning|air conditioner|ac compressor|climate|roof air|hvac|aircon compressor|roof unit)\b/,
  ],
  [
    'water system',
    /\b(?:bathroom|potable|dump valve handle|(?<!filled the |filled the fresh |filled up the |topped up the |full fresh |fresh )water tank(?! (?:is |was )?(?:full|filled|topped))|(?<!full of |filled the |filled up the |topped up the |full )fresh water(?! (?:is |tank |was )*(?:full|filled|topped))|fresh tank(?! (?:is |was )?full)|gr[ae]y (?:tank|water)|black (?:tank|water)|water pump|holding tank|waste tank|(?<!drain )(?<!a )tap|faucet|sink|toilet|shower|water heater|plumbing|boiler|hot water|sewer|waste water|black water tank)\b/,
  ],
  [
    'engine',
    /\b(?:engine (?:is |was |keeps |has |light |wont |will not |doesnt )?(?:overheat\w*|misfir\w*|knock\w*|smok\w*|hot|rough|stall\w*|start|crank|turn over)|engine (?:oil|light|coolant|misfir\w+|temp|wont|revs|noise|mount|temperature|knocks?|smoke|overheat\w*|belt|warning)|radiator|coolant|turbo|alternator|starter(?: motor)?|injectors?|oil change|oil leak at the engine|fan belt|fuel (?:pump|filter|tank)|diesel|exhaust (?:pipe|brake|manifold|stack|smoke|system)|muffler|oil pressure|serpentine|(?<!\b(?:pump|comp|compressor)\b.*)head gasket(?!.*\b(?:reeds?|pump|comp|compressor)\b)|glow plugs?|dpf|def|adblue)\b/,
  ],
  ['generator', /\b(?:generator|gen|genset|gen set|onan|genny)\b/],
  [
    'gearbox',
    /\b(?:gearbox|transmission|trans|trans fluid|clutch|gear ?lever|gears|gearshift|the diff|diff (?:oil|leak\w*|noise|whine|lock|seal)|prop ?shaft|driveshaft|drive shaft|retarder|differential)\b/,
  ],
  [
    'steering',
    /\b(?:steering (?:box|fluid|pump|rack|damper|column)|power steering|ps pump|tie rod|drag link|(?<!on the )steering(?! wheel (?:is |was |sits )?(?:straight|cent|off|level|dead|now)))\b/,
  ],
  [
    'slide',
    /\b(?:slide ?outs?|slides?(?! (?:across|around|about|in|under|it|over|back|off|up|down|beside|between|out from)\b)|awning|steps?|entry step|step motor|leveling jack motor|hydraulic jacks?|landing gear|slide room|jack motor)\b/,
  ],
  [
    'lights',
    /\b(?:head ?lights?|tail ?lights?|indicators?|turn signals?|horn|radio|wipers?|windscreen|windshield|mirrors?|door|doors|(?<!exhaust |inlet |valve |unloader |check |intake |drivers? |from the )seats?|tv|telly|window|brake light|marker lights?|air horn|speedo|camera|stereo|satnav|gps|furnace|(?<!dryer |drier )heater|microwave|stove|gas bottle|lpg|inverter|solar|carpet|curtains?|sofa|roof leak|roof|blinds?|air door|passenger door|seat belt|wifi|cruise control|cabin heater|stop lamp|wiper motor)\b/,
  ],
];

/** One word or turn of small talk; a sentence made of nothing else is talk. Sticky: taken one after another, never back. */
export const talkTurn =
  /(?:(?:the )?(?:coffee|tea|kettle|brew)s?(?: is)? on|(?:sorry )?(?:that (?:was|is) )?(?:only |just )?the radio(?: talking)?|hi|hello|hey|morning|good morning|good afternoon|evening|afternoon|mornin|cheers|thanks|thank you|thx|ta|tks|ty|ok|okay|k|right|great|nice|cool|got it|will do|roger|lol|haha|ha|bye|see you|see ya|cya|later|lunch|lunch time|brew|brew time|smoko|brb|coffee|tea|break time|tea break|going for (?:lunch|coffee|tea)|nice one|good job|well done|you there|are you there|test|testing|sure|fine|alright|yo|sup|no worries|no problem|good|excellent|perfect|sweet|awesome|understood|copy|noted|wow|sorry|please|mate|man|buddy|boss|all|team|there|for (?:that|the help|now|today)|much|very much|so much|a lot|a million|again|everyone|guys|soapwater|you are|youre|(?:ill |will |be |ill be )?back in (?:\d+|a (?:few|bit|minute|sec|while|mo)|five|ten|twenty)|its been a (?:long|hard|rough) (?:week|weak|day|night)|long (?:week|weak|day|night)|that got it|that did it|that fixed it|appreciate it|appreciated|much appreciated|all right|no bother|no drama|no dramas|all good|friday|monday|weekend|at last|finally|after lunch|back (?:soon|later)|good night|goodnight|night|evening|i have (?:a|one) question|got a (?:quick )?question|quick question|have a good (?:one|day|night)|how are you|hows it going|whats up|and|its|it is|i am|im|here|now|time|back|from|just|a|got|to|is|the|day|one|good one|helpful|very|welcome|my friend|friend|brilliant|lovely|ace|legend|pal|tomorrow|tonight|fella|hiya|ello|oh well|never mind the weather)\b/y;
/** Chatter that stands as whole sentences. */
/** Begins a note that is only talk when nothing else was read in it. */
export const talkLead =
  /^(?:good )?(?:morning|afternoon|evening|hi|hiya|hello|hey|thanks|thank you|cheers|ta|lol|haha|yeah|yep|ok|okay|right|bye|see you|goodnight|good night|welcome|sorry about|nice|cool|great|hope (?:you|so|not|that helps|this helps|all|its ok|everything))\b/;
export const chatter =
  /\b(?:brew|coffees? (?:is )?on|back in (?:\d+|five|ten|twenty)|the radio|kettles? (?:is )?on|kettle|shift over|see you (?:tomorrow|later|then)|going home|can you hear me|hearing me|cuppa|time for (?:a |some )?\w+|lunch|coffee|tea break|sandwich|(?<!cold |wet |hot |warm |this )weather|football|the game|match last night|weekend|beer|pub|pizza|donuts|birthday|holiday|vacation|tired|hungry|radio is|cold in here|hot in here|raining out|freezing in here|my back|boss is|payday|clock out|knock off|go home|smoke break|phone|rang|called|on the phone|invoice|paperwork|kids|wife|football|cricket|baseball|fishing|overtime|traffic|coming at|customer is|picking it up|pick it up|parts guy|parts van|delivery guy|joke|funny|done for (?:today|the day|now|tonight|the night))\b/;
