/** Water that drops out in the tank: from the air drawn in, its temperature and humidity, and the tank's pressure. */
import { type FreeAirFlow, si } from '../core/quantity.ts';
import { dryAir, waterDropped } from '../core/moisture.ts';
import { deliveryAt } from '../core/pump-up.ts';
import { type Case, type Input, latest, middle, readings } from './case.ts';
import { atmosphereOf } from './atmosphere.ts';
import { curveOf } from './expected-pump-up.ts';
import { switchRange } from './judges/tank-pressure.ts';
import { sheetUnit, shown, typed } from './show.ts';

/** kg/m3 */
const density = 998;

export type Weather = { readonly t: number; readonly humidity: number; readonly inputs: Input[] };

/** Temperature and humidity as last read; null names what is missing. */
export const weatherOf = (c: Case): Weather | { readonly missing: string } => {
  const h = latest(c, 'humidity');
  const air = readings(c, 'temperature', (p) => p === 'ambient' || p === '');
  // the temperature said with the humidity: one said since may be tonight's
  const note = h?.id.replace(/\.\d+$/, '');
  const t = air.findLast((f) => f.id.replace(/\.\d+$/, '') === note) ?? air.at(-1);
  if (!t) return { missing: 'How warm was the air the pump drew in (temperature)?' };
  if (!h) return { missing: 'How humid was the air (relative humidity, %)?' };
  return {
    t: t.amount.v.si,
    humidity: middle(h.amount.v),
    inputs: [
      { name: 'temperature', text: typed(t.amount.v), from: t.id },
      { name: 'humidity', text: typed(h.amount.v), from: h.id },
    ],
  };
};

export type Made = {
  /** m3 of water a second of pumping. */ readonly perSecond: number;
  readonly flow: FreeAirFlow;
  readonly at: number;
  readonly inputs: Input[];
};

/** Water for each second the pump runs, with the tank halfway between cut-in and cut-out; null without a delivery curve. */
export const waterPerSecond = (c: Case, weather: Weather): Made | null => {
  const curve = curveOf(c);
  if (!curve) return null;
  const [a, b] = [switchRange(c, 'cut-in'), switchRange(c, 'cut-out')];
  const at = a?.low && b?.high ? (a.low.si + b.high.si) / 2 : curve.at(-1)!.at;
  const { p, input } = atmosphereOf(c);
  const flow = deliveryAt(curve, si(at));
  const air = dryAir(flow, p, si(weather.t), weather.humidity);
  const water = waterDropped(air, si(weather.t), weather.humidity, p, si(at + p), si(weather.t));
  const unit = sheetUnit('flow', c.sheet);
  return {
    perSecond: water / density,
    flow,
    at,
    inputs: [
      ...weather.inputs,
      {
        name: 'delivery',
        text: `${shown(flow, unit, flow * 0.02).text} at ${shown(at, sheetUnit('pressure', c.sheet), 5000).text}`,
        from: 'sheet: pump.delivery',
      },
      input,
    ],
  };
};

/** Water as it is shown: fluid ounces up to a quart, or millilitres up to a litre. */
export const waterText = (volume: number, metric: boolean): string =>
  metric
    ? volume < 0.95e-3
      ? shown(volume, 'ml', Math.max(0.5e-6, volume * 0.04)).text
      : shown(volume, 'L', volume * 0.04).text
    : volume < 0.95e-3
      ? shown(volume, 'fl oz', Math.max(1.5e-6, volume * 0.04)).text
      : shown(volume, 'qt', volume * 0.04).text;
