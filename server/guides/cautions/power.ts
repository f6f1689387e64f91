/** Cautions for what starts, sparks or burns: compressor, fuse, relay, battery. */
import type { HazardName } from '../../../intents/shapes.ts';
import type { Caution } from '../cautions.ts';
import { peopleClear, powerCut, waitsFor } from './gate.ts';

export const powerCautions: readonly (Caution & { id: HazardName })[] = [
  {
    id: 'pump may start',
    words: 'Stop. A pump that rests starts by itself: is its power cut?',
    more: 'Cut at breaker, fuse or battery, not by the key, and tag it, before a hand goes near fan, belt or head. It is switched by pressure, so any leak can start it.',
    gate: powerCut,
  },
  {
    id: 'hot parts',
    words: "Stop. Head and discharge line burn, and may hold pressure: is the pump's power cut so that they can cool?",
    more: 'Leave them until they can be touched, and let the head bleed at its unloader before anything is loosened. A burn: cool water, for a long time, and a doctor if the skin blisters.',
    gate: powerCut,
  },
  {
    id: 'fuse enlarged',
    words: 'Stop. A fuse is never enlarged or bridged: is it out?',
    more: "It guards the cable from burning. The size comes from the sheet or the maker's manual, by the cable. One that blows says something: short, seized pump, or a restart against pressure. Find that.",
    gate: waitsFor('fuse out', 'fuse out', 'fuse in'),
  },
  {
    id: 'relay tapped',
    words: "Stop. What works after a tap is not mended: is the compressor's power cut?",
    more: 'Contacts that stuck once will stick again, and a relay stuck closed pumps past cut-out with nobody near. Renew the switch or relay, and find what burnt it.',
    gate: powerCut,
  },
  {
    id: 'interlock defeated',
    words: 'Stop. With a jumper in, nothing stops the pump: is its power cut?',
    more: "A bridge across switch, relay or thermal cut-out is no test to walk away from. Take it out, keep the power cut until the proper part is back. Where the maker's manual has a test with a jumper, someone stays at the breaker and watches the gauge.",
    gate: powerCut,
  },
  {
    id: 'spark at battery',
    words: 'Stop. A battery gives off gas that explodes: are flame and sparks away and everybody clear?',
    more: "No smoking, grinding or loose tools there. Air the compartment, switch loads and charger off before a clamp is touched, ground lead off first and on last unless the maker's manual says otherwise. Eyes covered. Acid: rinse with much water.",
    gate: peopleClear,
  },
];
