/** What begins a stretch of a note that tells of no thing that is: another coach, an order, a hope, a case that may come. Data only. */

/** Another vehicle, until this one is named again. */
export const anotherCoach =
  /(?:^|[,;:] ?|\b(?:and|but) )(?:(?:on )?(?:the|that|my|our|his) )?(?:other|last|next|another|previous|sister) (?:bus|coach|unit|vehicle)\b/;
export const thisCoach = /\b(?:this (?:one|bus|coach|unit)|ours|mine|on this)\b/;

/** Hoped for, ordered, waited for: to the end of its comma. */
export const wished =
  /\b(?:unless|in case|make sure|be sure|ensure|hope|hoping|hopefully|let (?:me|us) know (?:when|once|if)|tell me (?:when|once|if)|call me (?:when|once|if)|remember to|dont forget to)\b|(?:^|[,;:] ?|\b(?:and|then) )(?:please )?wait (?:until|till|til)\b/;

/** Asked of it, and not answered: to the end of its comma. */
export const wondered =
  /\b(?:not sure|unsure|(?:dont|do not|doesnt|didnt|wants? to|need to|to) know|find out|wonder(?:s|ing)?|ask|asks|see|check|look|test) (?:if|whether)\b/;

/** A case that may come, with what is to be done in it: to the end of its sentence. */
export const inCase =
  /(?:^|[,;:] ?|\b(?:and|so|but|then) )(?:if|unless|in case|when|once)\b(?! (?:i|you|u|we|he|they)\b)(?=.{4,80}?(?:\b(?:then|call me|ring me|tell me|let me know|shout|swap it|replace it|change it|fix it|order (?:one|it|a)|its the|it is the|it must be|that means|go ahead|get me|bring it|send it)\b))/;
