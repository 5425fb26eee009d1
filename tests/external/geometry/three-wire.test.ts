import { expect, it } from 'vitest';
import {
  bestWireMm,
  leadAngleDeg,
  overWiresFlatIn,
  overWiresMm,
  overWiresSharpVIn,
  pitchDiameterFromWiresMm,
  wireRangeMm,
} from '@/lib/thread';

// source: published. An army ordnance course on threads: best wire for 8 threads per inch 0.072 in.
it('best wire for 8 threads per inch', () => {
  expect(Number((bestWireMm(8) / 25.4).toFixed(3))).toBe(0.072);
});

// source: published. A handbook's table of dimensions over wires, sharp V and US columns; 1/2-14 US is printed 0.5418 for 0.54175.
it.each([
  [0.25, 18, 0.035, 0.2588, 0.2708],
  [0.25, 20, 0.035, 0.2684, 0.2792],
  [0.25, 22, 0.035, 0.2763, 0.2861],
  [0.25, 24, 0.035, 0.2828, 0.2919],
  [0.3125, 18, 0.035, 0.3213, 0.3333],
  [0.3125, 24, 0.035, 0.3453, 0.3544],
  [0.375, 16, 0.04, 0.3867, 0.4003],
  [0.375, 20, 0.04, 0.4084, 0.4192],
  [0.5, 12, 0.05, 0.5057, 0.5237],
  [0.5, 14, 0.05, 0.5263, 0.5418],
  [1, 8, 0.09, 1.0535, 1.0806],
  [1, 9, 0.09, 1.0775, 1.1016],
] as const)('%d-%d over wires of %d in', (majorIn, tpi, wireIn, sharpV, flat) => {
  expect(Math.abs(overWiresSharpVIn({ majorIn, tpi, wireIn }) - sharpV)).toBeLessThanOrEqual(0.0000501);
  expect(Math.abs(overWiresFlatIn({ majorIn, tpi, wireIn }) - flat)).toBeLessThanOrEqual(0.0000501);
});

// source: formula. M = E + 3W − 0.866025P with W = 0.57735P at the printed pitch limits of 2A and 3A, worked outside this project.
const OVER_BEST: readonly (readonly [string, number, number, readonly [number, number][]])[] = [
  [
    '1/4-28',
    28,
    0.02062,
    [
      [0.2258, 0.25673],
      [0.2225, 0.25343],
      [0.2268, 0.25773],
      [0.2243, 0.25523],
    ],
  ],
  [
    '3/8-24',
    24,
    0.024056,
    [
      [0.3468, 0.38288],
      [0.343, 0.37908],
      [0.3479, 0.38398],
      [0.345, 0.38108],
    ],
  ],
  [
    '9/16-18',
    18,
    0.032075,
    [
      [0.525, 0.57311],
      [0.5205, 0.56861],
      [0.5264, 0.57451],
      [0.523, 0.57111],
    ],
  ],
  [
    '3/4-16',
    16,
    0.036084,
    [
      [0.7079, 0.76203],
      [0.7029, 0.75703],
      [0.7094, 0.76353],
      [0.7056, 0.75973],
    ],
  ],
  [
    '1-12',
    12,
    0.048113,
    [
      [0.9441, 1.01627],
      [0.9382, 1.01037],
      [0.9459, 1.01807],
      [0.9415, 1.01367],
    ],
  ],
  [
    '1-14',
    14,
    0.041239,
    [
      [0.9519, 1.01376],
      [0.9463, 1.00816],
      [0.9536, 1.01546],
      [0.9494, 1.01126],
    ],
  ],
];
it.each(OVER_BEST)('%s over its best wires, both ways', (_thread, tpi, bestIn, pairs) => {
  const wireMm = bestWireMm(tpi);
  expect(Math.abs(wireMm / 25.4 - bestIn)).toBeLessThan(6e-6);
  for (const [pitchIn, overIn] of pairs) {
    const over = overWiresMm({ pitchDiameterMm: pitchIn * 25.4, tpi, wireMm }) / 25.4;
    expect(Math.abs(over - overIn)).toBeLessThan(1e-5);
    const back = pitchDiameterFromWiresMm({ overWiresMm: overIn * 25.4, tpi, wireMm }) / 25.4;
    expect(Math.abs(back - pitchIn)).toBeLessThan(1e-5);
  }
});

// source: formula. Lead-angle term W·(1 + cosec α + ½·tan²λ·cos α·cot α), worked outside this project: measurement and lead angle.
it.each([
  ['1/4-28', 28, 0.2268, 0.257768, 2.869514],
  ['3/8-24', 24, 0.3479, 0.384011, 2.183217],
  ['9/16-18', 18, 0.5264, 0.57454, 1.924071],
  ['3/4-16', 16, 0.7094, 0.763548, 1.606378],
  ['1-12', 12, 0.9459, 1.018097, 1.606322],
  ['1-14', 14, 0.9536, 1.015477, 1.365829],
] as const)('%s with the lead angle', (_thread, tpi, pitchIn, overIn, leadDeg) => {
  const thread = { pitchDiameterMm: pitchIn * 25.4, tpi, wireMm: bestWireMm(tpi), leadAngle: true };
  expect(Math.abs(overWiresMm(thread) / 25.4 - overIn)).toBeLessThan(1e-6);
  expect(Math.abs(leadAngleDeg(thread) - leadDeg)).toBeLessThan(1e-5);
});

// source: published, from memory. A handbook's usable wires: 0.505 P at least, 1.010 P at most.
it('usable wires', () => {
  const { leastMm, mostMm } = wireRangeMm(10);
  expect(Number((leastMm / 2.54).toFixed(3))).toBe(0.505);
  expect(Number((mostMm / 2.54).toFixed(3))).toBe(1.01);
});
