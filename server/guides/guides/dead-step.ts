/** First and last steps that guides which open the air have in common. */
import type { Step } from '../guide.ts';

/** Makes the coach DEAD; shown again, in place of any later step, while something of it is not answered. */
export const makeDead = (first: string): Step => ({
  words: `${first} Then make the coach DEAD, in this order: wheels chocked, frame on rated stands under parts that do not move, compressor's power cut at breaker or battery; then tank by its drain, both bellows by the panel or from outside, head and discharge line, valve-to-panel line, dryer and all behind a protection valve. Each is proved at zero, by gauge or open vent. Draining the tank empties one of them.`,
  expect:
    'What is so, in one line or several: "on stands, pump power cut, tank drained" and "bellows vented, head vented, air vented, eyes covered"',
  outcomes: [
    { when: 'all proved at zero', means: 'the coach is DEAD, and what is named in this guide may be opened' },
    { when: 'one cannot be proved', means: 'it counts as full: nothing is opened' },
  ],
  caution: 'dead',
  gate: null,
});

/** Air back in after a part has been opened. */
export const airBack = (soap: string): Step => ({
  words: `Tools and hands out, nobody under. With the frame still on its stands, power back on, pump up and soap ${soap} from outside. Only then, by the maker's method, off the stands and to ride height in {panel.auto}.`,
  expect: 'What soap shows: "no bubbles at the fitting", or "bubbles at the fitting"',
  outcomes: [
    { when: 'none, and it holds for half an hour', means: 'tight as far as soap tells; the overnight test proves it' },
    { when: 'bubbles', means: 'DEAD again before anything is tightened' },
  ],
  caution: 'people clear',
  gate: null,
});
