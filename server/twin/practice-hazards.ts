/** What a practice deed would have risked on a real coach, why, and what it costs here. Common practice, no source. */
import type { Action } from './practice-actions.ts';

export type Risk = { hazard: string; why: string; minutes: number };
export type Safety = { chocks: boolean; support: boolean; eyes: boolean; touched: boolean };

const under: Risk = {
  hazard: 'under unsupported',
  why: 'Hands, head or body under the coach or between body and axle with nothing but air to hold it: a bellows or a valve lets go without warning, and with the bellows empty there is no room for a person. Pit, ramp or stands first, wheels chocked. The maker’s manual says where stands may go.',
  minutes: 45,
};

/** `first`: readings as found were not taken yet and this deed ends them. */
export const risksOf = (action: Action, safe: Safety, pressure: number): Risk[] => {
  const risks: Risk[] = [];
  const goesUnder =
    (action.do === 'soap' && action.zone !== 'tank' && action.zone !== 'panel') ||
    action.do === 'hose' ||
    action.do === 'arm' ||
    (action.do === 'read' && (action.with === 'bellows gauge' || action.with === 'supply gauge'));
  if (goesUnder && !safe.support) {
    risks.push(under);
    if (action.do === 'arm' && action.to !== 'linked')
      risks.push({
        hazard: 'link pulled under',
        why: 'Moving an arm by hand moves the coach: pulling a link down drops it on whoever pulls.',
        minutes: 15,
      });
  }
  if (goesUnder && safe.support && !safe.chocks)
    risks.push({
      hazard: 'wheels not chocked',
      why: 'A coach over a pit or on stands is chocked before anyone goes near it: it rolls when heights change.',
      minutes: 10,
    });
  if ((action.do === 'drain' || action.do === 'soap') && !safe.eyes && pressure > 2e5)
    risks.push({
      hazard: 'eyes bare',
      why: 'Air under pressure throws water, rust and soap: eyes are covered before a cock is opened or a face goes near a leak.',
      minutes: 5,
    });
  return risks;
};

/** Deeds that end what could be found: said once, before the readings are gone. */
export const endsAsFound = (action: Action): boolean =>
  action.do === 'key' ||
  action.do === 'engine' ||
  action.do === 'panel' ||
  action.do === 'arm' ||
  action.do === 'drain' ||
  action.do === 'pump up' ||
  action.do === 'drive' ||
  action.do === 'outlet';
