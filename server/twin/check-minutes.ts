/**
 * What a check costs: minutes with hands on, and minutes of waiting after or between. Estimates, common practice, no
 * published source. Sided checks without their side.
 */
export type Minutes = { readonly hands: number; readonly wait: number };

const m = (hands: number, wait = 0): Minutes => ({ hands, wait });

export const checkMinutes: Readonly<Record<string, Minutes>> = {
  'tank fall auto': m(3, 45),
  'tank fall shut': m(3, 45),
  'tank fall outlet closed': m(10, 40),
  'fall stops': m(5, 600),
  'height auto': m(3, 45),
  'height shut': m(3, 45),
  overnight: m(5, 600),
  driving: m(5, 20),
  'pump cycles auto': m(2, 60),
  'pump cycles shut': m(3, 60),
  exhaust: m(5, 20),
  'exhaust tank zero': m(8, 5),
  'inlet check': m(5, 15),
  'valve fills': m(8, 2),
  'valve dumps': m(8, 2),
  'soap tank': m(5),
  'soap supply': m(6),
  'soap valve': m(5),
  'soap valve to panel': m(5),
  'soap delivery': m(6),
  'soap panel': m(4),
  'soap bellows': m(10),
  'hiss after stop': m(1, 5),
  'as found': m(2),
  'tank as found': m(1),
  'rises first': m(3, 10),
  'pump-up': m(2, 8),
  'pump-up shut': m(4, 8),
  'cut-in': m(3, 2),
  'cut-out': m(2, 8),
  'pump called': m(2),
  'pump restart': m(4, 1),
  'pump past cut-out': m(1, 8),
  'pump duty': m(2, 60),
  'quits hot': m(2, 20),
  'motor volts': m(6),
  'battery volts': m(2),
  'motor current': m(4),
  'second gauge': m(3),
  'bellows pressures': m(10),
  'rear height': m(3),
  'front height': m(3),
  'tank water': m(3),
  'regulated supply': m(10, 1),
};

/** Of a check by its full name ("left height shut"). */
export const minutesOf = (see: string): Minutes => checkMinutes[see.replace(/^(?:left|right) /, '')] ?? m(5);
