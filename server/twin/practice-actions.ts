/** What a learner can do at a practice coach, and how a read note is turned into it. */
import { takePlace } from '../../intents/place.ts';
import type { Fact, Reading } from '../../intents/shapes.ts';
import type { Side } from './params.ts';
import type { PanelPosition } from './controls.ts';
import { clausesOf, wishOf } from './practice-words.ts';

export type SoapZone = 'tank' | 'supply' | 'valve' | 'valve to panel' | 'delivery' | 'panel' | 'bellows';
export type Instrument =
  | 'tank gauge'
  | 'second gauge'
  | 'bellows gauge'
  | 'supply gauge'
  | 'rear height'
  | 'front height'
  | 'motor volts'
  | 'battery volts'
  | 'motor current';

export type Action =
  | { do: 'wait'; seconds: number }
  | { do: 'key'; on: boolean }
  | { do: 'engine'; on: boolean }
  | { do: 'panel'; position: PanelPosition; side?: Side }
  /** Link off and the arm held there; 'linked' puts it back. */
  | { do: 'arm'; to: 'linked' | 'neutral' | 'fill' | 'exhaust'; side?: Side }
  | { do: 'outlet'; closed: boolean }
  | { do: 'drain' }
  /** Key and engine on until the pump stops by itself, at most 20 minutes. */
  | { do: 'pump up' }
  | { do: 'drive' }
  | { do: 'look' }
  | { do: 'listen' }
  | { do: 'hose'; side: Side }
  | { do: 'soap'; zone: SoapZone; side?: Side }
  | { do: 'read'; with: Instrument; side?: Side }
  | { do: 'make safe'; how: 'chocks' | 'support' | 'eyes' };

/** s; an overnight test, and settling, where no time was said. */
const night = 10 * 3600;
const settling = 900;

const sidesOf = (place: string): (Side | undefined)[] => {
  const side = takePlace(place)?.side;
  return side === 'left' || side === 'right' ? [side] : side === 'both' ? ['left', 'right'] : [undefined];
};
const withSide = <A extends Action>(action: A, side: Side | undefined): A => (side ? { ...action, side } : action);

const zones: Readonly<Record<string, SoapZone>> = {
  tank: 'tank',
  drain: 'tank',
  relief: 'tank',
  gauge: 'tank',
  'pressure switch': 'tank',
  'supply line': 'supply',
  'protection valve': 'supply',
  'height valve': 'valve',
  'valve cover': 'valve',
  'valve to panel line': 'valve to panel',
  panel: 'panel',
  'panel port': 'panel',
  'bellows line': 'delivery',
  bellows: 'bellows',
  'bellows crimp': 'bellows',
  'bellows fold': 'bellows',
  'bead plate': 'bellows',
  piston: 'bellows',
};

/** What to read for a place that was named, or null: no instrument for it. */
const reads = (place: string, measure?: string): Action[] | null => {
  const taken = takePlace(place);
  if (!taken) return null;
  const each = (instrument: Instrument): Action[] =>
    (sidesOf(place)[0] === undefined ? (['left', 'right'] as const) : sidesOf(place)).map((side) =>
      withSide({ do: 'read', with: instrument }, side),
    );
  switch (taken.part) {
    case 'tank':
    case 'gauge':
      return [{ do: 'read', with: 'tank gauge' }];
    case 'test port':
      return [{ do: 'read', with: 'second gauge' }];
    case 'bellows':
      return measure === 'height' ? each('rear height') : each('bellows gauge');
    case 'height valve':
    case 'supply line':
      return [{ do: 'read', with: 'supply gauge' }];
    case 'motor':
    case 'pump':
      return measure === 'current'
        ? [{ do: 'read', with: 'motor current' }]
        : measure === 'voltage'
          ? [{ do: 'read', with: 'motor volts' }]
          : taken.part === 'motor'
            ? [{ do: 'read', with: 'motor volts' }]
            : [{ do: 'listen' }];
    case 'battery':
      return [{ do: 'read', with: 'battery volts' }];
    case 'exhaust port':
    case 'exhaust seat':
      return (['left', 'right'] as const)
        .filter((side) => taken.side === undefined || taken.side === 'both' || taken.side === side)
        .map((side): Action => ({ do: 'hose', side }));
    case 'panel':
    case 'link':
    case 'arm':
    case 'coach':
      return [{ do: 'look' }];
    case 'unloader':
    case 'intake filter':
      return [{ do: 'listen' }];
    case undefined:
      return taken.end === 'front'
        ? each('front height')
        : taken.end === 'rear' || taken.side
          ? each('rear height')
          : null;
    default:
      return null;
  }
};

const ofCondition = (fact: Fact & { is: 'condition' }): Action[] | null => {
  const sides = sidesOf(fact.where.v);
  const panel = (position: PanelPosition): Action[] =>
    sides.map((side) => withSide({ do: 'panel', position: fact.holds ? position : 'auto' }, side));
  const arm = (to: 'neutral' | 'fill' | 'exhaust'): Action[] =>
    sides.map((side) => withSide({ do: 'arm', to: fact.holds ? to : 'linked' }, side));
  switch (fact.what.v) {
    case 'panel auto':
      return panel('auto');
    case 'panel fill':
      return panel('fill');
    case 'panel empty':
      return panel('empty');
    case 'panel shut':
      return panel('shut');
    case 'arm neutral':
      return arm('neutral');
    case 'arm fill':
      return arm('fill');
    case 'arm exhaust':
      return arm('exhaust');
    case 'link connected':
      return sides.map((side) => withSide({ do: 'arm', to: fact.holds ? 'linked' : 'neutral' }, side));
    case 'key on':
      return [{ do: 'key', on: fact.holds }];
    case 'engine running':
      return [{ do: 'engine', on: fact.holds }];
    case 'pump running':
      return fact.holds ? [{ do: 'pump up' }] : [{ do: 'key', on: false }];
    case 'just pumped':
      return fact.holds ? [{ do: 'pump up' }] : null;
    case 'pump power cut':
      return fact.holds ? [{ do: 'key', on: false }] : null;
    case 'tank outlet closed':
      return [{ do: 'outlet', closed: fact.holds }];
    case 'tank drained':
      return fact.holds ? [{ do: 'drain' }] : null;
    case 'settled':
      return fact.holds ? [{ do: 'wait', seconds: settling }] : null;
    case 'driving':
      return fact.holds ? [{ do: 'drive' }] : null;
    case 'wheels chocked':
      return fact.holds ? [{ do: 'make safe', how: 'chocks' }] : null;
    case 'on stands':
    case 'over pit':
    case 'cribbed':
      return fact.holds ? [{ do: 'make safe', how: 'support' }] : null;
    case 'eyes covered':
      return fact.holds ? [{ do: 'make safe', how: 'eyes' }] : null;
    default:
      return null;
  }
};

const ofWork = (fact: Fact & { is: 'work' }): Action[] | null => {
  const place = fact.where.v;
  const part = takePlace(place)?.part;
  const sides = sidesOf(place);
  switch (fact.what.v) {
    case 'soaped': {
      const zone = zones[part ?? ''];
      if (!zone) return null;
      const sided = zone !== 'tank' && zone !== 'supply' && zone !== 'panel';
      return (sided && sides[0] === undefined ? (['left', 'right'] as const) : sides).map((side) =>
        withSide({ do: 'soap', zone }, sided ? side : undefined),
      );
    }
    case 'drained':
      return [{ do: 'drain' }];
    case 'vented':
      return part === 'bellows'
        ? sides.map((side) => withSide({ do: 'panel', position: 'empty' }, side))
        : [{ do: 'drain' }];
    case 'checked':
      return reads(place);
    case 'pumped up':
    case 'inflated':
      return [{ do: 'pump up' }];
    case 'levelled':
    case 'road tested':
      return [{ do: 'drive' }];
    case 'overnight tested':
      return [{ do: 'wait', seconds: night }];
    case 'disconnected':
      return part === 'link' || part === 'arm'
        ? sides.map((side) => withSide({ do: 'arm', to: 'neutral' }, side))
        : null;
    case 'connected':
      return part === 'link' || part === 'arm'
        ? sides.map((side) => withSide({ do: 'arm', to: 'linked' }, side))
        : null;
    case 'closed':
    case 'opened':
      return part === 'tank' || part === 'supply line' ? [{ do: 'outlet', closed: fact.what.v === 'closed' }] : null;
    default:
      return null;
  }
};

const waits = ['settling time', 'standing time', 'run time', 'off time', 'on time'] as const;

const ofReading = (fact: Fact & { is: 'reading' }): Action[] | null => {
  const measure = fact.what.v;
  if ((waits as readonly string[]).includes(measure)) return [{ do: 'wait', seconds: fact.amount.v.si }];
  if (measure === 'pump-up' || measure === 'cut-out' || measure === 'cut-in') return [{ do: 'pump up' }];
  const over = fact.over?.v.si;
  const read = reads(fact.where.v, measure);
  return read && over !== undefined ? [...read, { do: 'wait', seconds: over }, ...read] : read;
};

const ofFact = (fact: Fact): Action[] | null => {
  switch (fact.is) {
    case 'condition':
      return ofCondition(fact);
    case 'work':
      return fact.done ? ofWork(fact) : null;
    case 'reading':
      return ofReading(fact);
    case 'sign':
      return fact.what.v === 'hiss' ? [{ do: 'listen' }] : null;
    case 'spec':
      return null;
    default:
      return fact satisfies never;
  }
};

const startOf = (fact: Fact): number => {
  const spans =
    fact.is === 'spec' ? fact.what.spans : [...fact.what.spans, ...fact.where.spans, ...(fact.when?.spans ?? [])];
  return Math.min(Number.MAX_SAFE_INTEGER, ...spans.map(([from]) => from));
};

/**
 * What a note asks to be done at the practice coach, in the order of its words; null when it asks for nothing that can be
 * done there. Clauses that state a fact ("panel shut") go by the reader, the rest ("wait 30 min") by practice-words.ts.
 */
export const actionOf = (reading: Reading, text: string): Action[] | null => {
  const actions: Action[] = [];
  const clauses = clausesOf(text);
  const placed = reading.facts.map((fact) => ({ fact, at: startOf(fact) })).toSorted((a, b) => a.at - b.at);
  const inquired = reading.asks.flatMap((ask) => ask.facts.map((fact) => ({ fact, at: startOf(fact) })));
  for (const clause of clauses) {
    const here = [...placed, ...inquired].filter(({ at }) => at >= clause.from && at < clause.to);
    const done = here.flatMap(({ fact }) => {
      const after = fact.when?.after;
      const own = ofFact(fact) ?? [];
      return after !== undefined && after > 0 && own.length > 0
        ? [{ do: 'wait' as const, seconds: after }, ...own]
        : own;
    });
    actions.push(...(done.length > 0 ? done : (wishOf(clause.words) ?? [])));
  }
  if (actions.length === 0)
    for (const ask of reading.asks) if (ask.about !== undefined) actions.push(...(reads(ask.about) ?? []));
  return actions.length > 0 ? actions : null;
};
