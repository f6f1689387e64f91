/** Volts lost between two points of the circuit: "drop from battery to motor 1.3", "lost .4 from switch out to motor". */
import { dimension, type Amounting } from './amount-item.ts';
import { changeOf } from './changes.ts';
import { voltParts } from './dims.ts';
import { push } from './push.ts';
import type { PlaceItem } from './settled.ts';
import type { Part } from './shapes.ts';
import { amountOf, phraseOf, said, use, type Clause, type Loc, type Walk } from './walk.ts';

/** More than a circuit of the pump can lose in one leg, volts. */
const most = 8;

const groundEnd = /\b(?:neg|negative|minus|battery ground|ground post|earth post)\b/i;
const caseEnd = /\b(?:case|casing|body|housing|frame|chassis|bracket|mount|ground stud|earth stud)\b/i;

/** "0.9 volts between batt neg and pump case": the way back, whatever parts are named. */
const groundSide = (w: Walk, c: Clause): boolean => {
  const text = /^(?:[^.;\n]|\.(?=\d)){0,90}/.exec(w.text.slice(c.items[0]!.span[0]))?.[0] ?? '';
  return /\b(?:between|from|across)\b/i.test(text.slice(0, 40)) && groundEnd.test(text) && caseEnd.test(text);
};

/** The leg between two points: across a part where both are its terminals, else the wire between. */
const legOf = (ends: readonly PlaceItem[]): Part => {
  const parts = ends.map((e) => e.p.part ?? '');
  if (parts.includes('ground')) return 'ground';
  if (parts.every((p) => /switch (?:input|output)|pressure switch/.test(p))) return 'pressure switch';
  if (parts.every((p) => p.startsWith('relay'))) return 'relay';
  return 'feed cable';
};

/** From one point to another, and nowhere else. */
const betweenTwo = (c: Clause, ends: readonly PlaceItem[]): boolean =>
  ends.length === 2 &&
  c.places.length === 2 &&
  // from battery to motor it is the whole way, and no leg
  !['battery', 'motor'].every((part) => ends.some((e) => e.p.part === part)) &&
  c.items.some((it) => /^(?:from|between|to)$/.test(phraseOf(it)));

/** Reads such a clause; false when it is none. */
export const readLegDrop = (w: Walk, c: Clause): boolean => {
  const numbers = c.items.filter((it): it is Amounting => it.k === 'num');
  const [n] = numbers;
  if (numbers.length !== 1 || !n || (n.unit !== null && dimension(n) !== 'voltage') || !(n.value < most)) return false;
  const ends = c.places
    .map((i) => c.items[i] as PlaceItem)
    .filter((it) => voltParts.has(it.p.part ?? '') || it.p.part === 'pressure switch');
  const word = c.items.find(
    (it) => changeOf(it) === 'fall' || /^(?:drop|drops|lost|loss|losing|loses|voltage drop)$/.test(phraseOf(it)),
  );
  const back = (n.unit !== null || word !== undefined) && groundSide(w, c);
  if (!back && !(word && betweenTwo(c, ends))) return false;
  const loc: Loc = { p: { part: back ? 'ground' : legOf(ends) }, from: 'assumed', spans: ends.map((e) => e.span) };
  push(
    w,
    { is: 'reading', what: said('voltage drop', word ?? n), amount: said(amountOf(n, n.unit ?? 'V', true), n) },
    loc,
    n,
  );
  use(w, word, ...ends, ...(back ? c.items.filter((it) => it.k === 'place' || it.k === 'unknown') : []));
  w.subject = loc;
  return true;
};
