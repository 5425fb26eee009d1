import { describe, expect, it } from 'vitest';
import { buildEnsemble } from '@/lib/ensemble/build-ensemble';
import { kindDrawsOf } from '@/lib/ensemble/kind-draws';
import { readingDraws } from '@/lib/ensemble/reading-sums';
import { bandOf } from '@/lib/ensemble/reasons';
import type { WornReading } from '@/lib/reading/reading';
import { cut } from '@/tests/support/edge-histories';
import { fitted, HISTORIES, PARTS, smallShop, TOOLS } from '@/tests/support/small-shop';

const DRAWS = kindDrawsOf(fitted(HISTORIES), 256);
const ONE: WornReading = { worn: 0.5, sd: 0.2, exposure: [cut(400)] };
const TWO: WornReading = { worn: 0.3, sd: 0.1, exposure: [cut(100), cut(50, { materialId: '2507' })] };

// source: hand. One reading of 0.5 ± 0.2 at 400 turns: (400/0.2)² = 4,000,000 and 0.5·400/0.04 = 5,000 in every draw.
it('adds up readings in the exposure of each draw', () => {
  const sum = readingDraws(DRAWS, [ONE])?.sumAt(7);
  expect(sum?.square).toBeCloseTo(4_000_000, 6);
  expect(sum?.linear).toBeCloseTo(5_000, 9);
});

it('does not mind their order', () => {
  const forth = readingDraws(DRAWS, [ONE, TWO]);
  const back = readingDraws(DRAWS, [TWO, ONE]);
  for (let k = 0; k < 256; k++) expect(forth?.sumAt(k)).toEqual(back?.sumAt(k));
});

it('has nothing to add before the first cut', () => {
  expect(readingDraws(DRAWS, [])).toBeUndefined();
  expect(readingDraws(DRAWS, [{ worn: 0.1, sd: 0.2, exposure: [] }])).toBeUndefined();
});

describe('a tool that someone looked at', () => {
  const tool = TOOLS[0];
  if (tool === undefined) throw new Error('the small shop has a tool in hand');
  const left = (readings?: readonly WornReading[]): Float64Array => {
    const ensemble = buildEnsemble({ ...smallShop(), tools: [{ ...tool, readings }, ...TOOLS.slice(1)] });
    return ensemble.residualLife(tool.toolId) ?? new Float64Array(0);
  };
  const seen = (worn: number): WornReading => ({ worn, sd: 0.15, exposure: tool.exposure });

  it('keeps every digit while nothing was seen', () => {
    expect(left([])).toEqual(left());
  });

  it('lasts longer when it looks fresh and shorter when it looks worn', () => {
    const [worn, plain, fresh] = [left([seen(0.9)]), left(), left([seen(0.1)])].map(bandOf);
    expect(worn?.median ?? 0).toBeLessThan(0.6 * (plain?.median ?? 0));
    expect(fresh?.median ?? 0).toBeGreaterThan(plain?.median ?? 0);
  });

  it('changes no other tool', () => {
    const other = TOOLS[1]?.toolId ?? '';
    const of = (readings?: readonly WornReading[]) =>
      buildEnsemble({
        ...smallShop(),
        parts: PARTS,
        tools: [{ ...tool, readings }, ...TOOLS.slice(1)],
      }).residualLife(other);
    expect(of([seen(0.9)])).toEqual(of());
  });
});
