import type { Caution } from './caution';

/** What this record is and is not. */
export const RECORD_CAUTIONS: readonly Caution[] = [
  {
    id: 'estimates',
    at: ['prediction', 'footer'],
    signal: null,
    sign: null,
    lead: 'Estimates from counts.',
    text: 'They do not replace looking at the edge, the gauge or the drawing.',
    basis: 'a proposal of this record',
  },
  {
    id: 'gauge-overdue',
    at: ['gauge'],
    signal: 'notice',
    sign: null,
    lead: 'Do not accept with this gauge.',
    text: 'Work since its last good check is suspect until reviewed.',
    basis: 'ISO 9001, 7.1.5.2',
  },
  {
    id: 'dimensions',
    at: ['dimensions', 'footer'],
    signal: null,
    sign: null,
    lead: 'Numbers shipped here are examples.',
    text: 'The fitting maker’s manual and the drawing rule.',
    basis: 'a proposal of this record',
  },
  {
    id: 'codes',
    at: ['footer'],
    signal: null,
    sign: null,
    lead: 'A tooling record, not a code document.',
    text: 'Design, acceptance and testing follow the code that applies to the owner’s system (for example ASME B31.3 with its high-pressure chapter when the owner invokes it, EU or UK pressure-equipment law) and local rules.',
    basis: 'ASME B31.3 para. 300(c), as quoted',
  },
];
