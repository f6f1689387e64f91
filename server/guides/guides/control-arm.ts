import type { Guide } from '../guide.ts';
import { makeDead } from './dead-step.ts';

export const controlArm: Guide = {
  id: 'control arm',
  title: 'Control arm assembly: overview only',
  topics: [
    'pin',
    'bushing',
    'wheel bearing',
    'pry bushings',
    'rock wheel',
    'axle',
    'free play',
    'swing arm',
    'hub',
    'torque',
    'bolt',
    'control arms',
  ],
  what: "What it takes and what to look for. Arms, hubs and brake lines are outside this guide's word: the maker's manual, its torque figures, and a licensed technician where the law asks for one.",
  tools: ["maker's manual", 'rated stands', 'jack with a cradle', 'torque wrench', 'a helper'],
  gate: 'dead',
  minutes: { hands: 240, wait: 0 },
  steps: [
    {
      words:
        'Is it the arm at all? Frame on rated stands, wheel rocked top to bottom and side to side, pry bar at each bushing, pin and bearing.',
      expect: 'What has play: "left rear wheel bearing loose", "left control arm bushing worn", "control arm ok"',
      outcomes: [
        { when: 'top and bottom, at the hub', means: 'bearing: adjust or renew by the manual, before any alignment' },
        { when: 'at the arm', means: 'bushing or pin' },
        { when: 'none', means: 'not here: toe and camber, tyres, shocks' },
      ],
      gate: null,
      caution: 'under unsupported',
    },
    makeDead(
      "Read the manual's chapter first and have its tools and torque figures there. Mark where every shim sits: side, bolt, thickness.",
    ),
    {
      words:
        'Brake side by the manual and by someone entitled to it. Wheel off, hub carried, bellows, shock and link off their lower ends, the arm held by a cradle so that it cannot swing.',
      expect: 'How far you are: "left bellows disconnected", "left rear shock disconnected"',
      outcomes: [{ when: 'anything is not as the manual shows', means: 'stop there' }],
      caution: 'brakes opened',
    },
    {
      words:
        'Bracket bolts last, shims on a wire in their order. Arm out and down with two people, nobody beneath it. Look at bracket, frame and bolt holes for cracks and wear.',
      expect: 'What you find: "left bracket cracked", "left control arm removed"',
      outcomes: [
        { when: 'crack in bracket or frame', means: "not welded here: the maker's repair, and the law on it" },
      ],
      caution: 'under unsupported',
    },
    {
      words:
        'Back by the manual: shims as they were, new bolts where it says so, all torques from it and never from here, bushings tightened at ride height where it says so.',
      expect: 'What was done: "left control arm replaced", "left control arm refitted"',
      outcomes: [{ when: 'refitted', means: 'rear toe and camber guide, brakes proved by whoever is entitled to' }],
      caution: 'brakes opened',
    },
  ],
  after: [
    'Bearing play, ride height, then toe and camber of both wheels of that side.',
    'Bolts again after the distance the manual gives.',
  ],
};
