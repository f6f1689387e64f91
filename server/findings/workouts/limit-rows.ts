/** Every limit that can be asked for: how it is spoken of, and where the sheet keeps it. */
import type { Measure } from '../../../intents/shapes.ts';
import type { Amount } from '../../core/amount.ts';
import { type Case, type Range, rangeOf, sheetSource } from '../case.ts';
import { heightRange } from '../corner-sheet.ts';
import { switchRange } from '../judges/tank-pressure.ts';
import { type Row, cornerIn } from './limit-row.ts';

const of =
  (
    what: Measure,
    place: string,
    pick: (c: Case) => { low?: Amount | undefined; high?: Amount | undefined } | undefined,
    field: string,
  ) =>
  (c: Case): Range | null =>
    rangeOf(c, what, place, pick(c), field);

const most = (amount: Amount | undefined) => (amount ? { high: amount } : undefined);

const least = (amount: Amount | undefined) => (amount ? { low: amount } : undefined);

const exactly = (amount: Amount | undefined) => (amount ? { low: amount, high: amount } : undefined);

const heightOf = (c: Case, words: string): Range | null => {
  const corner = cornerIn(words) ?? (/\bfronts?\b/.test(words) ? 'leftFront' : 'leftRear');
  return heightRange(c, corner);
};

export const rows: readonly Row[] = [
  {
    asks: /cut.?in|(?:pump|comp\w*) (?:should )?(?:start|come on|kick in)/,
    name: 'cut-in',
    range: (c) => switchRange(c, 'cut-in'),
    field: 'supply.cutIn',
    question: 'At what pressure should the pump start (lowest and highest)?',
  },
  {
    asks: /cut.?out|(?:pump|comp\w*) (?:should )?(?:stop|shut off)/,
    name: 'cut-out',
    range: (c) => switchRange(c, 'cut-out'),
    field: 'supply.cutOut',
    question: 'At what pressure should the pump stop (lowest and highest)?',
  },
  {
    asks: /relief|safety valve|pop.?off/,
    name: 'relief valve',
    range: of('pressure', 'relief', (c) => exactly(c.sheet.supply?.relief), 'supply.relief'),
    field: 'supply.relief',
    question: 'At what pressure does the relief valve open?',
    lines: () => ['a relief valve is never plugged, taped or raised'],
  },
  {
    asks: /tyre|tire/,
    name: 'tyre',
    range: (c, w) =>
      of(
        'pressure',
        /front/.test(w) ? 'front tyre' : 'rear tyre',
        (x) => exactly(/front/.test(w) ? x.sheet.tyres?.front : x.sheet.tyres?.rear),
        /front/.test(w) ? 'tyres.front' : 'tyres.rear',
      )(c),
    field: 'tyres',
    question: 'What cold pressure should the tyres have?',
    lines: (c) =>
      c.sheet.tyres?.at ? [`cold, at ${c.sheet.tyres.at.text}: ask "tyre at 40 F" for another temperature`] : ['cold'],
  },
  {
    asks: /bag|bellows|air ?spring|bladder/,
    name: 'bellows pressure at ride height',
    range: (c, w) =>
      of(
        'pressure',
        /right|\brh?\b/.test(w) ? 'right bellows' : 'left bellows',
        (x) => x.sheet.springs?.pressure?.[/right|\brh?\b/.test(w) ? 'right' : 'left'],
        `springs.pressure.${/right|\brh?\b/.test(w) ? 'right' : 'left'}`,
      )(c),
    field: 'springs.pressure',
    question: 'What pressure do the bellows carry at ride height?',
    lines: () => ['load over area sets it: the valve does not', 'each side has its own range on the sheet'],
  },
  {
    asks: /side.?to.?side|apart|lean/,
    name: 'side to side',
    range: (c) =>
      c.sheet.heights?.sideToSide
        ? { high: c.sheet.heights.sideToSide, source: sheetSource('heights.sideToSide'), because: [] }
        : null,
    field: 'heights.sideToSide',
    question: 'How far apart may left and right be?',
  },
  {
    asks: /height|\b(?:left|right) (?:rear|front)|\b[lr][rf]\b|how high|ride|\b(?:rear|front)s?\b(?!.*(?:toe|camber|wheel))/,
    name: 'height',
    range: heightOf,
    field: 'heights',
    question: 'What should the height be, and with what tolerance?',
    lines: (c) => (c.sheet.heights ? [`measured: ${c.sheet.heights.measured}`] : []),
  },
  {
    asks: /thrust/,
    name: 'thrust of a rear pair',
    range: of('thrust', '', (c) => most(c.sheet.alignment?.thrust), 'alignment.thrust'),
    field: 'alignment.thrust',
    question: 'What thrust angle is allowed?',
  },
  {
    asks: /\btoe/,
    name: 'toe of each rear wheel, in positive',
    range: of('toe', '', (c) => c.sheet.alignment?.toe, 'alignment.toe'),
    field: 'alignment.toe',
    question: 'What toe should each rear wheel have?',
  },
  {
    asks: /camber/,
    name: 'camber of each rear wheel, top out positive',
    range: of('camber', '', (c) => c.sheet.alignment?.camber, 'alignment.camber'),
    field: 'alignment.camber',
    question: 'What camber should each rear wheel have?',
  },
  {
    asks: /\bamp|current|draw/,
    name: 'current of the pump',
    range: of('current', 'motor', (c) => c.sheet.pump?.current, 'pump.current'),
    field: 'pump.current',
    question: 'What current should the pump draw, lowest and highest?',
    lines: (c) => (c.sheet.pump?.fuse ? [`fuse ${c.sheet.pump.fuse.text} (sheet: pump.fuse), never a bigger one`] : []),
  },
  {
    asks: /volt(?:age)? drop|drop (?:allowed|in volts)/,
    name: 'drop from battery to motor',
    range: of('voltage drop', '', (c) => most(c.sheet.electrics?.drop), 'electrics.drop'),
    field: 'electrics.drop',
    question: 'How much may be lost between battery and motor?',
  },
  {
    asks: /volt/,
    name: 'volts at the motor',
    range: of('voltage', 'motor', (c) => least(c.sheet.pump?.minVolts), 'pump.minVolts'),
    field: 'pump.minVolts',
    question: 'What is the least voltage at the motor while it runs?',
  },
  {
    asks: /duty/,
    name: 'duty of the pump',
    range: (c) =>
      c.sheet.pump?.duty ? { high: c.sheet.pump.duty, source: sheetSource('pump.duty'), because: [] } : null,
    field: 'pump.duty',
    question: 'What share of the time may the pump run?',
  },
  {
    asks: /how long (?:can|may|should) (?:it|the (?:pump|comp\w*)) run|run ?time|run limit/,
    name: 'longest run of the pump',
    range: (c) =>
      c.sheet.pump?.runLimit
        ? { high: c.sheet.pump.runLimit, source: sheetSource('pump.runLimit'), because: [] }
        : null,
    field: 'pump.runLimit',
    question: 'How long may the pump run at a stretch?',
    lines: (c) => (c.sheet.pump?.rest ? [`then rest ${c.sheet.pump.rest.text} (sheet: pump.rest)`] : []),
  },
  {
    asks: /delay/,
    name: 'delay of a height valve',
    range: of('delay', '', (c) => c.sheet.valves?.delay, 'valves.delay'),
    field: 'valves.delay',
    question: 'How long should the height valve wait before it acts?',
  },
  {
    asks: /dead ?(?:band|zone)/,
    name: 'dead band of a height valve, either side of neutral',
    range: of('dead band', '', (c) => exactly(c.sheet.valves?.deadBand), 'valves.deadBand'),
    field: 'valves.deadBand',
    question: 'How far may the arm move before the valve acts?',
  },
  {
    asks: /regulat/,
    name: 'regulated supply',
    range: of('pressure', 'regulator', (c) => exactly(c.sheet.supply?.regulator), 'supply.regulator'),
    field: 'supply.regulator',
    question: 'What pressure should reach the height valves?',
  },
];
