/** Freezing, and the atmosphere of a place. */
import { atmosphereAt } from '../../core/air.ts';
import { si } from '../../core/quantity.ts';
import { fromSi, stepFromSi } from '../../core/units.ts';
import { latest, physics } from '../case.ts';
import { atmosphereOf } from '../atmosphere.ts';
import { sheetUnit, typed } from '../show.ts';
import { amountInput, type Question, said, type Workout, type Worked } from './question.ts';

const freezes = (q: Question): Worked | null => {
  if (!/freez|frozen|frost/.test(q.words)) return null;
  const told = said(q, 'temperature')[0];
  const read = latest(q.c, 'temperature', (p) => p === 'ambient' || p === '');
  const t = told?.si ?? read?.amount.v.si;
  if (t === undefined)
    return {
      words: 'how cold will it get?',
      lines: [],
      wants: { field: 'ambient', question: 'How cold will it get tonight?' },
    };
  const text = told?.text ?? typed(read!.amount.v);
  // the day's warmth says nothing of the night
  if (!told && t > 276.15)
    return {
      words: `at ${text} nothing freezes now; how cold will it get tonight?`,
      lines: ['a clear night falls far below the day: drain the tank where it may come near freezing'],
      wants: { field: 'ambient', question: 'How cold will it get tonight?' },
    };
  return {
    words:
      t <= 273.15
        ? `at ${text} water in tank, lines and valves freezes: drain the tank tonight`
        : t <= 276.15
          ? `at ${text} it may freeze in exposed lines: drain the tank tonight`
          : `at ${text} nothing freezes`,
    lines: [
      'air under pressure is saturated unless a dryer works: whatever cools lets water go',
      'no torch, heat gun or fluid on a frozen line: warm the coach indoors',
    ],
    why: {
      formula: "dew point in the tank is the tank's own temperature; water freezes at 0 C (32 F)",
      inputs: [{ name: 'temperature', text, from: told ? 'said in the question' : read!.id }],
      source: physics('dew point under pressure'),
      notes: [],
    },
  };
};

const place = (q: Question): Worked | null => {
  if (!/atmospher|altitude|barometer/.test(q.words)) return null;
  const [h] = said(q, 'length');
  const unit = sheetUnit('pressure', q.c.sheet);
  const p = h ? atmosphereAt(si(h.si)) : atmosphereOf(q.c).p;
  return {
    words: `${stepFromSi(p, unit).toFixed(unit === 'psi' ? 2 : 1)} ${unit} absolute${h ? ` at ${h.text}` : ''} (${fromSi(p, 'inHg').toFixed(2)} inHg)`,
    lines: [
      'a gauge reads above this: absolute = gauge + atmosphere',
      h ? 'weather moves it by 3 %' : `${atmosphereOf(q.c).input.text} (${atmosphereOf(q.c).input.from})`,
    ],
    why: {
      formula: 'p = 101325 (1 - 2.25577e-5 h)^5.2559',
      inputs: [h ? amountInput('altitude', h) : atmosphereOf(q.c).input],
      source: { kind: 'rule', words: 'standard atmosphere, ASHRAE Fundamentals 2017 ch. 1 eq. 3' },
      notes: [],
    },
  };
};

export const weather: Workout = { subject: 'weather', work: (q) => place(q) ?? freezes(q) };
