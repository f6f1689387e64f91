/** How much room the air has in a state of the panel, water in the tank taken off. */
import { physics } from '../case.ts';
import { shown } from '../show.ts';
import { type Held, joinedVolume } from '../tank-volume.ts';
import { amountInput, type Question, said, type Workout, type Worked } from './question.ts';

/** "with 1 gal of water in it": said in the question. */
export const waterSaid = (q: Question): Held | null => {
  const [volume] = said(q, 'volume');
  return volume && /\bwater\b/.test(q.words) ? { si: volume.si, input: amountInput('water in it', volume) } : null;
};

/** What volume the pump fills as the panel stands, or as it was said to stand. */
const room = (q: Question): Worked | null => {
  if (!/\b(?:air )?(?:volume|room|space)\b|how (?:much|many) (?:air|gallons|litres|liters)\b/.test(q.words))
    return null;
  if (/\bbellows|\bbags?\b|air ?spring/.test(q.words) && !/\bfill|\btank/.test(q.words)) return null;
  const label = q.c.sheet.panel?.fill.toLowerCase();
  const fill =
    /\b(?:in|on|with) fill\b|panel fill/.test(q.words) ||
    (label !== undefined && new RegExp(`\\b${label}\\b`).test(q.words));
  const water = waterSaid(q);
  const volume = joinedVolume(q.c, fill ? 'fill' : q.c.standing.state.panel, water);
  if (!volume)
    return {
      words: 'the volume of the tank is needed for that',
      lines: [],
      wants: { field: 'supply.tank', question: 'What is the volume of the air tank?' },
    };
  const unit = q.c.sheet.units.volume;
  const joined = fill || q.c.standing.state.panel === 'fill';
  return {
    words: `${shown(volume.v, unit, volume.v * 0.005).text} of air room: tank${q.c.sheet.supply?.lines ? ', lines' : ''}${joined ? ' and bellows' : ''}${water ? `, less ${water.input.text} of water` : ''}`,
    lines: [
      ...volume.inputs.map((i) => `${i.name}: ${i.text} (${i.from})`),
      joined
        ? 'panel in fill joins the bellows to the tank'
        : 'bellows stand apart: shut, or behind the inlet checks; panel in fill joins them',
    ],
    why: {
      formula: 'tank - water + lines (+ bellows with the panel in fill)',
      inputs: volume.inputs,
      source: physics('volumes joined in that state'),
      notes: [],
    },
  };
};

export const airRoom: Workout = { subject: 'room for air', work: room };
