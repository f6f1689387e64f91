/** What stands before a work that was not done: wanted, forgotten, refused, asked for, or only spoken of. Data only. */

/** Right before it: "forgot to", "told him to", "doesnt want to", "plan to"; "had to" and "got to" are done. */
export const meantTo =
  /\b(?:forgot|forget|forgets|refused?|refuses|tried|try|tries|trying|about|tell|told(?: \w+){0,2}|asked(?: \w+){0,2}|asks(?: \w+){0,2}|wants?(?: \w+){0,2}|wanted(?: \w+){0,2}|have|has|plan|plans|planned|planning|ready|supposed|meant|due|time|able|unable|failed|hope|hoping|expect|expected|prefer|prefers|decided|decide|offered|promised|waiting|scheduled|booked|best|better|easier|cheaper|not|dont|didnt) to $/;
/** Before its base form: "maybe replace it", "please check the link", "if i tighten it". */
export const wouldBe =
  /\b(?:maybe|gotta|gonna|might|would|could|may|should|must|shall|can you|please|lets|let us|if (?:i|we|you|he)|tomorrow|tonight|later|next week|on monday|monday|tuesday|wednesday|thursday|friday|then you|why|dont)(?: (?:i|we|you|he|just|also|only|have to|need to|wanna|better))* $/;
/** Before a past form: nobody did it. */
export const nobodyDid =
  /\b(?:nobody|no ?one|never|hardly|not yet|has ?nt|have ?nt|did ?nt)(?: (?:has|have|ever|even|yet|actually))* $/;
/** Before it: it is only spoken of. */
export const spokenOf =
  /\b(?:before|without|instead of|rather than|thinking of|thinking about|thought about|considering|talked about|talking about|cost of|price of|quote for|quoted for|almost|nearly)(?: (?:i|we|he|they|even|again))* $/;
/** Right behind a base form and its thing: "soap the left valve next". */
export const comesNext =
  /^[^,.;]{0,30}\b(?:next|tomorrow|later|tonight|after lunch|next week|on monday|monday)\s*(?:$|[,.;!])/;
