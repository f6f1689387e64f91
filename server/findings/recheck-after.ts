/** What a work moves, and so what is measured again after it. Common practice, no source. */
import type { Work, WorkFact } from '../../intents/shapes.ts';

export type After = {
  readonly asked: RegExp;
  readonly parts: RegExp;
  readonly works: readonly Work[];
  readonly words: string;
  readonly lines: readonly string[];
};

export const rechecks: readonly After[] = [
  {
    asked: /shim|toe|camber|bracket/,
    parts: /shim|bracket|wheel/,
    works: ['shimmed'],
    words: 'after shims: roll the coach its length, then toe and camber of that wheel again',
    lines: [
      'then the other wheel of that side, the total and thrust of the pair',
      "bracket bolts to the sheet's or manual's torque, before it is measured the last time",
      'heights last: a shim moves the arm',
    ],
  },
  {
    asked: /torsion|adjuster|front height/,
    parts: /torsion bar/,
    works: [],
    words: 'after the torsion bars: both front corners, then the rear heights again',
    lines: ['then the front alignment: toe and camber move with the height'],
  },
  {
    asked: /\barm\b|\blink|height valve|ride height|rear height/,
    parts: /\b(?:arm|link|height valve)$/,
    works: ['levelled'],
    words: "after an arm or a link: wait out the valve's delay, then all four heights",
    lines: [
      'both bellows pressures, then toe and camber of the wheels of that side',
      'neutral once more: no air at the exhaust',
    ],
  },
  {
    asked: /switch|cut.?in|cut.?out/,
    parts: /pressure switch/,
    works: [],
    words: 'after the switch: one whole cycle, cut-in and cut-out both read again',
    lines: ['on a gauge that is trusted; the relief stays as it is'],
  },
  {
    asked: /bellows|\bbags?\b|\bline|fitting|leak|valve/,
    parts: /bellows|line|fitting|seat|check|drain|tank/,
    works: [],
    words:
      'after a repair of the air side: soap that joint at pressure, then the fall of the tank, settled, over half an hour',
    lines: ['heights by tape, and again after a night in AUTO: that proves it'],
  },
];

/** Row of a work that was done, by what was done or where. */
export const recheckOf = (fact: WorkFact): After | undefined =>
  rechecks.find((a) => a.works.includes(fact.what.v) || a.parts.test(fact.where.v));
