/** Reads a note typed at the bench, "bubbles at the bellows port, air on the inlet", into a verdict on the height valve. */
import { parseAmount } from '../core/amount.ts';
import { type AirOn, type Arm, type BenchSet, type BenchVerdict, benchVerdict, type Port } from './bench-verdict.ts';

/** Spellings, first match wins. */
const ports: readonly (readonly [Port, RegExp])[] = [
  ['bellows port', /^(?:bellows|bag|air ?bag|delivery|outlet)(?: port| side)?\b/],
  ['inlet port', /^(?:inlet|intake|supply|tank)(?: port| side)?\b/],
  ['exhaust port', /^(?:exhaust|exh|vent|dump)(?: port| hole)?\b/],
  ['cover', /^(?:cover|gasket|lid|body joint)\b/],
];
const portAt = (text: string): Port | null => ports.find(([, form]) => form.test(text))?.[0] ?? null;

const seen = /\bbubbl\w+ (?:(?:come|coming|comes) )?(?:at|from|out of|out|on|in)? ?(?:the )?(?<port>[a-z ]+)/;
const nothing = /\b(?:no bubbles?|bubble free|none|nothing|tight|dry)\b/;
const fed = /\bair (?:is )?(?:on|in|into|to|at) (?:to )?(?:the )?(?<port>[a-z ]+)/;
const arms: readonly (readonly [Arm, RegExp])[] = [
  ['neutral', /\b(?:neutral|pinned|centred|centered|level)\b/],
  ['fill', /\barm (?:is |just )?(?:in )?(?:fill|up|raised)\b|\bin fill\b/],
  ['exhaust', /\barm (?:is )?(?:in )?(?:exhaust|dump|down|lowered)\b|\bin exhaust\b/],
];

export type BenchRead = BenchVerdict & {
  readonly port: Port;
  readonly airOn: AirOn;
  readonly arm: Arm;
  /** Said back: what was taken from the step, not from the note. */
  readonly assumed: readonly string[];
};

/**
 * The verdict of a bench note; null when it says nothing of bubbles, or not where the air is on and `set` does not
 * either. A pressure that is not said counts as said neither high nor low.
 */
export const benchOf = (note: string, set: BenchSet | null = null): BenchRead | null => {
  const text = note
    .toLowerCase()
    .replace(/[^a-z0-9. ]+/g, ' ')
    .replace(/\s+/g, ' ');
  const none = nothing.test(text);
  const at = none ? null : seen.exec(text)?.groups?.['port'];
  const port = none ? 'none' : at === undefined || at === null ? null : portAt(at);
  const on = fed.exec(text)?.groups?.['port'];
  const onPort = on === undefined ? null : portAt(on);
  const airOn = onPort === 'inlet port' ? 'inlet' : onPort === 'bellows port' ? 'bellows port' : (set?.airOn ?? null);
  if (port === null || airOn === null) return null;
  const armSaid = arms.find(([, form]) => form.test(text))?.[0];
  const arm = armSaid ?? set?.arm ?? 'neutral';
  const amount = /\d+(?:\.\d+)? ?(?:psi|kpa|bar)\b/.exec(text)?.[0];
  const said = amount === undefined ? null : parseAmount(amount.replace('kpa', 'kPa'), 'pressure');
  const verdict = benchVerdict(port, airOn, arm, said?.si ?? unsaid);
  return {
    ...verdict,
    port,
    airOn,
    arm,
    assumed: [
      ...(onPort === null ? [`air on the ${airOn}`] : []),
      ...(armSaid === undefined ? [`arm at ${arm}`] : []),
      ...(said === null ? ['pressure not said'] : []),
    ],
  };
};

/** Between the two pressures of the test, so that "no bubbles" asks for both. Pa, gauge. */
const unsaid = 350_000;
