import { expect, it } from 'vitest';
import { basicPitchDiameterMm } from '@/lib/thread';

// source: published. ASME B1.1 fine series, basic pitch diameters in inches as printed in a public UNF table
// (check value G.basic.fine). Printed to four decimals: ours, rounded to four, must be the same figure.
it.each([
  ['1/4-28', 0.25, 28, 0.2268],
  ['3/8-24', 0.375, 24, 0.3479],
  ['9/16-18', 0.5625, 18, 0.5264],
  ['3/4-16', 0.75, 16, 0.7094],
  ['1-12', 1, 12, 0.9459],
])('%s: basic pitch diameter', (_thread, majorIn, tpi, printedIn) => {
  const ours = basicPitchDiameterMm({ majorMm: majorIn * 25.4, tpi }) / 25.4;
  expect(Number(ours.toFixed(4))).toBe(printedIn);
});

// source: published. The same table's 1-12 is not the 14 TPI thread of a 1 in tube: a different pitch diameter must show.
it('1-14 is told from 1-12', () => {
  const ours = basicPitchDiameterMm({ majorMm: 25.4, tpi: 14 }) / 25.4;
  expect(Math.abs(ours - 0.9459)).toBeGreaterThan(0.005);
});
