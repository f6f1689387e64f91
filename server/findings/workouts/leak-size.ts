/** How long it lasts, how big the leak is, whether soap will show it and whether it is heard. */
import type { ReadingFact } from '../../../intents/shapes.ts';
import { effectiveArea, holeDiameter, massOfFreeAir, roomTemperature, sharpEdge } from '../../core/air.ts';
import { fitSink, sideLeak } from '../../core/bellows-leak.ts';
import { freeAirOfFall } from '../../core/decay.ts';
import { si } from '../../core/quantity.ts';
import { bellowsPressure } from '../bellows-pressure.ts';
import { type Case, latest, middle, physics, practice } from '../case.ts';
import { atmosphereOf } from '../atmosphere.ts';
import { joinedVolume } from '../tank-volume.ts';
import { sheetUnit, shown, spell } from '../show.ts';
import { tankSide } from '../tank-episode.ts';
import { coolingSink, spanOf, tapePoints, tapeSeries } from '../tape-episode.ts';
import { type Question, amountInput, said, type Workout, type Worked } from './question.ts';
import { standingFalls } from './how-long.ts';

/** A sphere of 1 in, the bubble that service charts speak of, m3. */
const inchBubble = (Math.PI / 6) * 0.0254 ** 3;

/** Free air that a soap film still shows, and that is heard in a quiet shop: estimates of ours, no published source. */
const soapShows = 1e-6 / 60;

const heard = 1e-3 / 60;

type Flow = {
  where: string;
  q: number;
  p: number;
  inputs: Worked['why'] extends infer W ? (W extends { inputs: infer I } ? I : never) : never;
  because: string[];
};

/** Leaks known from what stands, m3/s of free air with the gauge pressure behind each. */
const flows = (c: Case): Flow[] => {
  const { p: atmosphere, input } = atmosphereOf(c);
  const out: Flow[] = [];
  const falls = standingFalls(c).filter((f) => f.key.startsWith('tank fall') && (f.amount?.low ?? 0) > 0);
  const volume = joinedVolume(c, c.standing.state.panel);
  const fall = falls[0];
  if (fall?.amount && volume) {
    // the rate is that of the middle of the fall, so is the pressure behind it
    const read = c.facts.flatMap((f) =>
      f.is === 'reading' && f.what.v === 'pressure' && fall.because.includes(f.id) ? [middle(f.amount.v)] : [],
    );
    const now = latest(c, 'pressure', tankSide);
    out.push({
      where: 'tank',
      q: freeAirOfFall(fall.amount.si, volume.v, atmosphere),
      p: read.length > 1 ? (Math.max(...read) + Math.min(...read)) / 2 : now ? middle(now.amount.v) : 7e5,
      inputs: [{ name: 'fall', text: fall.amount.text, from: fall.because.join(', ') }, ...volume.inputs, input],
      because: fall.because,
    });
  }
  const { area, perSide, leverRatio } = c.sheet.springs ?? {};
  for (const side of ['left', 'right'] as const) {
    const last = latest(c, 'height', (place) => place === `${side} rear`);
    const bellows = bellowsPressure(c, side);
    if (!last || !area || !bellows) continue;
    const series = tapeSeries(c, last);
    if (series.length < 2 || spanOf(series) < 300) continue;
    const fit = fitSink(tapePoints(c, series, coolingSink(c, series)));
    if (fit.rate < 2 * fit.rateSd) continue;
    out.push({
      where: `${side} side`,
      q: sideLeak(fit.rate, leverRatio ?? 1, si(area.si * (perSide ?? 1)), si(bellows.p), atmosphere),
      p: bellows.p,
      inputs: [bellows.input, input],
      because: series.map((f: ReadingFact) => f.id),
    });
  }
  return out;
};

const holeText = (q: number, p: number, c: Case): string => {
  const { p: atmosphere } = atmosphereOf(c);
  const d = holeDiameter(
    effectiveArea(massOfFreeAir(si(q), atmosphere, roomTemperature), si(p + atmosphere), atmosphere, roomTemperature),
    sharpEdge,
  );
  return `${(d * 1000).toPrecision(2)} mm (${(d / 0.0254).toPrecision(2)} in)`;
};

const flowText = (q: number, c: Case): string => {
  const unit = sheetUnit('flow', c.sheet);
  return `${shown(q, unit, q * 0.02).text} (${shown(q, unit === 'cfm' ? 'L/min' : 'cfm', q * 0.02).text})`;
};

/** "3 psi in 5 min": a fall with its time, out of the tank. */
const fromFall = (q: Question): Worked | null => {
  const [fall] = said(q, 'pressure');
  const [time] = said(q, 'duration');
  if (!fall || !time || !(time.si > 0)) return null;
  const volume = joinedVolume(q.c, q.c.standing.state.panel);
  if (!volume)
    return {
      words: 'the volume of the tank is needed for that',
      lines: [],
      wants: { field: 'supply.tank', question: 'What is the volume of the air tank?' },
    };
  const { p: atmosphere, input } = atmosphereOf(q.c);
  const flow = freeAirOfFall(fall.si / time.si, volume.v, atmosphere);
  const at = latest(q.c, 'pressure', tankSide);
  const p = at ? middle(at.amount.v) : 6.9e5;
  return {
    words: `${fall.text} in ${time.text} is ${flowText(flow, q.c)} of free air`,
    lines: [
      `as much as one hole of ${holeText(flow, p, q.c)}, sharp edge, at ${shown(p, q.c.sheet.units.pressure, 3500).text}${at ? '' : ' (assumed)'}`,
    ],
    why: {
      formula: 'q = V dp / (pa t)',
      inputs: [amountInput('fall', fall), amountInput('time', time), ...volume.inputs, input],
      source: physics('isothermal store'),
      notes: [],
    },
  };
};

export const leakSize: Workout = {
  subject: 'size of a leak',
  work: (q) => {
    const soap = /soap|bubble/.test(q.words) && /show|see|find|will|enough/.test(q.words);
    const ear = /\bhear|heard|hiss|audible/.test(q.words);
    const big =
      (/how (?:big|bad|much|large|fast)|\bhole\b/.test(q.words) && /leak|hole|lose|losing/.test(q.words)) ||
      /how (?:many|much) (?:scfm|cfm|lpm|lit(?:re|er)s a minute)/.test(q.words);
    if (!soap && !ear && !big) return null;
    if (big) {
      const straight = fromFall(q);
      if (straight) return straight;
    }
    const known = flows(q.c).toSorted((a, b) => b.q - a.q);
    const [first] = known;
    if (!first)
      return {
        words: 'not known yet: it needs a fall with its time',
        lines: [
          'soap shows far less than a gauge does: about 1 ml a minute (an estimate, no source); a hiss needs about a litre a minute in a quiet shop (an estimate)',
          'read the tank twice, half an hour apart, pump off and settled',
        ],
      };
    const seconds = inchBubble / first.q;
    const soapWords =
      first.q >= soapShows
        ? `soap will show it: a 1 in (25 mm) bubble in ${seconds < 1 ? 'less than a second' : `about ${spell(seconds)}`}, if it is all at one place`
        : 'soap may not show it: less than about 1 ml a minute';
    const earWords = first.q >= heard ? 'you should hear it in a quiet shop' : 'too little to hear';
    return {
      words: soap
        ? soapWords
        : ear
          ? `${earWords}; ${soapWords}`
          : `${first.where}: ${flowText(first.q, q.c)} of free air, one hole of ${holeText(first.q, first.p, q.c)}, sharp edge`,
      lines: [
        ...(soap || ear ? known : known.slice(1)).map(
          (f) => `${f.where}: ${flowText(f.q, q.c)} of free air, one hole of ${holeText(f.q, f.p, q.c)}, sharp edge`,
        ),
        ...(soap ? [earWords] : ear ? [] : [soapWords, earWords]),
        'no bubbles is weak evidence: a leak only past an exhaust seat, a crimp turned away, or one that opens under way shows none',
      ],
      why: {
        formula:
          'time to a bubble = its volume over the free air that leaks; soap from about 1 ml/min, ear from about 1 L/min',
        inputs: first.inputs,
        source: practice(),
        notes: ['what soap shows and ears hear: estimates of ours, no published source'],
      },
    };
  },
};
