/** Terms of pump and electrics. Own words. */
import { type Term, term } from './term.ts';

export const pumpTerms: readonly Term[] = [
  term(
    'pump',
    ['compressor', 'comp', 'air pump'],
    'The electric machine that fills the tank.',
    'It often dies of a leak: find what made it run before a new one is fitted.',
    ['duty', 'unloader', 'discharge check'],
  ),
  term('cut-in', ['cut in'], 'The pressure at which the pump starts.', 'Above it a silent pump is healthy.', [
    'cut-out',
    'pressure switch',
  ]),
  term(
    'cut-out',
    ['cut out'],
    'The pressure at which the pump stops.',
    'A pump that runs past it is a danger: power off first.',
    ['cut-in', 'relief valve'],
  ),
  term(
    'pressure switch',
    ['governor'],
    'The switch that starts and stops the pump by tank pressure.',
    'Carrying the motor\u2019s full current its contacts burn or weld: it wants a relay.',
    ['relay', 'cut-in', 'cut-out'],
  ),
  term(
    'relay',
    [],
    'A switch worked by a small current that carries the large one to the motor.',
    'Welded, the pump runs on and the key may not stop it.',
    ['pressure switch', 'voltage drop'],
  ),
  term(
    'unloader',
    [],
    'A small valve that empties the pump\u2019s head when it stops.',
    'One puff at shut-off is its job. Without it the motor starts against pressure and stalls.',
    ['discharge check', 'pump'],
  ),
  term(
    'discharge check',
    ['check valve', 'discharge check valve'],
    'The one-way valve between pump and tank.',
    'Leaking, it lets the tank run back through the pump: hiss that goes on after the stop.',
    ['unloader', 'inlet check'],
  ),
  term(
    'intake filter',
    ['filter'],
    'The strainer where the pump draws its air.',
    'Clogged, the pump starves, runs long and hot.',
    ['pump'],
  ),
  term(
    'voltage drop',
    ['volt drop'],
    'Volts lost in a wire or joint while current flows.',
    'Read under load, leg by leg, it finds the bad joint. A wire without current shows nothing.',
    ['ground', 'relay'],
  ),
  term(
    'ground',
    ['earth'],
    'The way back of the current from motor to battery, through frame and lugs.',
    'Rust under one lug makes a pump slow.',
    ['voltage drop'],
  ),
  term(
    'duty',
    ['duty cycle'],
    'The share of time that the pump runs.',
    'A pump that runs a third of the time feeds a leak.',
    ['pump', 'leak-down'],
  ),
  term(
    'thermal cut-out',
    ['thermal switch', 'overload'],
    'A switch in the motor that opens when it gets too hot.',
    'It comes back by itself in a quarter of an hour; look for what ran it hot.',
    ['duty', 'pump'],
  ),
  term(
    'short cycling',
    ['short cycles'],
    'The pump starts and stops often.',
    'Small leak, water in the tank, or a switch with its points too close.',
    ['cut-in', 'cut-out', 'drain'],
  ),
];
