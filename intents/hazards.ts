/** Finds hazards in a note and the mood they stand in. */
import type { Hazard } from './shapes.ts';
import { dangersIn } from './danger.ts';
import { respelled } from './danger-spelling.ts';
import { togetherIn } from './danger-together.ts';
import { notSupported, notUnder, putUnder, supported, takenBack, thingsUnder } from './words/dangers.ts';
import { asking, doneVerbs, hazardPatterns, intending, notPast, past, soon, usual, warning } from './words/hazards.ts';

const window = 90;
const noVerb =
  /^(?:during|string|spring|ring|bring|king|thing|nothing|something|anything|fitting|bushing|bearing|tubing|wiring|ceiling|building|housing|showing|morning|evening|missing|weeping|hissing|leaking|bubbling|whistling|holding|sagging|leaning)$/;
const commands =
  /^(?:crack|open|loosen|undo|break|unscrew|remove|pull|take|disconnect|slacken|cut|crawl|climb|slide|go|get|drive|limp|plug|cap|tape|block|weld|inflate|blow|fill|hit|tap|jump|bypass|bridge|swap|fit|crank)$/;
/** "i have change the valve": done, in rough English. */
const roughPast = (list: readonly string[], i: number): boolean =>
  /^(?:have|has)$/.test(list[i] ?? '') &&
  /^(?:change|replace|put|fit|take|clean|remove|open|loosen)$/.test(list[i + 1] ?? '');
const verbMood = (words: string): Hazard['mode'] | null => {
  const list = words.split(/[^a-z]+/).filter(Boolean);
  for (const [i, word] of list.entries()) {
    if (noVerb.test(word)) continue;
    if (/^\w{2,}ing$/.test(word)) {
      if (/^(?:kept|keeps|keep|keeping|stop|stopped|start|started)$/.test(list[i - 1] ?? '')) continue;
      if (/^(?:was|were|been)$/.test(list[i - 1] ?? '')) return 'done';
      return 'doing';
    }
    if (/^(?:kept|keeps)$/.test(word)) continue;
    if (doneVerbs.test(word) || (/^\w{3,}ed$/.test(word) && !notPast.test(word))) return 'done';
    if (
      /^(?:i|he|she|we|they)$/.test(word) &&
      !roughPast(list, i + 1) &&
      /^(?:have|has|am|is|are|blow|warm|use|open|go|work|keep|touch|weld|unscrew|loosen|undo|crack|remove|pull|take|hold|push|fill|inflate|pump)$/.test(
        list[i + 1] ?? '',
      )
    )
      return 'doing';
    if (roughPast(list, i)) return 'done';
    if (/^(?:hes|shes|ive|weve|theyve|has|have)$/.test(word) && doneVerbs.test(list[i + 1] ?? '')) return 'done';
    if (/^(?:im|hes|shes|theyre|is|are|has|lies)$/.test(word)) return 'doing';
    // "tape is on the relief"
    if (commands.test(word) && list[i + 1] === 'is') return 'done';
    if (commands.test(word)) return 'intended';
  }
  return null;
};

/** In which mood a danger stands, from what comes before it, what names it and what follows. */
const moodOf = (hazard: Hazard['hazard'], before: string, named: string, after: string): Hazard['mode'] => {
  const around = before + named + after;
  if (asking.test(around)) return 'asked';
  if (hazard === 'over-pressure')
    return /\b(?:gonna|going to|let it|want to|lets)\b/.test(before) ? 'intended' : 'doing';
  if (warning.test(before + named)) return 'warned';
  const clause = before.slice(
    Math.max(before.lastIndexOf(','), before.lastIndexOf(' and '), before.lastIndexOf(' but ')) + 1,
  );
  // "left the jumper on for tonight": done already
  const already = doneVerbs.test(/^\w+/.exec(named)?.[0] ?? '');
  if (intending.test(clause + named) || (soon.test(around) && !already)) return 'intended';
  if (hazard === 'hot parts' || (past.test(around) && /\b(?:was|were|had)\b/.test(around))) return 'done';
  const led = verbMood(before.split(/[,;]/).at(-1) ?? '');
  // "i unscrew": who does it stands before the words that name it
  const who = /\b(?:i|he|she|we|they)(?: am| is| are)? $/.exec(before)?.[0] ?? '';
  const own = verbMood(who.replace(/ (?:am|is|are) $/, ' is ') + named);
  const verb = own === 'intended' && led !== null ? led : (own ?? led);
  if (hazard === 'jack only' || hazard === 'eyes bare' || hazard === 'pump may start')
    return hazard !== 'jack only' && (verb === 'done' || verbMood(before) === 'done') ? 'done' : 'doing';
  if (hazard === 'interlock defeated' && verb === 'doing' && /\bleft\b/.test(around)) return 'done';
  if ((verb === 'intended' || /\bgot\b/.test(before + named)) && /\b(?:now|right now)\b/.test(after)) return 'doing';
  return verb ?? verbMood(after) ?? usual[hazard] ?? 'intended';
};

/** "under" that is no person under the coach, or one under a coach that stands on something that holds. */
const nobodyUnder = (before: string, named: string, after: string): boolean => {
  const rest = named + after;
  const at = rest.search(/\b(?:under|underneath|beneath)\b/);
  const around = before + rest;
  return (
    (named.startsWith('under') && thingsUnder.test(before)) ||
    (at >= 0 && notUnder.test(rest.slice(at))) ||
    putUnder.test(named) ||
    (supported.test(around) &&
      !/\b(?:until|till|unless)\b/.test(around) &&
      !notSupported.test(around) &&
      !asking.test(around))
  );
};

/** How many hazards of one kind a note can hold: enough to be seen. */
const most = 12;

/** Dangers of `low` (smoothed, lower case), whose unit i stands at `at[i]` of the text. */
const hazardsOf = (low: string, at: readonly number[]): Hazard[] => {
  const out: Hazard[] = [];
  const consider = (hazard: Hazard['hazard'], from: number, to: number): void => {
    if (out.length >= most || out.some((h) => h.hazard === hazard)) return;
    // the sentence around it says the mood
    const start = Math.max(...['. ', '? ', '! '].map((end) => low.lastIndexOf(end, from - 1) + 1), from - window, 0);
    const stop = low.slice(to).search(/[.?!\n]/);
    const end = Math.min(stop < 0 ? low.length : to + stop + 1, to + window);
    const before = low.slice(start, from);
    const named = low.slice(from, to);
    if (takenBack[hazard]?.test((before + named + low.slice(to, end)).trimStart())) return;
    if (
      (hazard === 'under unsupported' || hazard === 'link pulled under') &&
      /\b(?:nobody|no one|noone|no body) (?:is )?(?:under|underneath|beneath)\b/.test(before + named)
    )
      return;
    // "didnt go under til it was on stands"
    if (
      hazard === 'under unsupported' &&
      /\b(?:didnt|did not|havent|hasnt) (?:go|get|gone|got|been|crawl|climb)\b[^.;]{0,14}\b(?:under|in)\b/.test(
        before + named,
      )
    )
      return;
    if (hazard === 'under unsupported' && nobodyUnder(before, named, low.slice(to, end))) return;
    out.push({ hazard, mode: moodOf(hazard, before, named, low.slice(to, end)), spans: [[at[from]!, at[to]!]] });
  };
  for (const [hazard, pattern] of hazardPatterns) {
    const m = pattern.exec(low);
    if (m) consider(hazard, m.index, m.index + m[0].length);
  }
  for (const f of [...dangersIn(low), ...togetherIn(low)]) consider(f.hazard, f.from, f.to);
  // one danger, one name: the sharper pattern stands
  const has = (name: Hazard['hazard']): boolean => out.some((h) => h.hazard === name);
  return out.filter((h) => {
    if (h.hazard === 'jack only' && has('under unsupported') && !/\bjack/.test(low)) return false;
    if (h.hazard === 'under unsupported' && ((has('jack only') && /\bjack/.test(low)) || has('link pulled under')))
      return false;
    if (h.hazard === 'jack only' && has('soft ground')) return /\bonly\b|just|\bno stands|without stands/.test(low);
    if (h.hazard === 'open under pressure' && has('brakes opened')) return false;
    if (h.hazard === 'drive disabled' && has('cords driven')) return false;
    if (h.hazard === 'weld near line' && has('heat on line') && !/\bweld/.test(low)) return false;
    if (
      h.hazard === 'heat on line' &&
      has('weld near line') &&
      /\bweld/.test(low) &&
      !/\b(?:ice|frozen|thaw)/.test(low)
    )
      return false;
    return true;
  });
};

/** "can I?", "is that ok?", "thoughts?": nothing but a question about what was said before. */
const onlyAsks =
  /^\s*(?:can (?:i|we|it)|could i|may i|should i|shall i|is (?:it|that|this)?(?: (?:ok|okay|safe|all ?right|fine|bad))?|is ok|ok|thoughts|good idea|what do you (?:think|reckon|say)|any problem|problem|yes or no|right)\s*(?:to do)?\?/i;

/** What was opened, in one sentence, and a gauge read in the next: the usual order of work, unless the deed is yet to come. */
const usualOrder = (h: Hazard): boolean =>
  h.hazard === 'open under pressure' && (h.mode === 'done' || h.mode === 'warned');
/** The deed's own sentence says that the air was let out first. */
const letOutFirst =
  /\b(?:0 ?(?:psi|bar|kpa)|zero|drained|vented|bled|emptied|empty|no (?:air|pressure)|air out|dumped)\b/i;

/** How many places a note is read over a stop at: a note of more is a text. */
const mostStops = 40;

/**
 * Every danger of `text`, with the mood it stands in. A danger is also heard over one stop ("left bag has 50 psi. i will
 * open the fitting now"): two or three sentences in a row are read as one, too.
 */
export const findHazards = (text: string): Hazard[] => {
  const { low, at } = respelled(text.slice(0, 4000));
  const out = hazardsOf(low, at);
  const stops = [...low.matchAll(/(?:(?<![.!?])[.!?]+(?=\s)|\n)\s*(?=\S)/g)].slice(0, mostStops);
  const begins = [0, ...stops.map((s) => s.index + s[0].length), low.length];
  const over = (i: number, sentences: number): void => {
    const from = begins[i]!;
    const last = begins[i + sentences - 1]!;
    const to = begins[i + sentences]!;
    let joined = low.slice(from, to);
    for (const stop of stops.slice(i, i + sentences - 1)) {
      const gap = stop.index - from;
      joined = `${joined.slice(0, gap)},${' '.repeat(stop[0].length - 1)}${joined.slice(gap + stop[0].length)}`;
    }
    const asks = onlyAsks.test(low.slice(last, to));
    for (const h of hazardsOf(joined, at.slice(from, to + 1))) {
      const known = out.findIndex((o) => o.hazard === h.hazard);
      const deed = h.spans[0]![1] <= at[last]! ? low.slice(from, last) : low.slice(last, to);
      if (known < 0 && (usualOrder(h) || letOutFirst.test(deed))) continue;
      if (known < 0) out.push(h);
      else if (asks && h.mode === 'asked') out[known] = h;
    }
  };
  for (const sentences of [2, 3]) for (let i = 0; i + sentences < begins.length; i += 1) over(i, sentences);
  return out;
};
