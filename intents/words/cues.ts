/** Small words that turn, join or colour others. Data only. */
export const negations =
  'no|not|not a single|not a sign of|no more|neither|none|nothing|without|never|nope|neg|nil|nada|zero signs of|isnt|wasnt|arent|werent|cant|cannot|couldnt|dont|doesnt|didnt|aint|no sign of|no signs of|free of|any|havent|hasnt|no more|no longer|wont|wouldnt|nowt|zip'.split(
    '|',
  );
export const hedges =
  'think|could it be|might it be|can it be that its|thinks|i think|thinking|suspect|maybe|might be|might have|possibly|probably|looks like|seems|reckon|guess|im guessing|could be|not sure|perhaps|i bet|betting|sure its|must be|hunch|may be|seems like|prolly|probly|my money is on|feeling its|seen it before|iffy|good chance|odds are|most likely|likely|i suppose|suppose its|i blame|blame|believe|supposedly|i fear|smells like|appears|wonder if|my guess|got to be|gotta be|has to be|i figure|figure|presumably'.split(
    '|',
  );
export const tellers =
  'tells me|tells us|per cust|per customer|per the customer|per driver|per the driver|per owner|per the owner|complaining of|complains about|complaining about|says the|says that the|says his|says her|said the|driver says|boss say|driver say|chief say|owner say|customer say|man say|he say|she say|guy say|mechanic say|chief says|chief said|gaffer says|foreman said|office says|office said|neighbor said|neighbour said|wife said|husband said|driver reports|customer says|customer states|cust says|cust states|owner says|owner reports|reported|reports|previous owner told me|previous owner said|he says|she says|they say|told me|according to|driver said|owner said|customer said|complaint is|driver told|says the driver|boss says|boss said|wife says|husband says|my wife says|my husband says|customer reports|cust reports|driver complains|customer complains|owner complains|he said|she said|they said|foreman says|the last guy said|last shop said|neighbour says|neighbor says|mate says|other shop says|prev owner says|dealer said|dealer says|driver reckons|owner reckons|customer reckons|boss thinks|driver claims|says it|says that|said it|said that|driver report|customer tells|friend says|owner told me|driver told me|driver thinks|previous owner says|driver tells me|owner tells me|customer told me|apparently|was told|i was told|night shift says|day shift says|day shift said|night shift said|mechanic said|the mechanic said|somebody said|someone said|reckons'.split(
    '|',
  );
/** Who tells, and how: each with each. */
export const tellingPeople =
  'punter|client|operator|guest|lady|gentleman|bloke|chap|night crew|day crew|crew|day shift|night shift|late shift|shift|the shop|shop|buddy|drvr|drv|dealer|the dealer|senior|lead hand|old hand|fitter|inspector|driver|customer|cust|owner|wife|my wife|husband|my husband|boss|he|she|they|gaffer|foreman|watchman|night man|neighbour|neighbor|passenger|guy|mate|apprentice|lad|helper|mechanic|client|master|my master|teacher|chief|dispatcher|dispatch|office|manager|supervisor|instructor|colleague|other driver|guard|security|night shift|day shift|my driver|son|brother|dad'.split(
    '|',
  );
export const tellingVerbs =
  'c/o|co|complains of|complain of|complaining of|says|said|say|say me|said me|say to me|told us|telling me|tell me|reports|reported|hears|heard|saw|sees|noticed|notices|claims|claimed|told me|tells me|complains|complained|mentioned|mentions|swears|states|stated|describes|can hear|could hear|says she can hear|says he can hear|was saying|keeps saying'.split(
    '|',
  );
export const regularity: readonly (readonly [
  string,
  'always' | 'sometimes' | 'standing' | 'driving' | 'cold' | 'hot' | 'wet' | 'restart' | 'loaded',
])[] = [
  [
    'overnight|after one night|after a night|every night|each night|nightly|over the night|in morning|in night|in the night|at night|during the night|through the night|all night long|after i park|when i park|once parked|if i park it|when i leave it|after i stop|after we park|when i shut it off|after i shut it off|once parked up|when its parked|when it is parked|after a night|over a weekend|after it has been parked|after its been parked|when left overnight|parked overnight|over night|standing|when parked|after standing|parked up|in the morning|by morning|every morning|every single morning|every a m|every am|most mornings|when it sits|after sitting|left standing|over the weekend|parked|while parked|sitting overnight|this morning|by the morning|after night|after the night|all night|nite|overnite|when sitting|if it sits|sat overnight|each morning|mornings|next morning|when standing|when left|after it sits|after parking|over nite|after a week|after a few days|stood overnight',
    'standing',
  ],
  [
    'when driving|while were driving|while we drive|going down the interstate|down the interstate|on the interstate|down the highway|going down the highway|when you drive it|when you drive|we drive|i drive|on the dual carriageway|on dual carriageway|on a motorway|on the road|the whole way|the whole way home|all the way home|once i drive|once i drive it|once driven|once its driven|when he drives|when he drives it|when she drives it|when they drive it|after he drives it|when hes driving|over a bump|when i go over a bump|when we go over a bump|when i hit a bump|when it hits a bump|over a pothole|when drive|when drive it|when we drive|when i drive it|after i drive|after i drive it|on highway|on motorway|on the interstate|on freeway|on road|over railroad tracks|when i go over railroad tracks|over the tracks|over bumps|when i go over bumps|going over bumps|on bumps|over speed bumps|on rough road|on rough roads|on bumpy roads|over potholes|when turning|in turns|cornering|on bends|round corners|in corners|at highway speed|at motorway speed|when underway|while moving|when its driven|when it is driven|while driving|when driven|driving|going down the road|when i drive|when moving|on the move|under way|at speed|on the highway|on the motorway|after driving|driving down the road|down the road',
    'driving',
  ],
  [
    'sometimes|now and then|intermittent|intermittently|on and off sometimes|once in a while|occasionally|comes and goes|every so often|some days|at times|every now and then|off and on|not always|every few minutes|from time to time|some times|now and again',
    'sometimes',
  ],
  ['always|every time|all the time|constantly|each time|everytime', 'always'],
  [
    'when cold|on cold mornings|in the cold|cold mornings|when its cold|cold weather|only when cold|cold nights|when it gets cold|on a cold morning|when it is cold|in cold weather|in winter|below freezing|on cold days|on cold nights',
    'cold',
  ],
  [
    'when hot|when its hot|on hot days|once warm|when warm|when it gets hot|hot weather|in the heat|when it is hot',
    'hot',
  ],
  [
    'in the rain|when is rain|when it rain|when is raining|when raining|when wet|wet weather|when it rains|in the wet',
    'wet',
  ],
  [
    'on restart|start again|when it tries to restart|tries to restart|when it restarts|when compressor start again|when it starts again|when restarted|on a hot restart|when it kicks back in|when it tries to start again|when it comes back on|at restart|restart only|only on restart|when restarting|on a restart|restarting|trying to restart|on restarting',
    'restart',
  ],
  [
    'when its loaded|when it is loaded|only when loaded|both only when loaded|when loaded|when full of people|when is full of people|full of people|with people on|with passengers on|full of passengers|when full|with everybody on board|with everyone aboard|fully loaded|with a load|loaded up|when laden|under load',
    'loaded',
  ],
];
export const prepositions = new Set(
  'at|on|from|by|in|near|around|to|towards|toward|of|off|under|behind|along|across|round|inside|below|above|into|out|through|over'.split(
    '|',
  ),
);
export const fillers = new Set(
  "my bad|changed my mind|change my mind|changing my mind|on charge|left on charge|left alone|unit dwn|unit down|at rest|resting|ride|quiets down|quieted down|calms down|calmed down|cools down|cooled down|cool down|cooling down|slows down|slowed down|winds down|dies down|died down|settles down|settled down|simmers down|sheet|book|manual|plate|after drive|after the drive|after a drive|after driving it|low part|lower part|low end|lower end|low side|lower side|low down|leak test|leak check|holding test|tightness test|pipe plug|driving us nuts|drives us nuts|driving me nuts|drives me nuts|driving me mad|drives me mad|driving me crazy|driving us crazy|driving us mad|in pairs|as a pair|i think we got it|think we got it|i think we have it|i think thats fixed|i think thats it|came back in and|proper|well hot|on either one|at either one|on any of them|at any of them|right on at|dead on at|bang on at|spot on at|leak down test|leakdown test|single|gonna|wanna|ima|imma|the|a|an|is|are|was|were|it|its|that|this|there|theres|i|im|ive|we|my|our|now|then|so|ok|just|still|also|has|have|had|be|been|with|for|as|um|uh|er|well|got|get|gets|getting|some|very|really|bit|little|all|here|again|today|too|which|what|when|while|after|before|and|&|but|or|than|them|they|he|she|you|your|only|right now|at|on|from|by|in|near|around|to|of|off|one|reads|read|says|say|shows|showing|show|looks|look|see|seen|found|find|side|same|other|up|out|into|about|can|could|do|does|did|will|would|should|if|like|even|yes|yeah|yep|please|it's|got|goes|go|went|come|comes|came|going|gone|back|over|been|be|being|where|how|more|much|any|onto|coming|quite|pretty|lot|lots|bits|definitely|completely|totally|slightly|slight|nice|big|small|tiny|good|bad|another|those|these|each|every|until|till|since|both|because|cause|though|however|although|whole|thing|things|stuff|time|times|around|took|take|takes|taken|makes|make|made|keeps|keep|kept|left|his|her|their|me|us|who|why|let|lets|put|puts|set|sure|know|need|needs|want|wants|try|tried|trying|start|started|starting|stays|stay|did|done|first|second|last|once|twice|end|area|between|bottom|top|lower|upper|inner|outer|inside|outside|early|late|later|already|yet|almost|nearly|ago|next|new|old|own|part|piece|near|away|apart|together|far|long|short|way|kind|sort|such|per|through|per|however|actually|basically|seems|seem|anyway|anything|something|everything|nothing|somewhere|guys|guy|man|mate|boss|customer|owner|driver|shop|job|work|works|fully|half|full|empty|hey|hi|eh|oh|hmm|ah|y|n|s|t|d|ll|ve|re|m|wth|w|min|max|via|am|pm|minus|plus|point|went|amount|amounts|check|checked|checking|measured|measuring|level|reading|readings|gave|give|gives|given|whats|hear|heard|feel|feels|felt|smell|smells|using|used|use|under|water".split(
    '|',
  ),
);

/** Words that begin a limit given in a note. */
export const specWords =
  'should read|should show|needs to be|need to be|has to be|ought to be|wants to be|sheet gives|book gives|manual gives|plate gives|sheet wants|book wants|manual wants|spec|specs|spec is|spec says|should be|supposed to be|limit|limits|limit is|limits are|sheet says|the sheet says|book says|the book says|manual says|the manual says|target|nominal|sheet calls for|book calls for|spec for|spec on|specification|meant to be|tolerance|to be within|sheet value|book value|set point|allowed|sheet is|manual calls for|plate says|sticker says|placard says';
/** Beginnings of the months' names, in order. */
export const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
/** Whole days back. */
export const dayWords: readonly (readonly [string, number])[] = [
  [
    'yesterday|last night|the night before|the day before|last evening|yesterday evening|yesterday morning|yesterday afternoon',
    1,
  ],
  ['last week|a week back', 7],
  ['last month', 30],
  ['last year', 365],
  ['two nights ago|the day before yesterday', 2],
];
/** Which way a wheel leans or points, said after or before the amount. */
export const directions: readonly (readonly [string, 'in' | 'out'])[] = [
  [
    'negative|neg|outward|outwards|top in|the top is in|top is in|top leans in|top leaning in|top inward|tops in|leaning in at the top|in at the top',
    'out',
  ],
  [
    'positive|pos|inward|inwards|top out|the top is out|top is out|top leans out|top leaning out|top outward|tops out|out at the top|leaning out at the top',
    'in',
  ],
];
