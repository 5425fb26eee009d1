import fc from 'fast-check';
import { expect, it } from 'vitest';
import { CODE_KINDS, QUIET_MODULES } from '@/lib/labels/code-kind';
import { layOutLabel } from '@/lib/labels/label-layout';
import { LABEL_STOCKS } from '@/lib/labels/label-stock';

const labels = fc.record({
  widthMm: fc.double({ min: 20, max: 105, noNaN: true }),
  heightMm: fc.double({ min: 9, max: 60, noNaN: true }),
  codeKind: fc.constantFrom(...CODE_KINDS),
  codeAcross: fc.integer({ min: 10, max: 130 }),
  codeUpright: fc.constant(1),
  idLength: fc.integer({ min: 2, max: 16 }),
});

// source: identity. Nothing leaves the label, the code keeps its quiet margin free of text, and lines stand under the ID in order.
it('keeps everything on the label and the quiet margin free', () => {
  fc.assert(
    fc.property(labels, (drawn) => {
      const square = drawn.codeKind === 'code-128' ? 1 : Math.min(drawn.codeAcross, 29);
      const label = {
        ...drawn,
        codeAcross: drawn.codeKind === 'code-128' ? drawn.codeAcross : square,
        codeUpright: square,
      };
      const { code, moduleMm, id, lines } = layOutLabel(label);
      const quiet = QUIET_MODULES[label.codeKind];
      expect(code.xMm - quiet.across * moduleMm).toBeGreaterThanOrEqual(0);
      expect(code.yMm - quiet.upright * moduleMm).toBeGreaterThanOrEqual(0);
      expect(code.xMm + code.widthMm + quiet.across * moduleMm).toBeLessThanOrEqual(label.widthMm);
      expect(code.yMm + code.heightMm).toBeLessThanOrEqual(label.heightMm);
      const last = lines.baselinesMm.at(-1) ?? id.baselineMm;
      expect(last).toBeLessThanOrEqual(label.heightMm);
      expect(id.baselineMm - id.fontMm * 0.73).toBeGreaterThanOrEqual(0);
      if (label.codeKind === 'code-128') expect(last).toBeLessThanOrEqual(code.yMm + 1e-9);
      else expect(id.xMm).toBeGreaterThanOrEqual(code.xMm + code.widthMm + quiet.across * moduleMm - 1e-9);
      expect([...lines.baselinesMm].sort((a, b) => a - b)).toEqual([...lines.baselinesMm]);
    }),
  );
});

// source: hand. A 7-letter ID is 14 Data Matrix squares (16 with its margin) and some 112 bars: both can be printed on every stock
// but the die tag's QR (21 squares and 8 of margin in 8.2 mm: 0.28 mm) and Code 128 on it (132 in 23.2 mm: 0.176 mm, just enough).
it('a short ID fits every stock with the code that suits it', () => {
  for (const { id, labelWidthMm: widthMm, labelHeightMm: heightMm } of LABEL_STOCKS) {
    const label = { widthMm, heightMm, idLength: 7 };
    const fine = (codeKind: (typeof CODE_KINDS)[number], codeAcross: number, codeUpright: number) =>
      layOutLabel({ ...label, codeKind, codeAcross, codeUpright }).isCoarseEnough;
    expect([id, fine('data-matrix', 14, 14)]).toEqual([id, true]);
    expect([id, fine('qr', 21, 21)]).toEqual([id, id !== 'tag-25x10']);
    expect([id, fine('code-128', 112, 1)]).toEqual([id, true]);
  }
});

it('throws on a label that holds nothing', () => {
  const label = {
    widthMm: 5,
    heightMm: 5,
    codeKind: 'qr',
    codeAcross: 21,
    codeUpright: 21,
    idLength: 7,
  } as const;
  expect(() => layOutLabel(label)).toThrow('invariant broken');
});
