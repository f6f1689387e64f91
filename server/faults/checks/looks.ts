/** What is looked at by lamp, or thawed. Minutes are estimates. */
import { type CheckRow, key } from '../check.ts';

export const lookChecks: readonly CheckRow[] = [
  {
    id: 'bellows look',
    words:
      'From outside with a lamp, at height: look all round both bellows and their stops. Cracks, cords, rub marks, torn at the plate?',
    settles: ['left bellows look', 'right bellows look', 'left bump stop look', 'right bump stop look'],
    setting: 'ride height',
    hands: 6,
    wait: 0,
    gate: 'none',
    keys: [
      key('both fine', 'both bellows ok', ['left bellows look', 'fine'], ['right bellows look', 'fine']),
      key('left cracked', 'left bellows cracked', ['left bellows look', 'aged']),
      key('right cracked', 'right bellows cracked', ['right bellows look', 'aged']),
      key('left cords', 'left bellows cords showing', ['left bellows look', 'cords showing']),
      key('right cords', 'right bellows cords showing', ['right bellows look', 'cords showing']),
    ],
    guide: 'bellows',
  },
  {
    id: 'lines look',
    words: 'Follow the air lines by eye and hand: rub marks, kinks, fittings not seated, heat?',
    settles: ['left line look', 'right line look', 'supply look'],
    setting: 'ride height',
    hands: 8,
    wait: 0,
    gate: 'live',
    keys: [
      key('left rubbed', 'left bellows line chafed', ['left line look', 'chafed']),
      key('right rubbed', 'right bellows line chafed', ['right line look', 'chafed']),
      key('supply rubbed', 'supply line chafed', ['supply look', 'chafed']),
      key('supply kinked', 'supply line kinked', ['supply look', 'kinked']),
    ],
    guide: 'clogged line',
  },
  {
    id: 'warm up',
    words: 'An hour in a warm shop, no flame and no heat gun: is the trouble gone?',
    settles: ['warm up'],
    setting: 'standing',
    hands: 3,
    wait: 60,
    gate: 'none',
    destroys: 'ice',
    keys: [],
    guide: 'drain and moisture',
  },
];
