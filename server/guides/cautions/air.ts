/** Cautions for air that can get out, burst something or blind someone. */
import type { HazardName } from '../../../intents/shapes.ts';
import type { Caution } from '../cautions.ts';
import { airVented, peopleClear, powerCut, waitsFor } from './gate.ts';

export const airCautions: readonly (Caution & { id: HazardName })[] = [
  {
    id: 'open under pressure',
    words: 'Stop. Never open a fitting to see whether there is air: is every store at zero?',
    more: "Hands off it. Frame on rated stands first, then power cut, then tank, both bellows, head and discharge line, valve-to-panel line, dryer and all behind a protection valve, each proved at zero by a gauge or an open vent. Draining the tank empties only the tank. The maker's manual says how.",
    gate: airVented,
  },
  {
    id: 'over-pressure',
    words: "Stop. Cut the compressor's power at breaker or battery now, not by the key: is it cut?",
    more: "A welded relay ignores the key. Cut it first, stand clear of the relief valve and the tank, let the pressure come down by itself or from the drain at arm's length, and look for the reason after. The relief is left alone. Do not run it again before switch, relay and gauge are proved, by the maker's manual.",
    gate: powerCut,
  },
  {
    id: 'relief defeated',
    words: 'Stop. The relief valve is all that stands between pump and a burst tank: is the power cut?',
    more: "Never plugged, capped, taped, held or raised. Leave the pump dead until the right relief, at the sheet's or the maker's setting, is back and free. One that blows early is replaced, with the tank at zero.",
    gate: powerCut,
  },
  {
    id: 'bellows unrestrained',
    words: 'Stop. A bellows off the coach is never inflated loose: is everybody clear of it?',
    more: "Nothing holds its ends together, and it flies. Shut the air off and let it empty before anyone goes near. Testing is done in place, or in a cage by the maker's method and pressure; a pressure for folding it comes from the sheet or the maker, never from here.",
    gate: peopleClear,
  },
  {
    id: 'shop air unregulated',
    words: 'Stop. Shop air goes in through a regulator only: is it shut off and everybody clear?',
    more: "Workshop pressure can be above what tank, valves and bellows bear. Shut it, fit a regulator with a gauge that works, begin at zero and keep below the sheet's or the maker's pressure.",
    gate: peopleClear,
  },
  {
    id: 'air at person',
    words: 'Stop. Air never goes at skin or clothes: is the jet away from everybody?',
    more: 'It drives dirt into eyes and air through skin, which needs a doctor even when it looks like a pinprick. Blow-off only with a nozzle that stays under 30 psi when its end is blocked, chips shielded, eyes covered (US workshops: 29 CFR 1910.242(b)). A leak is found with soap, not with a finger.',
    gate: peopleClear,
  },
  {
    id: 'eyes bare',
    words: 'Stop. Eyes covered first: are they?',
    more: 'Glasses or a shield for everyone near, for any work on air or battery. Something in the eye: rinse with clean water, do not rub, see a doctor.',
    gate: waitsFor('eyes covered', 'eyes covered', 'eyes not covered'),
  },
  {
    id: 'weld near line',
    words: 'Stop. Sparks make pinholes in nylon and burst what is full: is all the air out?',
    more: "No welding, cutting or grinding near lines, bellows or tank. Lines and bellows are taken out of the way or shielded by the maker's method, with the coach DEAD and battery and electronics disconnected as the manual says. A tank is never welded. Local fire rules count.",
    gate: airVented,
  },
  {
    id: 'heat on line',
    words: 'Stop. No flame, heat gun or fluid on a frozen line: is everybody clear of it?',
    more: "Nylon softens and bursts, vapours burn, and fluids swell the valve's rubber. Bring the coach somewhere warm and let the whole of it thaw, then drain the water and find where it came from. Only what the maker's manual allows goes into the air.",
    gate: peopleClear,
  },
];
