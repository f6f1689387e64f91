/** Words that make of a state a wish, a condition, a guess, a question or another day's. Data only. */

/** Anywhere before it in its clause: "if the tank is empty", "i think stands are in", "told him to get it on stands". */
export const unsureBefore =
  /\b(?:if|whether|unless|hope|hoping|hopefully|not sure|unsure|aint sure|isnt sure|dont know|doesnt know|didnt know|dunno|no idea|cant say|cant tell|wonder(?:ing)?|think|thinks|thinking|thought|reckons?|guess(?:ing)?|believes?|assum(?:e|es|ed|ing)|suppose(?:d|s)?|presum\w+|should|shall|must|would|could|might|may|wants?|wanted|needs?|needed|have to|has to|got to|gotta|going to|gonna|will|ill|well have|lets|let us|better|trying|try|told|tell|ask|asked|asks|said to|let me know|call me|shout|wait(?:ing)? (?:till?|until|for|on)|almost|nearly|half|partly|not quite|probably|maybe|perhaps|possibly|likely|prob|who|why|how|where|whose|what|have you|did you|do you|did anybody|did anyone|has anybody|has anyone|can|cant|cannot|couldnt|wont|never|get|needing|wanting|plan|planning|other (?:bus|coach|one|unit)|another (?:bus|coach|one|unit)|next (?:bus|coach|door|one)|last (?:job|time|bus|coach|one|week|month|year)|yesterday|the day before|always|usually|normally|supposedly|allegedly|instead of|rather than|as if|like its|pretend)\b/;

/** Right before it: "nobody vented the bags", "forgot to chock the wheels". */
export const undoneBefore = /\b(?:nobody|no ?one|forgot(?: to)?|forget(?: to)?|refused to)(?: \w+)? $/;

/** What comes first in it asks: "is it on stands", "was the tank empty". */
export const asksFirst =
  /^\s*(?:(?:so|and|but|ok|hey|boss|well) )*(?:is|are|was|were|isnt|arent|has|have|did|does|do)\b(?! (?:been|now)\b)/;

/** Before it, unless told as past: "after stands are in we can start", and not "went under after it was on stands". */
export const onceBefore = /\b(?:when|once|after|before|until|till|til|as soon as|while|by the time)\b/;
export const toldAsPast = /\b(?:was|were|had|got|came|went|(?:i|we) (?:set|put|have)|(?:when|after) (?:i|we))\b/;

/** Anywhere before it in its sentence: an order to everybody. */
export const orderBefore =
  /\b(?:make sure|be sure|makes sure|ensure|remember to|dont forget|do not forget|see that|check that)\b/;

/** Right behind it: "stands are in not yet", "tank empty?", "wheels chocked i think". */
export const unsureAfter =
  /^(?: (?:the|it|there|under|rear|frame|coach|bus|axle|rails?|now|both|sides|tank|bags?|pump|from|of)){0,4}[ ,]*(?:not yet|yet\b|soon|tomorrow|tonight|later|next (?:week|time)|in a (?:minute|bit|sec|while)|maybe|perhaps|hopefully|probably|possibly|i (?:think|hope|guess|reckon|suppose|believe)|or (?:not|so|is it|are they|isnt)|but (?:no|not|isnt|arent|wasnt)|would|should|could|might|will be|then (?:go|you|we (?:can|will)|ill|i (?:can|will))\b|first(?: thing)?,? (?:before|then you|then we)|before (?:anybody|anyone|nobody|you|he|they|we|going|starting|you go)|we can|you can|i can|\?|last (?:week|time|month|year)|yesterday)/;

/** A yes that is none: "yes i think so", "yes but not the left bag", "yes, tank only", "yes?". */
export const halfYes =
  /\b(?:but|except|apart from|other than|bar the|not|isnt|arent|nearly|almost|mostly|half|partly|think|should|maybe|probably|guess|hope|hopefully|believe|reckon|suppose|in a (?:minute|min|sec|bit|while)|soon|later|tomorrow|only|just the|still|says|said|reckons|will|would|if|when|once|after)\b|\?/;
/** Heard as "understood", and no answer to whether it is safe. */
export const onlyHeard = /^(?:ok|okay|k|sure|right|alright|fine|got it)[.! ]*$/;
