/** How the coach stands and moves. The first rule that fits speaks. */
import { rule, type SignRule, type When } from './rule.ts';

const body = ['', 'coach', 'bellows', 'wheel', 'frame', 'axle'] as const;
const down = ['low', 'sags', 'drops', 'flat', 'on stops'] as const;
const still = ['holds', 'level', 'ok'] as const;

/** In a state that is a check of its own, a sign speaks as its outcome. */
const held = (see: string, moved: string, when: When): SignRule[] => [
  rule(true, [...down], body, 'side', [[see, moved]], when),
  rule(false, ['holds'], body, 'side', [[see, moved]], when),
  rule(true, [...still], body, 'side', [[see, 'holds']], when),
  rule(false, [...down], body, 'side', [[see, 'holds']], when),
  rule(true, [...still], body, 'each', [[see, 'holds']], when),
  rule(false, [...down], body, 'each', [[see, 'holds']], when),
];

export const stance: readonly SignRule[] = [
  // "Only" says that it stands as long as there is air in the tank.
  rule(
    true,
    [...down],
    body,
    'side',
    [
      ['tank down', 'sinks'],
      ['overnight', 'holds'],
    ],
    { onlyTankDown: true },
  ),
  // Behind a shut panel the bellows cannot run back, wherever the arm stands.
  ...held('height shut', 'drops', { shut: true }),
  ...held('inlet check', 'sinks', { tankEmpty: true, armFill: true }),
  rule(true, ['rises', 'high'], body, 'side', [['height shut', 'rises']], { shut: true }),
  rule(true, [...down], body, 'none', [['coach shut', 'moves']], { shut: true }),
  rule(true, ['comes up driving'], body, 'side', [
    ['driving', 'level'],
    ['overnight', 'drops|on stops'],
  ]),
  rule(true, ['comes up driving'], body, 'none', [
    ['coach driving', 'level'],
    ['coach overnight', 'goes down'],
  ]),
  rule(true, ['on stops'], body, 'side', [['overnight', 'on stops']], { standing: true }),
  rule(true, ['low', 'drops', 'flat', 'sags'], body, 'side', [['overnight', 'drops|on stops']], { standing: true }),
  rule(true, [...still], body, 'side', [['overnight', 'holds']], { standing: true }),
  rule(false, [...down], body, 'side', [['overnight', 'holds']], { standing: true }),
  rule(true, [...down], body, 'none', [['coach overnight', 'goes down']], { standing: true }),
  rule(true, [...still], body, 'each', [['overnight', 'holds']], { standing: true }),
  rule(false, [...down], body, 'each', [['overnight', 'holds']], { standing: true }),
  rule(true, ['flat', 'on stops'], body, 'side', [['driving', 'far low']], { driving: true }),
  rule(true, ['low'], body, 'side', [['driving', 'low|far low']], { driving: true }),
  rule(true, ['high'], body, 'side', [['driving', 'high']], { driving: true }),
  rule(true, [...still], body, 'side', [['driving', 'level']], { driving: true }),
  rule(true, [...still], body, 'each', [['driving', 'level']], { driving: true }),
  rule(true, ['low', 'flat', 'on stops'], body, 'none', [['coach driving', 'not level']], { driving: true }),
  rule(true, ['sags'], body, 'side', [['overnight', 'drops|on stops']]),
  rule(true, ['sags'], body, 'none', [['coach overnight', 'goes down']]),
  rule(true, ['drops'], body, 'side', [['height auto', 'drops']], { auto: true, keyOff: true }),
  rule(true, ['holds'], body, 'side', [['height auto', 'holds']], { auto: true, keyOff: true }),
  rule(true, ['holds'], body, 'each', [['height auto', 'holds']], { auto: true, keyOff: true }),
  rule(true, ['rises'], body, 'side', [['height auto', 'rises']]),
  rule(true, ['drops'], body, 'side', [['overnight', 'drops|on stops']]),
  rule(true, ['on stops'], body, 'side', [['stance', 'on stops']]),
  rule(true, ['flat'], body, 'side', [['stance', 'far low|on stops']]),
  rule(true, ['low'], body, 'side', [['stance', 'low|far low|on stops']]),
  rule(true, ['flat', 'on stops'], body, 'each', [['stance', 'far low|on stops']]),
  rule(true, ['low'], body, 'each', [['stance', 'low|far low|on stops']]),
  rule(true, ['high'], body, 'side', [['stance', 'high']]),
  rule(true, ['level', 'ok'], body, 'side', [['stance', 'level']]),
  rule(true, ['level'], body, 'each', [['stance', 'level']]),
  rule(true, ['reversed'], ['height valve', 'arm', ''], 'side', [['valve fills', 'wrong way']]),
];
