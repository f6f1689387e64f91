/** What a note may begin with and that says nothing of the coach. Data only. */

/** Each alone: "fyi rr low", "update: rr low". */
export const leadWords =
  'ok so|okay so|ok then|okay then|right then|right so|right ok|ok right|well now|now then|so then|so yeah|yeah so|fyi|btw|by the way|update|an update|quick update|note|please note|quick one|quick note|just checked|just to say|just to let you know|just so you know|letting you know|heads up|for info|for your info|for the record|as of now|as it stands|so far|oh|ah|hmm|um|uh|er|erm|also';

/** Only with a mark after them: "ok, rr low"; bare they may be an answer, a side or the word itself. */
export const leadMarked = 'ok|okay|k|right|well|so|alright|now|and|listen|look|anyway|just now|this time|again';

/** Greetings, with whom they greet. */
export const greetings =
  'good morning|good afternoon|good evening|good day|morning|mornin|afternoon|evening|hi there|hi|hiya|hello there|hello|hey there|hey|howdy|gday';
export const greeted =
  'all|everyone|everybody|mate|boss|chief|gaffer|team|guys|lads|lad|folks|buddy|bud|there|sir|friend|again|teacher';

/** Numbers of the shop's own: they name the job, not a reading. */
export const references = 'bus|coach|job|ro|wo|work order|order|ticket|unit|fleet|card|bay';
/** Of these no mark need follow a long number: "wo 5521 lr low". */
export const jobReferences = 'job|ro|wo|work order|order|ticket';

/** What a note may end with and that says nothing of the coach. */
export const tailWords =
  'thanks|thank you|many thanks|thanks mate|thanks boss|cheers|cheers mate|thx|tks|ta|lol|haha|btw|by the way|fyi|atm|at the moment|for now|pls note|please note|over and out|just so you know|for info|for your info|for the record|will call later|talk later|call you later|back later|speak later';
/** Only after a comma: bare they may be another word. */
export const tailMarked =
  'over|mate|boss|chief|lads|guys|so yeah|anyway|i think thats it|thats it|thats all|thats all for now|more later|that is all|end of note|end';
