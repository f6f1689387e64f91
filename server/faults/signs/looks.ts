/** What is seen on links, bellows, lines, wheels and shocks, and how it drives. */
import { rule, type SignRule } from './rule.ts';

const both = (
  there: boolean,
  signs: Parameters<typeof rule>[1],
  parts: Parameters<typeof rule>[2],
  gives: SignRule['gives'],
): SignRule[] => [rule(there, signs, parts, 'side', gives), rule(there, signs, parts, 'each', gives)];

const bag = ['bellows', 'bellows fold', 'bellows crimp', 'bead plate'] as const;
const wheel = ['tyre', 'wheel'] as const;
const joint = ['pin', 'control arm', 'bushing'] as const;

export const looks: readonly SignRule[] = [
  rule(true, ['bent', 'slipped', 'loose', 'binding', 'worn', 'stuck'], ['link', 'arm'], 'side', [
    ['link look', 'bent or slipped'],
  ]),
  rule(true, ['disconnected', 'missing', 'broken'], ['link', 'arm'], 'side', [['link look', 'off']]),
  ...both(true, ['ok'], ['link', 'arm'], [['link look', 'fine']]),
  rule(true, ['plugged'], ['inlet seat', 'height valve'], 'side', [['valve screen look', 'plugged']]),
  ...both(true, ['ok'], ['inlet seat'], [['valve screen look', 'clean']]),
  rule(true, ['cracked', 'aged', 'worn'], bag, 'side', [['bellows look', 'aged']]),
  rule(true, ['cords showing', 'swollen'], bag, 'side', [['bellows look', 'cords showing']]),
  rule(true, ['chafed'], bag, 'side', [['bellows look', 'rubbed']]),
  rule(true, ['torn', 'off line', 'broken'], bag, 'side', [['bellows look', 'torn']]),
  ...both(true, ['ok'], bag, [['bellows look', 'fine']]),
  rule(true, ['broken', 'missing', 'torn', 'worn'], ['bump stop'], 'side', [['bump stop look', 'broken']]),
  ...both(true, ['ok'], ['bump stop'], [['bump stop look', 'fine']]),
  rule(true, ['chafed', 'cracked'], ['bellows line', 'line', 'valve to panel line'], 'side', [['line look', 'chafed']]),
  rule(true, ['kinked', 'plugged'], ['bellows line', 'line', 'valve to panel line'], 'side', [['line look', 'kinked']]),
  ...both(true, ['ok'], ['bellows line'], [['line look', 'fine']]),
  rule(true, ['chafed', 'cracked'], ['supply line', 'line'], 'none', [['supply look', 'chafed']]),
  rule(true, ['kinked', 'plugged'], ['supply line', 'line'], 'none', [['supply look', 'kinked']]),
  rule(true, ['ok'], ['supply line', 'line'], 'none', [['supply look', 'fine']]),
  rule(
    true,
    ['frozen'],
    ['line', 'supply line', 'bellows line', 'height valve', 'drain', 'tank', 'pressure switch', ''],
    'none',
    [['frost trouble', 'yes']],
  ),
  rule(true, ['level', 'ok'], ['floor'], 'none', [['floor', 'level']]),
  rule(false, ['level'], ['floor'], 'none', [['floor', 'not level']]),
  rule(true, ['leans'], ['floor'], 'none', [['floor', 'not level']]),
  ...both(true, ['cold', 'worn', 'not working'], ['shock'], [['shock after drive', 'cold']]),
  ...both(true, ['leaks oil', 'oily', 'wet', 'leaks'], ['shock'], [['shock after drive', 'oily']]),
  ...both(true, ['warm', 'hot', 'ok', 'works'], ['shock'], [['shock after drive', 'warm']]),
  rule(true, ['broken', 'bent', 'disconnected'], ['shock'], 'side', [['shock length', 'broken']]),
  rule(true, ['wrong part'], ['shock'], 'side', [['shock length', 'wrong']]),
  rule(true, ['worn', 'loose', 'missing', 'broken', 'torn'], ['shock bushing'], 'side', [
    ['pry bushings', 'shock bushing'],
  ]),
  rule(true, ['worn', 'loose', 'broken', 'noisy'], joint, 'side', [['pry bushings', 'arm pins']]),
  ...both(true, ['ok'], ['shock bushing', ...joint], [['pry bushings', 'tight']]),
  rule(true, ['loose', 'worn', 'noisy'], ['wheel bearing', 'wheel'], 'side', [['rock wheel', 'play']]),
  ...both(true, ['ok'], ['wheel bearing'], [['rock wheel', 'tight']]),
  rule(true, ['feathered', 'scrubbed', 'worn'], wheel, 'none', [['front tyre wear', 'feathered']], undefined, 'front'),
  rule(true, ['feathered', 'scrubbed', 'worn'], wheel, 'side', [['front tyre wear', 'feathered']], undefined, 'front'),
  rule(true, ['worn inside'], wheel, 'side', [['tyre wear', 'inside']]),
  rule(true, ['worn outside'], wheel, 'side', [['tyre wear', 'outside']]),
  rule(true, ['feathered', 'scrubbed'], wheel, 'side', [['tyre wear', 'feathered']]),
  rule(true, ['cupped'], wheel, 'side', [['tyre wear', 'cupped']]),
  ...both(false, ['worn', 'worn inside', 'worn outside', 'feathered', 'cupped'], wheel, [['tyre wear', 'even']]),
  rule(true, ['low', 'sags', 'slipped', 'broken', 'worn'], ['torsion bar'], 'side', [['front height', 'low']]),
  rule(true, ['flat'], ['tyre'], 'side', [['tyre pressure', 'far low']]),
  rule(true, ['low'], ['tyre'], 'side', [['tyre pressure', 'low|far low']]),
  ...both(true, ['ok'], ['tyre'], [['tyre pressure', 'within']]),
  rule(true, ['ok'], ['dryer'], 'none', [['dryer look', 'fine']]),
  rule(true, ['wet', 'oily', 'aged', 'worn', 'water'], ['dryer'], 'none', [['dryer look', 'spent']]),
  rule(true, ['bounces'], ['wheel', 'tyre'], 'side', [['spin wheel', 'hops']]),
  rule(true, ['bounces'], ['coach', '', 'wheel', 'shock'], 'none', [['ride', 'bounces']]),
  rule(true, ['bottoms'], ['coach', '', 'wheel'], 'none', [['ride', 'bottoms']]),
  // Which way it pulls says little of which side is out.
  ...(['none', 'any'] as const).flatMap((side) => [
    rule(true, ['wanders'], ['coach', '', 'axle'], side, [['ride', 'wanders']]),
    rule(true, ['pulls'], ['coach', '', 'axle'], side, [['ride', 'pulls']]),
  ]),
  rule(false, ['bounces', 'bottoms', 'wanders', 'pulls'], ['coach', '', 'axle', 'wheel', 'shock'], 'any', [
    ['ride', 'fine'],
  ]),
  rule(true, ['bangs', 'noisy'], ['coach', '', 'axle', 'wheel', 'shock'], 'none', [['bang', 'yes']]),
  rule(false, ['bangs', 'noisy'], ['coach', '', 'axle', 'pin', 'bushing', 'control arm', 'shock', 'wheel'], 'any', [
    ['bang', 'no'],
  ]),
  rule(true, ['bent', 'cracked'], ['frame', 'axle', 'bracket'], 'none', [['string check', 'bent']]),
  rule(true, ['ok'], ['axle'], 'none', [['ride', 'fine']], { driving: true }),
  // A straight frame leaves open whether the tandem is square in it.
  rule(true, ['ok'], ['frame', 'bracket'], 'none', [['string check', 'square|not parallel']]),
  rule(true, ['ok'], ['axle'], 'none', [['string check', 'square']]),
];
