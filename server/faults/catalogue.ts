/** All faults, left and right where they exist. */
import { chassis } from './catalogue/chassis.ts';
import { control } from './catalogue/control.ts';
import { distribution } from './catalogue/distribution.ts';
import { electrics } from './catalogue/electrics.ts';
import { gauges } from './catalogue/gauges.ts';
import { innocent } from './catalogue/innocent.ts';
import { links } from './catalogue/links.ts';
import { motor } from './catalogue/motor.ts';
import { panel } from './catalogue/panel.ts';
import { springs } from './catalogue/springs.ts';
import { store } from './catalogue/store.ts';
import { supply } from './catalogue/supply.ts';
import { pressureSwitch } from './catalogue/switch.ts';
import { wheels } from './catalogue/wheels.ts';
import { type Fault, type FaultRow, expandFault } from './fault.ts';

export const faultRows: readonly FaultRow[] = [
  ...supply,
  ...motor,
  ...store,
  ...distribution,
  ...control,
  ...links,
  ...panel,
  ...springs,
  ...chassis,
  ...wheels,
  ...electrics,
  ...pressureSwitch,
  ...gauges,
  ...innocent,
];

export const catalogue: readonly Fault[] = faultRows.flatMap(expandFault);

const byKey = new Map(catalogue.map((f) => [f.key, f]));
/** The fault of a suspect; undefined for a key that an older log may hold. */
export const faultOf = (key: string): Fault | undefined => byKey.get(key);
