/** All guides. */
import type { Guide } from './guide.ts';
import { leakDown } from './guides/leak-down.ts';
import { tankPressure } from './guides/tank-pressure.ts';

export const guides: readonly Guide[] = [tankPressure, leakDown];
