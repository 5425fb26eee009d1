import fc from 'fast-check';
import { expect, it } from 'vitest';
import { overWiresFlatIn, overWiresSharpVIn } from '@/lib/thread/handbook-wires';
import { overWiresMm } from '@/lib/thread/three-wire';

// source: identity. A sharp V's pitch line lies √3/2·P below its crest, a flat's 0.64952·P: both are M at their own basic size.
it('both forms are the three-wire formula at the basic pitch diameter', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 8, max: 40 }),
      fc.double({ min: 0.25, max: 4, noNaN: true }),
      (tpi, majorIn) => {
        const wireIn = 0.6 / tpi;
        const over = (pitchIn: number) =>
          overWiresMm({ pitchDiameterMm: pitchIn * 25.4, tpi, wireMm: wireIn * 25.4 }) / 25.4;
        const sharp = overWiresSharpVIn({ majorIn, tpi, wireIn });
        const flat = overWiresFlatIn({ majorIn, tpi, wireIn });
        expect(Math.abs(sharp - over(majorIn - Math.sqrt(3) / 2 / tpi))).toBeLessThan(1e-9);
        expect(Math.abs(flat - over(majorIn - 0.64951905 / tpi))).toBeLessThan(0.00005 / tpi);
      },
    ),
  );
});

it('throws on figures that are not above 0', () => {
  expect(() => overWiresFlatIn({ majorIn: 1, tpi: 0, wireIn: 0.04 })).toThrow('invariant broken');
});
