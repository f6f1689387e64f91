/** Forms of corrections, over the lower-cased note with apostrophes left out. Data only. */

/** Takes back whole notes; group `count` in words or digits. */
export const undoForms: readonly (readonly ['undo' | 'redo' | 'drop', RegExp])[] = [
  [
    'redo',
    /^(?:(?:no|actually|oops|wait|sorry|ok)[, ]+)*(?:redo|undo (?:that|the|my|last)? ?undo|undo that undo|put (?:it|that) back|bring (?:it|that) back|(?:put|bring) back what i (?:deleted|removed|undid|took out|scratched|dropped)|restore(?: (?:it|that))?|(?:no )?put that back,? (?:it |that )?was right|never ?mind,? put (?:it|that) back|no keep it|keep it after all|undo the undo|un-?undo|re-do|no wait keep (?:that|it)|put (?:it|that) back in|actually (?:it|that) was right|keep that one|(?:it|that) was right after all)(?: please)?$/,
  ],
  [
    'drop',
    /^(?:please |kindly )?(?:scratch|scrub|scrap|ignore|forget|delete|strike|disregard|cancel|take) (?:that|the|my) last (?:one|reading|note|number|figure|entry|entries|line|message)\b[^\d]{0,60}$|^never ?mind (?:about )?what i (?:just )?(?:said|wrote|typed|put)\b[^\d]{0,60}$/,
  ],
  [
    'undo',
    /^(?:undo|undo (?:that|the) last (?:one|note|entry|reading)|oops undo|please undo|undo (?:it|that|this|last|the last|that one|the last one|last one|last note|the last note|my last|my last note)|undo (?:the )?last (?<count>\w+)(?: notes?)?|undo (?<count2>\w+)(?: notes?)?|no undo)(?: please)?$/,
  ],
  [
    'drop',
    /^(?:no |oops |sorry |actually |wait |nah |er |um |ah |please |oh |hang on |ok ){0,4}(?:scratch|scrub|scrap|ignore|forget|delete|cancel|strike|drop|disregard|remove|take out|erase|take back|bin|lose|skip|wipe|clear|throw out|rub out|withdraw|kill)(?: (?:that|it|this|the|last|previous|one|ones|note|notes|reading|readings|my|entry|entries|line|lines|figure|figures|number|what i (?:just )?(?:said|say|typed|type|wrote|write|put)|out|off|bit|(?<count>two|three|four|to|too|2|3|4)|things?|of|message|both|before|please|i (?:just )?(?:said|wrote|typed|put|told you|sent|gave you)|said|what|about (?:the )?\w+(?: \w+)?|one i (?:said|wrote|sent))){1,8}(?: (?:it|that|please|wrong|was wrong|its wrong|it was wrong|not right|wrong (?:coach|bus|gauge)|typed wrong|thats wrong|,? ?i was (?:looking at|on|reading) .*|i read .*|,? ?(?:its |it was |that was |thats |i )?(?:wrong|mistaken|typed|misread|looking).*|was the wrong (?:coach|gauge|bus|one)|mistake|gauge was off|was a typo|was for another coach|typo)){0,4}(?: (?:because |as |since )?(?:those were|they were|i did ?nt|i did not|(?:the )?(?:gauge|tape|meter) (?:was|wasnt|isnt|is|slipped)|was (?:looking at|on|reading|at|under|in|from)|it was|i (?:was|am|had|read|used|looked|must|misread)|that (?:was|is)|thats|it (?:was|is)|its|wrong|my) .*)?$/,
  ],
  [
    'drop',
    /^(?:(?:disregard|ignore|cancel|scrap|forget it|delete)|never ?mind(?: that| the last(?: one)?)?|nvm|nvm (?:that|the)? ?(?:last)? ?(?:one)?|never ?mind (?:that |the )?(?:last )?(?:one)?|belay that|my mistake ignore that|that was wrong|wrong coach|take (?:that|it|last|the last|last one|the last one) back|that last one (?:was|is) wrong|wrong bus|that one was wrong|ignore last|last one (?:was|is) wrong(?: ignore (?:it|that))?|typo ignore (?:it|that|last)|ignore (?:last|the last) (?<count>two|three|four|2|3|4)(?: \w+)?)$/,
  ],
];

/** Changes the side or place of what was said. */
export const swapForms: readonly RegExp[] = [
  /^(?!no (?:12|24)\b ?(?:v\b|volts?\b)? ?(?:at|to|on|in|from)\b)(?:no,? |ay,? |ai,? |oops,? |sorry,? |ah,? |actually,? |er,? |wait,? |oh,? |damn,? |my bad,? |shit,? |i (?:make|made) (?:a )?mistake,? |i mistake,? |is |its |it is |was |that was |mistake,? |my mistake,? ){0,4}(?:wrong side|other side|wrong way round|other way round|other way around|swap (?:the |them |those )?(?:sides|round|over|them|those)|swap (?:them|those|that)(?: round| over| around)?|got (?:them|it|the sides|my sides) (?:backwards|mixed up|the wrong way round|swapped|reversed|wrong way round)|mixed up (?:the )?(?:sides|left and right)|sides (?:are |were )?(?:swapped|wrong|mixed|reversed|the wrong way round)|left and right (?:are |were )?(?:swapped|mixed|mixed up|reversed|wrong)|had (?:them|the sides|it) backwards|i mean the other side|meant the other side|it was the other side|i meant other side|mixed left and right|i mix(?:ed)? (?:the )?(?:side|sides|left and right|left right)|i had the sides (?:mixed|backwards|wrong)|change sides?|switch sides?|i (?:write|wrote|put|said|typed|told you) (?:the )?wrong side)(?:,? (?:sorry|please|oops|my bad|my mistake|there|that|that one|on that|mate|i mean|i meant))*$/,
];

/** "wait left not right", "it was the rr not the lr". */
export const sideNotSide =
  /^(?:(?:no|oops|sorry|actually|wait|ah|oh|er|um|correction|my bad|hang on|hold on|nope|shit|damn)[,. ]+)*(?:its |it is |it was |that is |thats |that was |was |is |meant |i meant |i mean |i said |i say |make that |make it )?(?:the |on the )?((?:left|right|l|r|lh|rh|lr|rr|lf|rf|nearside|offside|driver|passenger|kerb|curb|ns|os)(?: hand)?(?: side| rear| front| bag| one)?),? not (?:the |on the )?((?:left|right|l|r|lh|rh|lr|rr|lf|rf|nearside|offside|driver|passenger|kerb|curb|ns|os)(?: hand)?(?: side| rear| front| bag| one)?)$/;

/** Begins a correction of what was said before: what follows is the new value. */
export const putLead =
  /^(?!no (?:12|24)\b ?(?:v\b|volts?\b)? ?(?:at|to|on|in|from)\b)(?:(?:(?:the )?above (?:entry |line |note |one |reading )?should (?:read|be|say)|i confuse|i confused|i got confused|confused|nah|perdon|perdona|no|nope|oops|sorry|actually|wait|correction|hang on|ah|oh|er|um|uh|my bad|my mistake|damn|typo|i mean|i meant|meant|make that|make it|should (?:be|read|have been|of been|say)|should be|i should have said|i shouldve said|i shoulda said|i mistake|it should be|that should be|that should have been|that should read|thats|that is|it was|it is|its|was|change (?:that|it|last)(?: one)? to|change to|correct that to|that was|last one (?:was|is|should be)|it was actually|rather|better|not that|scratch that|scrap that|well|wrong|wrong number|wrong one|misread|i misread|misread it|read it wrong|fat fingers?|hold on|ah no|that last one|sorry i mean|that reading was|(?:the|my) last (?:one|reading|note) (?:was|should be|is)(?: taken| read| measured)?(?: at| on)?|tape slipped|looked again|checked again|i mistyped|mistyped|mistake|it not|is not|excuse|pardon|wrong side|wrong corner|that one was|that one is|put|typed wrong|make last(?: one)?|no no|let me correct (?:that|it)|i write bad|i wrote bad|i write wrong|i wrote wrong|i wrote it wrong|i read wrong|i read (?:that|it) wrong|read it wrong|fat fingered it|fat fingered|typed it wrong|i typed wrong|misread that|the)[,.:; ]+)+/;

/** Words inside a note after which what went before is replaced: "95 no wait 98". */
export const midCorrection =
  /\b(?:no(?=, \d)|no wait|wait no|no sorry|sorry no|sorry|i mean|i meant|make that|make it|correction|scratch that|scrap that|no actually|actually no|actually|or rather|no make that|no thats|ah no|er no|um no|uh no|oops|strike that|nope|hang on|no its|no hang on|no hold on|wait its|no it was|no i mean|that is no)\b[, ]*/g;

/** Leads after which a value can only be a correction. */
export const strongLead =
  /^(?!no (?:12|24)\b ?(?:v\b|volts?\b)? ?(?:at|to|on|in|from)\b)(?:(?:oh|ah|er|um|uh|ok|well|and|hey|oops|sorry|damn|boss|mate)[,. ]+)*(?:(?:the )?above (?:entry |line |note |one |reading )?should|(?:i )?(?:confuse|confused|got confused)|nah|perdon|perdona|no|nope|oops|sorry|actually|wait|correction|hang on|my bad|my mistake|typo|i mean|i meant|meant|make (?:that|it|last|the \d+)|change the \d+|turn the \d+|should (?:be|read|have been|of been|say)|i should(?: have|ve|a) said|i mistake|it should|that should|change (?:that|it|last)|change to|correct (?:that|it)|last one (?:was|is|should)|it was actually|wrong|i was (?:writing|typing|putting|saying)|misread|i misread|read it wrong|fat fing|hold on|(?:the|my) last (?:one|reading|note)|tape slipped|looked again|checked again|i mistyped|mistyped|mistake|typed wrong|i was (?:writing|typing|putting|reading|saying)|no no|let me correct|excuse|pardon|scratch that|scrap that|i (?:write|wrote|read|typed|put|said) (?:it |that )?wrong|i said|said|that \d[\d./ ]* (?:was|is|should)|that (?:was|is)|thats|not that|rather|better|put that|it was meant|the \d+ should)\b/;
/** Says at the end that what stands before it was meant. */
export const trailMeant =
  /[, ]+(?:i mean|i meant|is what i meant|i meant to (?:say|type)|sorry|my mistake|my bad|oops|typo|not what i said)[.! ]*$/;
/** Takes back the note before and goes on with a new one. */
export const undoThen =
  /^(?:no |oops |sorry |actually |wait |ok |oh )*(?:scratch|scrub|scrap|ignore|forget|delete|cancel|strike|drop|disregard|undo|nvm|never ?mind)(?: (?:that|it|the|last|one|this|my))*(?: (?:one|note|reading|side|corner|place|bit|figure|number))?[,.;:-]+ ?(?=\S)/;
/** Sides changed over, however it is said; only where nothing else is named. */
export const swapWords =
  /(?:\b(?:swap|swapped|switch|switched|mix|mixed|flip|flipped|reversed?|backwards|crossed|confused|muddled|wrong way|other way|other way round|the other way|opposite|vice versa|wrong side)\b.*\b(?:sides?|left and right|left right|left with right|right and left|l and r|l and the r|them|those|these|the two|two|both|over|round|around|it)\b|\b(?:sides?|left and right|right and left|l and r|them|those|the two|other side|it)\b.*\b(?:swap|swapped|switched|mix|mixed|flipped|reversed|backwards|opposite|crossed|confused|muddled|wrong way|other way|swapped over)\b)/;
