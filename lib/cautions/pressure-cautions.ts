import type { Caution } from './caution';

/** Acceptance of an end, assembly and test: what this record never says, and what pressure does. */
export const PRESSURE_CAUTIONS: readonly Caution[] = [
  {
    id: 'bore',
    at: ['accept'],
    signal: 'caution',
    sign: 'W001',
    lead: 'Look through the bore. Swab. Cap.',
    text: 'A chip left inside can cut a seat, jam a valve or start a fire.',
    basis: 'ASTM G93/G93M; common practice',
  },
  {
    id: 'never-says-safe',
    at: ['accept', 'assembly', 'footer'],
    signal: null,
    sign: null,
    lead: 'Edgekeep never says a joint is safe to pressurise.',
    text: 'Only competent persons test, by a written safe system, with people kept clear.',
    basis: 'UK HSE GS4',
  },
  {
    id: 'never-feel',
    at: ['assembly'],
    signal: 'danger',
    sign: 'W029',
    lead: 'Never feel for a leak.',
    text: 'A jet can inject through skin and gloves: serious cases above 100 bar, reports as low as 7 bar. Any suspected injection means hospital at once.',
    basis: 'UK HSE alert FOD 4-2014',
  },
  {
    id: 'gas-energy',
    at: ['assembly'],
    signal: null,
    sign: null,
    lead: 'Gas stores far more energy than water.',
    text: 'About 1 L at 1 000 bar holds roughly 215 kJ as gas (ideal-gas formula, order of magnitude) against about 2 kJ as water. A published rule keeps people at least 30 m back in pneumatic tests.',
    basis: 'ASME PCC-2 App. 501-II and III, as reproduced',
  },
];
