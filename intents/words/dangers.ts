/**
 * Dangers by their make-up: a deed, what it is done to, and what makes it dangerous. They stand beside the patterns of
 * words/hazards.ts and see wordings that no pattern lists. Data only; over lower-cased words without apostrophes.
 */
import type { HazardName } from '../shapes.ts';

export type Danger = {
  hazard: HazardName;
  /** One word: what is done. */
  deed: RegExp;
  /** One word within `near` words after the deed: what it is done to. */
  thing: RegExp;
  near: number;
  /** What must, and what must not, stand in the text that begins at the thing. */
  then?: RegExp;
  never?: RegExp;
  /** What must, and what must not, stand anywhere in the sentence. */
  also?: RegExp;
  unless?: RegExp;
};

const person =
  /^(?:go|going|goin|gone|went|get|gets|getting|got|crawl\w*|climb\w*|slid\w*|slip\w*|roll|rolled|rolling|duck\w*|pop|popped|popping|nip|nipped|nipping|div(?:e|ed|ing)|dove|scoot\w*|scooch\w*|stick|sticking|stuck|reach\w*|lie|lying|lay|laying|laid|squeez\w*|wriggl\w*|wiggl\w*|creep\w*|crept|put|putting|pok(?:e|ed|ing)|peek\w*|peep\w*|look|looked|looking|work|worked|working|been|am|im|hop|hopped|jump|jumped|sneak\w*|snuck|shimm[iy]\w*|shuffl\w*|kneel\w*|knelt|bend|bending|stay\w*|sit|sitting|sat|head|hand|hands|arm|leg|legs|fingers?|inspect\w*|check\w*)$/;
const opener =
  /^(?:crack|cracking|cracked|loosen\w*|undo|undoing|undid|undone|slack\w*|unscrew\w*|disconnect\w*|unhook\w*|unbolt\w*|unplug\w*|uncouple\w*|break|breaking|broke|open|opened|opening|remov\w*|pull|pulled|pulling|pop|popped|popping|cut|cutting|take|taking|took|whip\w*|yank\w*|spin|spun|spinning|releas\w*|detach\w*|separat\w*|tighten\w*|snug\w*|torqu\w*|dismantl\w*|strip|stripped|stripping|unthread\w*)$/;
const airPart =
  /^(?:lines?|airlines?|hoses?|pipes?|fittings?|unions?|nuts?|plugs?|petcock|drain|cock|valves?|bags?|airbags?|bellows|tube|tubing|connectors?|couplings?|elbow|joint|olive|ferrule|switch|check|unloader|dryer|cartridge|reservoir|regulator|tee|cap|port|connection|fitment)$/;
/** Air is behind it, said in the same breath. */
const pressed =
  /\b(?:with|while|when|w|had|has|have|got|still|its?|at|and)\b[^,.;]{0,24}\b(?:air|pressure|pressuri[sz]ed|charged|\d{2,3} ?(?:psi|lbs?|pounds|kpa|#)?|\d(?:\.\d)? ?bar|full|live|aired up|pumped up)\b|\bunder (?:pressure|air)\b|\bpressuri[sz]ed\b|\b(?:without|before|instead of) (?:i |we )?(?:dump|drain|vent|bleed|let|releas|exhaust|empty)\w*|\b(?:not|didnt|havent|hasnt|never|forgot to|no need to|dont need to|dont bother|cant be bothered)\b[^,.;]{0,14}\b(?:dump\w*|drain\w*|vent\w*|bleed\w*|bled|let|releas\w*|empt\w*)|\bto (?:see|hear|feel|find out|check) if\b[^,.;]{0,20}\b(?:air|pressure)\b|\blet(?:ting)? (?:the |some |all )?(?:the )?(?:air|pressure) out\b|\bair inside\b/;
/** A tank or line that is up, said anywhere in the note. */
const standing =
  /\b(?:tank|gauge|system|reservoir|line|bag|bags|it)\b[^.;]{0,14}\b(?:\d{2,3}|full|charged|up|pressuri[sz]ed)\b|\b\d{2,3} ?(?:psi|lbs?|kpa|#)?\b[^.;]{0,10}\b(?:in|on) (?:the |it)/;
const safe =
  /\b(?:drained|vented|bled (?:it|the)|emptied|dumped|no pressure|no air|at zero|air out|reads? (?:zero|0)|depressuri[sz]ed)\b/;

export const dangers: readonly Danger[] = [
  {
    hazard: 'under unsupported',
    deed: person,
    thing: /^(?:under|underneath|beneath|unders)$/,
    near: 7,
    never:
      /^(?:under|underneath|beneath) (?:\d|about \d|pressure|load|the limit|limit|spec|cut|power|voltage|control|warranty|way|vacuum|normal|a hundred|ninety|eighty|seventy|sixty|fifty|the (?:spec|limit|bag|bags|panel|dash|valve|seat|bonnet|hood))\b/,
    unless:
      /(?<!not |off |no )\b(?:on|with|over|got)\b[^,.;]{0,16}\b(?:stands|cribbing|pit|ramps)\b(?! (?:next|first|later|soon))/,
  },
  {
    hazard: 'under unsupported',
    deed: person,
    thing: /^between$/,
    near: 6,
    then: /^between\b[^.;]{0,30}\b(?:wheels?|tires?|tyres?|frame|body|axles?|bags?|bellows|chassis|duals)\b/,
    unless: /\b(?:on|with) (?:the )?(?:axle |jack |rated )?stands\b|\bgap\b|\bmeasur|\bline\b|\bhose\b|\bshim/,
  },
  {
    hazard: 'under unsupported',
    deed: /^(?:go|going|goin|get|getting|crawl\w*|climb\w*)$/,
    thing: /^(?:down|below)$/,
    near: 3,
    then: /^(?:down|below) (?:of )?(?:the )?(?:coach|bus|it|body|vehicle|machine)\b/,
  },
  { hazard: 'open under pressure', deed: opener, thing: airPart, near: 5, then: pressed, unless: safe },
  {
    hazard: 'open under pressure',
    deed: /^(?:crack|cracking|loosen|loosening|undo|undoing|slacken|slackening|unscrew|unscrewing|disconnect|disconnecting|open|opening|break|breaking|pull|pulling|take|taking|unhook|unhooking|remove|removing|unbolt|unbolting|pop|popping)$/,
    thing: airPart,
    near: 5,
    also: standing,
    unless: safe,
  },
  {
    hazard: 'jack only',
    deed: /^(?:sat|sitting|sits|held|holding|resting|rests|hanging|supported|standing|leave|left|leaving)$/,
    thing: /^jacks?$/,
    near: 6,
    never: /^jacks? ?stands?/,
    unless: /\bstands (?:in|under|set)\b|\bon stands\b/,
  },
  {
    hazard: 'jack only',
    deed: /^jacks?$/,
    thing: /^(?:enough|hold|holds|do|trust|safe)$/,
    near: 5,
    never: /^do(?:wn|es)?$/,
    unless: /\bstands (?:in|under|set)\b|\bon stands\b/,
  },
  {
    hazard: 'relief defeated',
    deed: /^(?:screw\w*|turn\w*|wind|winding|wound|crank\w*|tighten\w*|adjust\w*|bump\w*|reset|set|shim\w*|clamp\w*|wir\w*|tap(?:e|ed|ing)|block\w*|seal\w*)$/,
    thing: /^(?:relief|prv|safety)$/,
    near: 4,
    then: /^(?:relief|prv|safety)\b[^.;]{0,24}\b(?:down|up|to \d+|higher|tighter|shut|closed|off)\b/,
  },
  {
    hazard: 'bellows unrestrained',
    deed: /^(?:blow\w*|blew|inflat\w*|air|airing|aired|pump\w*|fill\w*|test\w*|charg\w*)$/,
    thing: /^(?:bags?|airbags?|bellows|spring)$/,
    near: 4,
    then: /^(?:bags?|airbags?|bellows|spring)\b[^,.;]{0,20}\b(?:loose|first before|before (?:it goes|i fit|fitting|mounting|i mount|its on)|off the|out of the|unmounted|in the vice|in my hands?|on (?:the |my |a )?(?:bench|floor|table|ground))\b/,
  },
];

/** What stands before "under the coach" when a thing is under it and nobody goes there. */
export const thingsUnder =
  /\b(?:leaks?|leaking|hiss\w*|noise|sound|bubbles|water|drips?|dripping|puddle|oil|rust\w*|air|line|hose|pipe|wire|bracket|bang|knock\w*|smell|stone|mud|cable|somewhere|coming from|heard|hear)\b[^.;]{0,24}$/;
