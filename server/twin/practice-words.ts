/**
 * A learner's wishes in plain words. The reader takes facts; "wait 30 min", "tank and left height" are none, they are
 * asked of the practice coach. One clause at a time; small on purpose, since whatever states a fact goes through the reader.
 */
import type { Side } from './params.ts';
import type { Action, Instrument, SoapZone } from './practice-actions.ts';

/** Clauses with where they stand in the text: cut at commas, semicolons, full stops, "and", "then", "+". */
export const clausesOf = (text: string): { words: string; from: number; to: number }[] => {
  const clauses: { words: string; from: number; to: number }[] = [];
  let from = 0;
  const push = (to: number, next: number): void => {
    if (text.slice(from, to).trim() !== '') clauses.push({ words: text.slice(from, to).toLowerCase(), from, to });
    from = next;
  };
  for (const cut of text.matchAll(/\s*[,;+\n]\s*|\.(?=\s|$)|\s+(?:and then|and|then|&)\s+/gi))
    push(cut.index, cut.index + cut[0].length);
  push(text.length, text.length);
  return clauses;
};

const sideIn = (words: string): Side | undefined =>
  /\b(?:left|lh|l\/h|lr|lf)\b/.test(words) ? 'left' : /\b(?:right|rh|r\/h|rr|rf)\b/.test(words) ? 'right' : undefined;

/** s, from "30 min", "half an hour", "2 h"; null where no time is said. */
const secondsIn = (words: string): number | null => {
  const m = /(\d+(?:\.\d+)?|\bhalf an|\ban|\ba)\s*(s|secs?|seconds?|m|mins?|minutes?|h|hrs?|hours?)\b/.exec(words);
  if (!m) return null;
  const count = m[1] === 'half an' ? 0.5 : m[1] === 'an' || m[1] === 'a' ? 1 : Number(m[1]);
  const unit = m[2]!.startsWith('s') ? 1 : m[2]!.startsWith('m') ? 60 : 3600;
  return count * unit;
};

const one = (action: Action): Action[] => [action];
type Sideable = Extract<Action, { do: 'soap' | 'panel' | 'arm' | 'read' }>;
const sided = (action: Sideable, side: Side | undefined): Action[] => [side ? { ...action, side } : action];
const bothEnds = (): Action[] => [
  { do: 'read', with: 'rear height' },
  { do: 'read', with: 'front height' },
];

const zones: readonly (readonly [RegExp, SoapZone])[] = [
  [/crimp|fold|bellows|bellow|\bbags?\b|air spring|piston|bead/, 'bellows'],
  [/valve to panel|valve line/, 'valve to panel'],
  [/supply/, 'supply'],
  [/panel/, 'panel'],
  [/delivery|bag line|bellows line|line/, 'delivery'],
  [/valve|cover/, 'valve'],
  [/tank|drain|relief|gauge|switch/, 'tank'],
];

const instruments: readonly (readonly [RegExp, Instrument])[] = [
  [/second gauge|other gauge|shop gauge|test port|test gauge/, 'second gauge'],
  [/(?:supply|inlet) (?:port|gauge|pressure)/, 'supply gauge'],
  [
    /(?:bellows|\bbag) ?(?:gauge|pressures?)|pressures? (?:in|at) (?:the )?(?:left |right )?(?:bellows|bag)/,
    'bellows gauge',
  ],
  [/\bamps?\b|current/, 'motor current'],
  [/(?:volts?|voltage).*motor|motor.*volt/, 'motor volts'],
  [/battery|\bbatt\b/, 'battery volts'],
];

type Rule = readonly [RegExp, (words: string, side: Side | undefined) => Action[] | null];
const rules: readonly Rule[] = [
  [/\bkey off\b|switch off|turn it off/, () => one({ do: 'key', on: false })],
  [/\bkey on\b|switch on|turn it on/, () => one({ do: 'key', on: true })],
  [/engine (?:off|stopped)|stop the engine/, () => one({ do: 'engine', on: false })],
  [/engine|start it up/, () => one({ do: 'engine', on: true })],
  [/chock/, () => one({ do: 'make safe', how: 'chocks' })],
  [/\bstands\b|\bpit\b|\bcrib|\bramps?\b/, () => one({ do: 'make safe', how: 'support' })],
  [/goggles|glasses|eyes/, () => one({ do: 'make safe', how: 'eyes' })],
  [/overnight|leave it till morning/, () => one({ do: 'wait', seconds: 10 * 3600 })],
  [/settle/, (words) => one({ do: 'wait', seconds: secondsIn(words) ?? 900 })],
  [/drive|road test|round the block/, () => one({ do: 'drive' })],
  [
    /pump (?:it |the tank )?up|run (?:the )?(?:pump|comp)|air it up|build (?:up )?(?:air|pressure)|fill the tank/,
    () => one({ do: 'pump up' }),
  ],
  [
    /\b(?:wait|let it (?:sit|stand)|leave it|give it)\b/,
    (words) => one({ do: 'wait', seconds: secondsIn(words) ?? 900 }),
  ],
  [/(?:close|shut|closed).*outlet|outlet.*(?:closed|shut)/, () => one({ do: 'outlet', closed: true })],
  [/open.*outlet|outlet.*open/, () => one({ do: 'outlet', closed: false })],
  [/\bdrain|bleed (?:the tank|it) (?:down|off)|dump the tank|tank to (?:0|zero)/, () => one({ do: 'drain' })],
  [
    /\bsoap|suds|bubble/,
    (words, side) => {
      const zone = zones.find(([pattern]) => pattern.test(words))?.[1];
      return zone ? sided({ do: 'soap', zone }, side) : null;
    },
  ],
  [
    /hose|exhaust.*water|exhaust port/,
    (_, side) =>
      side
        ? one({ do: 'hose', side })
        : [
            { do: 'hose', side: 'left' },
            { do: 'hose', side: 'right' },
          ],
  ],
  [/\b(?:arm|link)\b.*\bfill|\bfill\b.*\barm/, (_, side) => sided({ do: 'arm', to: 'fill' }, side)],
  [/\b(?:arm|link)\b.*(?:exhaust|dump)/, (_, side) => sided({ do: 'arm', to: 'exhaust' }, side)],
  [/\b(?:arm|link)\b.*(?:neutral|pinned|pin|off\b)/, (_, side) => sided({ do: 'arm', to: 'neutral' }, side)],
  [/\b(?:link|arm)\b.*(?:back on|on\b|connect)/, (_, side) => sided({ do: 'arm', to: 'linked' }, side)],
  [
    /panel.*\b(auto|fill|empty|shut)\b/,
    (words, side) => sided({ do: 'panel', position: /\b(auto|fill|empty|shut)\b/.exec(words)![1] as 'auto' }, side),
  ],
  [/listen|hiss/, () => one({ do: 'listen' })],
  [/\blook\b|walk (?:a)?round|inspect|\blinks?\b|rub marks/, () => one({ do: 'look' })],
  [/four (?:corners|heights)|all (?:the )?heights|four corner/, bothEnds],
  [/front|\b[lr]f\b/, (_, side) => sided({ do: 'read', with: 'front height' }, side)],
  [/heights?\b|rear|\b[lr]r\b|\btape\b/, (_, side) => sided({ do: 'read', with: 'rear height' }, side)],
  [/\btank\b|\bgauge\b|pressure|\bpsi\b/, () => one({ do: 'read', with: 'tank gauge' })],
];

/** What one clause asks to be done; null when it asks for nothing known. */
export const wishOf = (words: string): Action[] | null => {
  const side = sideIn(words);
  if (!/\bsoap|suds/.test(words))
    for (const [pattern, instrument] of instruments)
      if (pattern.test(words))
        return sided({ do: 'read', with: instrument }, instrument === 'bellows gauge' ? side : undefined);
  for (const [pattern, make] of rules) {
    if (!pattern.test(words)) continue;
    const made = make(words, side);
    if (made) return made;
  }
  const seconds = secondsIn(words);
  if (seconds !== null) return one({ do: 'wait', seconds });
  return side && words.trim().split(/\s+/).length === 1 ? sided({ do: 'read', with: 'rear height' }, side) : null;
};
