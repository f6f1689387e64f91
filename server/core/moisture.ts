/**
 * Water in air: what the pump draws in, what drops out in the tank, when it freezes. Pressures absolute Pa, K, relative
 * humidity 0 to 1, humidity ratio kg of water a kg of dry air. Ideal mixing, no enhancement factor: 0.5 % at most here.
 */
import { gasConstant } from './air.ts';
import {
  type AbsolutePressure,
  type FreeAirFlow,
  ImpossibleInput,
  type Mass,
  type Temperature,
  si,
} from './quantity.ts';

const freezing = 273.16;
const waterToAir = 0.621945;

/**
 * Saturation pressure over water, or over ice below 0 C, Pa: Hyland and Wexler, ASHRAE Handbook, Fundamentals 2017,
 * ch. 1 eq. 5 and 6. Raises ImpossibleInput outside -100 to 200 C. Below 0 C water's curve is 10 to 22 % above ice's.
 */
export const saturation = (t: Temperature): AbsolutePressure => {
  if (!(t >= 173.15 && t <= 473.15))
    throw new ImpossibleInput('temperature', t, (write) => `it must be from ${write(173.15)} to ${write(473.15)}`);
  const ln =
    t < freezing
      ? -5674.5359 / t +
        6.3925247 -
        9.677843e-3 * t +
        6.2215701e-7 * t ** 2 +
        2.0747825e-9 * t ** 3 -
        9.484024e-13 * t ** 4 +
        4.1635019 * Math.log(t)
      : -5800.2206 / t +
        1.3914993 -
        4.8640239e-2 * t +
        4.1764768e-5 * t ** 2 -
        1.4452093e-8 * t ** 3 +
        6.5459673 * Math.log(t);
  return si(Math.exp(ln));
};

const checkHumidity = (humidity: number): void => {
  if (!(humidity >= 0 && humidity <= 1)) throw new ImpossibleInput('humidity', humidity, 'it must be from 0 to 100 %');
};

/** Humidity ratio of air with vapour pressure `pw` at total pressure `p`. Raises ImpossibleInput where it would boil. */
export const ratioOfVapour = (pw: AbsolutePressure, p: AbsolutePressure): number => {
  if (!(pw >= 0 && pw < p)) throw new ImpossibleInput('vapour pressure', pw, 'it must be below the total pressure');
  return (waterToAir * pw) / (p - pw);
};

export const humidityRatio = (t: Temperature, humidity: number, p: AbsolutePressure): number => {
  checkHumidity(humidity);
  return ratioOfVapour(si(humidity * saturation(t)), p);
};

/**
 * Dry air, kg/s, in `flow` m3/s of moist air at `p`, `t` and `humidity`: (p - pw) V / (R T). Raises ImpossibleInput where
 * the vapour alone would reach the pressure.
 */
export const dryAir = (flow: FreeAirFlow, p: AbsolutePressure, t: Temperature, humidity: number): number => {
  checkHumidity(humidity);
  const pw = humidity * saturation(t);
  if (!(pw < p)) throw new ImpossibleInput('temperature', t, 'air of that humidity cannot be so hot at this pressure');
  return ((p - pw) * flow) / (gasConstant * t);
};

/** Temperature at which vapour of pressure `pw` starts to drop out (as frost below 0 C). Bisection to 1e-6 K. */
export const dewPointOf = (pw: AbsolutePressure): Temperature => {
  let low = 173.15;
  let high = 473.15;
  if (!(pw > saturation(si(low)) && pw < saturation(si(high))))
    throw new ImpossibleInput('vapour pressure', pw, 'its dew point must be between -100 C and 200 C');
  while (high - low > 1e-6) {
    const middle = (low + high) / 2;
    if (saturation(si(middle)) < pw) low = middle;
    else high = middle;
  }
  return si((low + high) / 2);
};

export const dewPoint = (t: Temperature, humidity: number): Temperature => {
  checkHumidity(humidity);
  return dewPointOf(si(humidity * saturation(t)));
};

/**
 * Dew point in a tank at absolute pressure `tank` and temperature `inside`, of air drawn at `outside`, `humidity` and
 * `atmosphere`: the vapour is pressed together with the air until it is saturated; then the dew point is the tank's
 * temperature and the rest is water.
 */
export const dewPointUnderPressure = (
  outside: Temperature,
  humidity: number,
  atmosphere: AbsolutePressure,
  tank: AbsolutePressure,
  inside: Temperature,
): Temperature => {
  checkHumidity(humidity);
  if (!(tank >= atmosphere)) throw new ImpossibleInput('tank pressure', tank, 'it cannot be below the atmosphere');
  const pressed = (humidity * saturation(outside) * tank) / atmosphere;
  return pressed >= saturation(inside) ? inside : dewPointOf(si(pressed));
};

/**
 * Water, kg, that drops out of `air` kg of dry air drawn at `outside` and `humidity` once it stands in the tank at
 * absolute pressure `tank` and temperature `inside`; 0 where the tank can hold it all.
 */
export const waterDropped = (
  air: number,
  outside: Temperature,
  humidity: number,
  atmosphere: AbsolutePressure,
  tank: AbsolutePressure,
  inside: Temperature,
): Mass => {
  if (!(air >= 0)) throw new ImpossibleInput('mass of air', air, 'it cannot be below zero');
  const drawn = humidityRatio(outside, humidity, atmosphere);
  const held = ratioOfVapour(saturation(inside), tank);
  return si(air * Math.max(0, drawn - held));
};
