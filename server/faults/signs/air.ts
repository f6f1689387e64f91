/** Bubbles, hiss and air that goes or does not go, by part. */
import { rule, type SignRule } from './rule.ts';

const bag = ['bellows', 'bellows crimp', 'bellows fold', 'bead plate', 'piston'] as const;
const escape = ['bubbles', 'leaks', 'hiss'] as const;

const soaped = (parts: SignRule['parts'], side: SignRule['side'], see: string): SignRule[] => [
  rule(true, [...escape], parts, side, [[see, 'bubbles']]),
  rule(false, [...escape], parts, side, [[see, 'none']]),
];

export const air: readonly SignRule[] = [
  ...soaped(bag, 'side', 'soap bellows'),
  ...soaped(bag, 'each', 'soap bellows').filter((r) => !r.there),
  rule(
    true,
    ['exhausts', 'bubbles', 'leaks', 'hiss'],
    ['exhaust port', 'exhaust seat', 'height valve'],
    'side',
    [['exhaust tank zero', 'steady']],
    { tankEmpty: true },
  ),
  rule(
    false,
    ['exhausts', 'bubbles', 'leaks', 'hiss'],
    ['exhaust port', 'exhaust seat', 'height valve'],
    'side',
    [['exhaust tank zero', 'none']],
    { tankEmpty: true },
  ),
  rule(true, ['puffs'], ['exhaust port', 'exhaust seat'], 'side', [['exhaust', 'puffs']]),
  rule(true, ['exhausts', 'bubbles', 'leaks'], ['exhaust port', 'exhaust seat'], 'side', [['exhaust', 'steady']]),
  rule(false, ['exhausts', 'bubbles', 'leaks', 'puffs', 'hiss'], ['exhaust port', 'exhaust seat'], 'side', [
    ['exhaust', 'none'],
  ]),
  rule(false, ['exhausts', 'bubbles', 'leaks', 'puffs', 'hiss'], ['exhaust port', 'exhaust seat'], 'each', [
    ['exhaust', 'none'],
  ]),
  rule(true, ['bubbles'], ['height valve', 'valve cover'], 'side', [['soap valve', 'bubbles']]),
  rule(true, ['leaks', 'hiss'], ['valve cover'], 'side', [['soap valve', 'bubbles']]),
  rule(false, ['bubbles', 'leaks'], ['height valve', 'valve cover'], 'side', [['soap valve', 'none']]),
  rule(false, ['bubbles', 'leaks'], ['height valve', 'valve cover'], 'each', [['soap valve', 'none']]),
  rule(
    true,
    ['hiss', 'exhausts', 'leaks', 'puffs'],
    ['height valve', 'exhaust port'],
    'side',
    [['valve heard', 'once']],
    {
      briefly: true,
    },
  ),
  rule(true, ['puffs'], ['height valve'], 'side', [['valve heard', 'puffs']]),
  rule(true, ['hiss', 'exhausts', 'leaks'], ['height valve', 'exhaust port'], 'side', [['valve heard', 'steady']]),
  rule(false, ['hiss', 'exhausts', 'puffs'], ['height valve'], 'side', [['valve heard', 'not remarked']]),
  ...soaped(['valve to panel line'], 'side', 'soap valve to panel'),
  ...soaped(['bellows line', 'line', 'fitting'], 'side', 'soap delivery'),
  ...soaped(['panel', 'panel port'], 'none', 'soap panel'),
  rule(true, [...escape], ['tank', 'test port', 'fitting'], 'none', [['tank bubbles at', 'a fitting']]),
  rule(true, [...escape], ['drain'], 'none', [['tank bubbles at', 'the drain']]),
  rule(true, ['wet'], ['drain'], 'none', [['tank bubbles at', 'the drain']]),
  rule(true, [...escape], ['pressure switch'], 'none', [['tank bubbles at', 'the switch']]),
  rule(true, [...escape], ['gauge'], 'none', [['tank bubbles at', 'the gauge']]),
  rule(true, [...escape, 'exhausts'], ['relief'], 'none', [
    ['tank bubbles at', 'the relief'],
    ['relief look', 'leaks'],
  ]),
  rule(false, [...escape, 'exhausts'], ['relief'], 'none', [['relief look', 'quiet']]),
  rule(true, ['ok'], ['relief'], 'none', [['relief look', 'quiet']]),
  rule(false, [...escape], ['tank', 'drain', 'test port', 'fitting'], 'none', [['tank bubbles at', 'none']]),
  ...soaped(['gauge line'], 'none', 'soap gauge line'),
  ...soaped(['supply line', 'panel feed', 'line'], 'none', 'soap supply'),
  ...soaped(['supply line'], 'side', 'soap supply').map((r) => ({ ...r, side: 'none' as const })),
  ...soaped(['discharge line', 'pump head'], 'none', 'soap discharge').map((r) => ({
    ...r,
    signs: r.signs.filter((s) => s !== 'hiss'),
  })),
  rule(true, ['bubbles', 'leaks'], ['', 'wheel'], 'side', [['soap side', 'bubbles']]),
  rule(false, ['bubbles', 'leaks'], ['', 'wheel'], 'side', [['soap side', 'none']]),
  rule(false, ['bubbles', 'leaks'], ['', 'coach'], 'each', [['soap side', 'none']]),
  ...(['side', 'each'] as const).flatMap((side) => [
    rule(true, ['fills', 'rises'], ['', 'coach', 'bellows'], side, [['panel fills', 'yes']], { panelFill: true }),
    rule(true, ['does not fill'], ['', 'coach', 'bellows'], side, [['panel fills', 'no']], { panelFill: true }),
  ]),
  rule(true, ['fills', 'works'], ['', 'height valve', 'bellows'], 'side', [['valve fills', 'yes']]),
  // "Won't come up" with link and arm where they belong is how it rides, not what the valve does by hand.
  rule(true, ['does not fill'], ['', 'bellows'], 'side', [['driving', 'low|far low']], { handsOff: true }),
  rule(true, ['does not fill'], ['', 'height valve', 'bellows'], 'side', [['valve fills', 'no']]),
  // Neither side.
  rule(true, ['does not fill'], ['', 'coach', 'height valve', 'bellows'], 'each', [['valve fills', 'no']]),
  rule(true, ['fills'], ['', 'height valve', 'bellows'], 'each', [['valve fills', 'yes']]),
  rule(true, ['slow build'], ['', 'height valve', 'bellows'], 'side', [['valve fills', 'slow']]),
  rule(true, ['empties'], ['', 'height valve', 'bellows'], 'side', [['valve dumps', 'yes']]),
  rule(true, ['does not empty'], ['', 'height valve', 'bellows'], 'side', [['valve dumps', 'no']]),
  rule(true, ['stuck'], ['height valve', 'arm'], 'side', [
    ['valve fills', 'no'],
    ['valve dumps', 'no'],
  ]),
  rule(true, ['drops', 'sags'], ['tank'], 'none', [['fall after pumping', 'falls']], { justPumped: true }),
  rule(true, ['holds'], ['tank'], 'none', [['tank fall outlet closed', 'none']], { outletClosed: true }),
  rule(true, ['drops', 'leaks'], ['tank'], 'none', [['tank fall outlet closed', 'slow|fast']], { outletClosed: true }),
  rule(true, ['holds'], ['tank'], 'none', [['settle again', 'stands']], { asked: 'settle again' }),
  rule(true, ['holds'], ['tank'], 'none', [['settle again', 'stands']], { fellHot: true }),
  rule(true, ['drops'], ['tank'], 'none', [['settle again', 'still falls']], { asked: 'settle again' }),
  rule(true, ['holds'], ['tank'], 'none', [['tank fall shut', 'none']], { shut: true }),
  rule(true, ['drops'], ['tank'], 'none', [['tank fall shut', 'slow|fast']], { shut: true }),
  rule(true, ['holds'], ['tank'], 'none', [['tank fall auto', 'none']]),
  rule(true, ['drops', 'sags'], ['tank'], 'none', [['tank fall auto', 'slow|fast']]),
];
