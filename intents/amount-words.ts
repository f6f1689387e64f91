/** Amounts that words say: about, between, a cup. */
import { type Loose, type Amounting, unitTable, spaceAt, numberItem, wordAmount } from './amount-item.ts';
import type { Token } from './scan.ts';
import { spokenFraction } from './spoken-number.ts';
import type { Span } from './shapes.ts';

const looseWords: readonly (readonly [string, Loose])[] = [
  ['just under', 'just under'],
  ['just below', 'just under'],
  ['jus under', 'just under'],
  ['jst under', 'just under'],
  ['just shy of', 'just under'],
  ['a hair under', 'just under'],
  ['bit under', 'just under'],
  ['nearly', 'just under'],
  ['almost', 'just under'],
  ['past', 'just over'],
  ['just over', 'just over'],
  ['jus over', 'just over'],
  ['bit over', 'just over'],
  ['a touch over', 'just over'],
  ['a hair over', 'just over'],
  ['at least', 'at least'],
  ['more than', 'at least'],
  ['over', 'at least'],
  ['above', 'at least'],
  ['at most', 'at most'],
  ['less than', 'at most'],
  ['under', 'at most'],
  ['below', 'at most'],
  ['no more than', 'at most'],
  ['up to', 'at most'],
  ['about', 'about'],
  ['around', 'about'],
  ['roughly', 'about'],
  ['a little under', 'just under'],
  ['a bit under', 'just under'],
  ['a little over', 'just over'],
  ['a bit over', 'just over'],
  ['approx', 'about'],
  ['approximately', 'about'],
  ['circa', 'about'],
  ['maybe', 'about'],
  ['say', 'about'],
  ['some', 'about'],
  ['bout', 'about'],
  ['abt', 'about'],
  ['like', 'about'],
  ['near', 'about'],
  ['nearly', 'about'],
];

export const firstOf = new Map<string, (readonly [readonly string[], Loose])[]>();
for (const [phrase, loose] of looseWords) {
  const words = phrase.split(' ');
  firstOf.set(words[0]!, [...(firstOf.get(words[0]!) ?? []), [words, loose]]);
}

/** "up to 100" after words of filling is where it got to, not a limit. */
export const climbs = (tokens: readonly Token[], i: number): boolean =>
  tokens
    .slice(Math.max(0, i - 12), i)
    .some((t) =>
      /^(?:from|empty|zero|get|gets|got|went|goes|pump|pumped|pumps|build|built|builds|climb|climbs|come|came|comes|back|run|ran|air|aired|fill|filled|bumped|crank|cranked|turn|turned)$/.test(
        t.low,
      ),
    );

const singular =
  /^(?:mile|cup|cupful|pint|quart|gallon|litre|liter|hour|hr|minute|min|day|week|month|year|inch|turn|ounce|degree|second|sec|pound|volt|amp)$/;

/** "a cup", "an inch and a half", "inch and three quarters", "one turn". */
export const oneOf = (tokens: readonly Token[], i: number, text: string): { item: Amounting; next: number } | null => {
  const t = tokens[i]!;
  const article = t.low === 'a' || t.low === 'an';
  const at = article ? spaceAt(tokens, i + 1) : i;
  const word = tokens[at];
  const unit =
    word?.kind === 'word' && singular.test(word.low)
      ? unitTable.get(word.low === 'cupful' ? 'cup' : word.low)
      : undefined;
  if (!unit || !word || /^(?:time|second)$/.test(word.low)) return null;
  const and = spaceAt(tokens, at + 1);
  const more = tokens[and]?.low === 'and' ? spokenFraction(tokens, spaceAt(tokens, and + 1)) : null;
  if (!article && !more) return null;
  let next = more ? more.next : at + 1;
  const two = /^ or (?:two|so)\b/i.exec(text.slice(tokens[next - 1]!.to, tokens[next - 1]!.to + 8));
  if (two) next += 4;
  const span: Span = [t.from, tokens[next - 1]!.to];
  const item = wordAmount(1 + (more?.value ?? 0), unit, span, text);
  return { item: two ? { ...item, about: 'about' } : more ? { ...item, step: more.step } : item, next };
};

/** "between 90 and 95 psi" at `i`. */
export const rangeBetween = (
  tokens: readonly Token[],
  i: number,
  text: string,
): { item: Amounting; next: number } | null => {
  const low = numberItem(tokens, spaceAt(tokens, i + 1), text);
  const and = low ? spaceAt(tokens, low.next) : i;
  if (!low || low.item.clock !== undefined || low.item.to !== undefined || tokens[and]?.low !== 'and') return null;
  const high = numberItem(tokens, spaceAt(tokens, and + 1), text);
  if (!high || high.item.clock !== undefined || high.item.value <= low.item.value) return null;
  const span: Span = [tokens[i]!.from, high.item.span[1]];
  const unit = low.item.unit ?? high.item.unit;
  return { item: { ...low.item, unit, to: high.item.value, span, text: text.slice(...span) }, next: high.next };
};
