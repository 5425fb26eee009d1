import { expect, it } from 'vitest';
import { buildEnsemble } from '@/lib/ensemble/build-ensemble';
import { cut } from '@/tests/support/edge-histories';
import { fitted, HISTORIES, smallShop, TOOLS } from '@/tests/support/small-shop';

// source: identity. Bit for bit.
it('does not depend on the order of inputs or questions, and one more tool changes no other', () => {
  const input = smallShop();
  const one = buildEnsemble(input);
  const turned = buildEnsemble({
    kinds: { die: fitted([...HISTORIES].reverse()) },
    tools: [
      {
        ...TOOLS[0],
        toolId: 'D-38-99',
        kind: 'die',
        partId: 'die-38',
        odIn: 0.375,
        regrinds: 0,
        exposure: [cut(9)],
      },
      ...[...TOOLS].reverse(),
    ],
    parts: [...input.parts].reverse(),
  });
  turned.newLife('die-56', 3);
  for (const { toolId } of [...TOOLS].reverse()) {
    expect(turned.residualLife(toolId)).toEqual(one.residualLife(toolId));
    expect(one.residualLife(toolId)).toHaveLength(2048);
  }
  expect(turned.newLife('die-38', 0)).toEqual(one.newLife('die-38', 0));
  expect(turned.materialFactor('die', '2507')).toEqual(one.materialFactor('die', '2507'));
});

it('knows nothing of what it was not given', () => {
  const ensemble = buildEnsemble(smallShop());
  expect(ensemble.residualLife('D-00-00')).toBeUndefined();
  expect(ensemble.newLife('die-00', 0)).toBeUndefined();
  expect(ensemble.materialFactor('blade', 'ref')).toBeUndefined();
  expect(ensemble.materialFactor('die', 'unheard-of')).toBeUndefined();
  expect(ensemble.fit('blade')).toBeUndefined();
  expect(buildEnsemble({ ...smallShop(), kinds: {} }).residualLife('D-38-11')).toBeUndefined();
});

// source: identity. Draw by draw the tools share one future of the shop, each with its own luck: the medians over
// draws move together, and a part with a longer typical life in a draw has it for all its tools.
it('lets tools of a part share what is unknown about the part', () => {
  const ensemble = buildEnsemble(smallShop());
  const lives = [0, 1].map(
    (index) => ensemble.newLife('die-56', index)?.map(Math.log) ?? new Float64Array(2048),
  );
  const [a, b] = lives.map((life) => {
    const mean = life.reduce((sum, value) => sum + value, 0) / life.length;
    return life.map((value) => value - mean);
  });
  let product = 0;
  a?.forEach((value, k) => {
    product += value * (b?.[k] ?? 0);
  });
  // 9/16 has no history of its own: spread of the part and of the size law, 0.3 or more, is common to both dies.
  expect(product / 2048).toBeGreaterThan(0.05);
});

it('gives fewer draws when asked', () => {
  expect(buildEnsemble({ ...smallShop(), drawCount: 100 }).residualLife('D-38-11')).toHaveLength(100);
});
