import fc from 'fast-check';
import { expect, it } from 'vitest';
import { codeSymbol } from '@/app/_shared/codes/code-symbol';
import { CODE_KINDS, type CodeKind, QUIET_MODULES } from '@/lib/labels/code-kind';
import { readCodes } from '../../support/read-code';

const FORMAT: Record<CodeKind, string> = { 'data-matrix': 'DataMatrix', qr: 'QRCode', 'code-128': 'Code128' };

/** The code as pixels: black on white with its quiet margin, each square `scale` pixels wide, bars 30 squares high. */
function picture(kind: CodeKind, text: string, scale = 4) {
  const { across, upright, dark } = codeSymbol(kind, text);
  const quiet = QUIET_MODULES[kind].across;
  const tall = kind === 'code-128' ? 30 : 1;
  const width = (across + 2 * quiet) * scale;
  const height = (upright * tall + 2 * quiet) * scale;
  const data = new Uint8ClampedArray(width * height * 4).fill(255);
  for (let y = 0; y < upright * tall * scale; y++) {
    for (let x = 0; x < across * scale; x++) {
      if (dark[Math.floor(y / scale / tall) * across + Math.floor(x / scale)] !== 1) continue;
      const at = ((y + quiet * scale) * width + x + quiet * scale) * 4;
      data.fill(0, at, at + 3);
    }
  }
  return { data, width, height };
}

const markable = fc.stringMatching(/^[A-HJ-NP-Z2-9]{1,4}(-[A-HJ-NP-Z0-9]{1,4}){1,2}$/);

// source: other-software. Read back by an independent reader of ISO/IEC 16022, 18004 and 15417 codes.
it.each(CODE_KINDS)('%s: another program reads the ID back', async (kind) => {
  for (const id of ['D-38-11', 'B-916H-07', 'G-56-GO-1', 'BDY-A', 'F-L03', 'T2'])
    expect(await readCodes(picture(kind, id))).toEqual([{ format: FORMAT[kind], text: id }]);
  await fc.assert(
    fc.asyncProperty(markable, async (id) => {
      expect((await readCodes(picture(kind, id), [FORMAT[kind] as never]))[0]?.text).toBe(id);
    }),
    { numRuns: 25 },
  );
});

// source: other-software. The same reader, with a spot of oil over a corner of the code: what the standards' error correction is for.
it.each(['data-matrix', 'qr'] as const)('%s: reads with a spot of dirt on it', async (kind) => {
  const dirty = picture(kind, 'D-38-11', 8);
  const side = Math.round(dirty.width * 0.12);
  const from = Math.round(dirty.width * 0.5);
  for (let y = from; y < from + side; y++)
    dirty.data.fill(0, (y * dirty.width + from) * 4, (y * dirty.width + from + side) * 4);
  for (let at = 3; at < dirty.data.length; at += 4) dirty.data[at] = 255;
  expect((await readCodes(dirty)).map(({ text }) => text)).toEqual(['D-38-11']);
});

// source: published, from memory. ECC 200 writes D, -, 38, -, 11 in five codewords, what 12 × 12 squares hold; the smallest QR, 21 × 21,
// holds 16 letters at level Q.
it('stays small', () => {
  expect(codeSymbol('data-matrix', 'D-38-11')).toMatchObject({ across: 12, upright: 12 });
  expect(codeSymbol('qr', 'D-38-11')).toMatchObject({ across: 21, upright: 21 });
  expect(codeSymbol('code-128', 'D-38-11').upright).toBe(1);
});
