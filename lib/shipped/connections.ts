import { connectionKey } from '../shop/connection-text';
import type { Connection } from '../shop/noun';
import type { Service } from '../shop/vocabulary';
import { inToMm, rationalInToMm } from '../units/inch-mm';
import type { Rational } from '../units/rational';

/** One line of the table: tube size, service, threads per inch, thread length and nose diameter in inches. */
type Line = readonly [size: Rational, service: Service, tpi: number, lengthIn: Rational, noseIn: number];

/**
 * Sizes and pitches: ASME B1.1 (1-14 is a special pitch, UNS, not the 1-12 of the fine series). Thread lengths, nose
 * diameters, class 2A and the cone of 59 degrees included: common practice, no source.
 */
const LINES: readonly Line[] = [
  [{ num: 1, den: 4 }, 'medium', 28, { num: 11, den: 32 }, 0.141],
  [{ num: 1, den: 4 }, 'high', 28, { num: 9, den: 16 }, 0.125],
  [{ num: 3, den: 8 }, 'medium', 24, { num: 7, den: 16 }, 0.25],
  [{ num: 3, den: 8 }, 'high', 24, { num: 3, den: 4 }, 0.219],
  [{ num: 9, den: 16 }, 'medium', 18, { num: 1, den: 2 }, 0.406],
  [{ num: 9, den: 16 }, 'high', 18, { num: 15, den: 16 }, 0.281],
  [{ num: 3, den: 4 }, 'medium', 16, { num: 5, den: 8 }, 0.562],
  [{ num: 1, den: 1 }, 'medium', 14, { num: 25, den: 32 }, 0.719],
];

/**
 * The eight connections that a new shop is shown: examples, every one unconfirmed. Confirm them in the fitting maker's
 * manual before anything is cut to them. How far NOT GO may run on is left open: that rule is the shop's to set.
 */
export const SHIPPED_CONNECTIONS: readonly Connection[] = LINES.map(toConnection);

function toConnection([size, service, tpi, lengthIn, noseIn]: Line): Connection {
  return {
    id: connectionKey(size, service),
    odNum: size.num,
    odDen: size.den,
    service,
    tpi,
    hand: 'LH',
    threadClass: '2A',
    threadLengthMm: rationalInToMm(lengthIn),
    coneAngleDeg: 59,
    noseMm: inToMm(noseIn),
    notGoTurnsMax: null,
    confirmed: false,
    inUse: true,
  };
}
