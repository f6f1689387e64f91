import type { Guide } from '../guide.ts';
import { airBack, makeDead } from './dead-step.ts';

export const intakeInternals: Guide = {
  id: 'intake filter',
  title: 'Intake filter and compressor internals: repair or replace',
  topics: [
    'filter',
    'reeds',
    'rings',
    'pump head',
    'filter look',
    'rebuild the pump',
    'rebuild pump',
    'replace the pump',
    'replace the compressor',
    'rebuild the compressor',
    'overhaul the pump',
  ],
  what: 'Whether the pump is starved, worn or done, and whether a kit or another pump pays. Fix the leak that wore it first, or the new one dies of it.',
  tools: ['filter element', 'hand tools', 'straightedge', "maker's kit and manual"],
  gate: 'dead',
  minutes: { hands: 75, wait: 20 },
  steps: [
    makeDead('Let it cool until it can be touched; the filter alone needs only the power cut.'),
    {
      words:
        'Filter out: hold it against a lamp, knock it on a rag. Look at where it draws from: road spray, exhaust, a wasp nest.',
      expect: 'What you see: "intake filter dirty", "intake filter plugged", "intake filter ok"',
      outcomes: [
        { when: 'no light through it', means: 'clean or renew it and time the pump again before the pump is blamed' },
        { when: 'oil in it', means: 'blow-by: rings' },
      ],
      gate: null,
      caution: 'pump may start',
    },
    {
      words:
        "Head off by the maker's manual, in the order it gives, bolts kept by place. Look at reeds and seats for cracks and carbon, at the gasket for a path between the ports.",
      expect: 'What you see: "reeds broken", "reeds cracked", "pump head dirty", "reeds ok"',
      outcomes: [
        { when: 'broken or curled reed', means: 'kit; hunt the pieces, also in the discharge line' },
        { when: 'blown gasket', means: 'kit, and check the head with a straightedge' },
        { when: 'much carbon', means: 'long hot runs; clean discharge line and check valve too' },
      ],
      caution: 'hot parts',
    },
    {
      words: 'Bore and rings: turn it by hand with the power cut. Score you feel with a nail, rings loose, shaft play.',
      expect: 'What you find: "rings worn", "pump seized", "rings ok"',
      outcomes: [
        { when: 'rings worn, bore smooth', means: "kit, if the maker's limits are met" },
        { when: 'scored bore, bearing play, burnt motor', means: 'replace: a kit in a worn bore lasts no season' },
        { when: 'all of it good', means: 'put it back: the fault is elsewhere' },
      ],
      caution: 'pump may start',
    },
    {
      words:
        "Back together with new gaskets and the maker's torque (sheet: torques, or the manual; never from here). Discharge fitting last, no tape inside.",
      expect: 'What was done: "pump rebuilt" or "pump replaced"',
      outcomes: [{ when: 'a new pump goes in', means: 'time it on the first day: the figure to compare with later' }],
    },
    airBack('head, discharge line and unloader'),
  ],
  after: ['Time the pump-up and write it down as new.', 'Ask what wore it: duty, leak, volts, filter.'],
};
