/**
 * What no sheet says, or this one does not: from where to where a coach of this kind may lie. Estimates of ours, common
 * practice at best, no published source; the twin draws from them, findings never quote them. SI; pressures gauge.
 */
type Row = { readonly low: number; readonly high: number; readonly law: 'even' | 'log'; readonly of: string };

const row = (low: number, high: number, of: string, law: Row['law'] = 'even'): Row => ({ low, high, law, of });
const litre = 1e-3;
/** 1 ml/min of free air through a leak that stands at 5 bar absolute, as a conductance, m3/(s Pa). */
const weep = 1e-6 / 60 / 5e5;
const bar = 1e5;

export const spread = {
  // In place of a sheet's value.
  tank: row(17 * litre, 28 * litre, 'tank volume, m3'),
  lines: row(0.6 * litre, 1.6 * litre, 'supply lines and valve bodies, m3'),
  cutIn: row(5.6 * bar, 6.4 * bar, 'pump starts'),
  band: row(1.5 * bar, 2.1 * bar, 'cut-out above cut-in'),
  relief: row(9.6 * bar, 10.6 * bar, 'relief opens'),
  protection: row(3.9 * bar, 4.6 * bar, 'protection valve shuts'),
  gaugeStep: row(2 * 6894.757, 5 * 6894.757, 'one division of the tank gauge'),
  delivery: row(30e-3 / 60, 48e-3 / 60, 'free air of the pump at 0 bar, m3/s'),
  currentLow: row(14, 18, 'motor current against no pressure, A'),
  currentSpan: row(7, 10, 'more of it at cut-out, A'),
  fuse: row(30, 40, 'fuse, A'),
  minVolts: row(10.8, 11.2, 'least volts at the motor, V'),
  deadBand: row(0.006, 0.01, 'at the end of the arm, either side, m'),
  delay: row(5, 15, 'of a height valve, s'),
  heightPerArm: row(1.3, 1.8, 'height for travel at the end of the arm'),
  area: row(0.025, 0.032, 'of one bellows, m2'),
  bellowsVolume: row(6.2 * litre, 8 * litre, 'of one bellows at ride height, m3'),
  bellowsPressure: row(3.4 * bar, 4.4 * bar, 'carrying the coach at ride height'),
  lever: row(0.75, 0.95, 'travel of the bellows for travel at the wheel'),
  rideHeight: row(0.33, 0.38, 'rear, floor to the measuring point, m'),
  frontHeight: row(0.37, 0.41, 'front, m'),
  tolerance: row(0.006, 0.007, 'of a height, m'),
  toStops: row(0.07, 0.09, 'from ride height down to the stops, m'),
  tapeStep: row(0.001, 0.0032, 'one division of the tape, m'),
  altitude: row(0, 1200, 'm'),
  // What no sheet has.
  sheetError: row(0.97, 1.03, 'this coach over what its sheet says'),
  toTop: row(0.07, 0.1, 'from ride height up to the end of the shocks, m'),
  areaSlope: row(-0.6, 0.2, 'change of effective area over a travel of its own ride length, share'),
  stopStiffness: row(4e5, 8e5, 'N/m'),
  cornerStiffness: row(4e4, 7.5e4, 'front corner, N/m'),
  frameTwist: row(1.0, 2.2, 'roll stiffness of the frame between the axles over that of the front springs'),
  setError: row(-0.003, 0.003, 'a healthy valve set off its height, m'),
  startBand: row(-0.35, 0.35, 'where in its dead band a driven coach comes to rest, share'),
  closeAt: row(0.05, 0.35, 'share of the dead band at which an open height valve shuts again'),
  inlet: row(0.08e-8, 0.2e-8, 'height valve filling, with its line, m3/(s Pa)', 'log'),
  exhaust: row(0.08e-8, 0.2e-8, 'height valve exhausting', 'log'),
  panelFill: row(0.2e-8, 0.5e-8, 'panel in FILL', 'log'),
  panelEmpty: row(0.3e-8, 0.6e-8, 'panel in EMPTY', 'log'),
  criticalRatio: row(0.3, 0.5, 'b of every opening'),
  tankWeep: row(0.05 * weep, 3 * weep, 'a sound tank side', 'log'),
  supplyWeep: row(0.05 * weep, 2 * weep, 'sound supply lines', 'log'),
  bellowsWeep: row(0.05 * weep, 2.5 * weep, 'a sound side, valve to bellows', 'log'),
  wall: row(3500, 6500, 'heat in the wall of the tank, J/K'),
  tankGasTime: row(50, 110, 'air in the tank against its wall, full, s'),
  tankWallTime: row(900, 1900, 'wall of the tank against the air around, s'),
  bellowsTime: row(60, 180, 'air in the bellows against the air around, s'),
  pumpTime: row(500, 900, 'pump cools down by 63 %, s'),
  pumpRise: row(70, 110, 'pump above the air around in a long run, K'),
  dischargeRise: row(25, 50, 'air into the tank above the air around, pump cold, K'),
  thermalTrip: row(105, 130, 'pump above the air around at which a sound thermal cut-out would open, K'),
  emf: row(12.35, 12.75, 'battery at rest, V'),
  emfEngine: row(13.4, 14.2, 'engine running, V'),
  batteryResistance: row(0.006, 0.015, 'ohm', 'log'),
  contactResistance: row(0.004, 0.012, 'of clean joints, relay and fuse, ohm', 'log'),
  feedResistance: row(0.015, 0.035, 'feed where the sheet has no wire, ohm'),
  groundResistance: row(0.003, 0.01, 'ground where the sheet has no wire, ohm'),
  ambient: row(278, 303, 'air around in the evening, K'),
  nightDrop: row(0, 8, 'colder by morning, an ordinary night, K'),
  floor: row(-0.003, 0.003, 'shop floor under one rear side, m'),
  springUneven: row(-0.004, 0.004, 'one front corner against the other, m'),
  gaugeBias: row(-0.015, 0.015, 'a sound gauge, share of its reading'),
  parked: row(8 * 3600, 12 * 3600, 'standing overnight, s'),
} as const satisfies Record<string, Row>;

export type Spread = keyof typeof spread;
