import { expect, it } from 'vitest';
import { materialEffects } from '@/lib/compare/material-effects';
import { buildEnsemble } from '@/lib/ensemble/build-ensemble';
import { cut, edge } from '@/tests/support/edge-histories';
import { fitted, HISTORIES, smallShop } from '@/tests/support/small-shop';

// source: formula. Belief about 2507: factor 2.5, spread of the log 0.4, so 10–90 % is 2.5·e^(∓1.2816·0.4) = 1.497 to 4.174.
it('shows what the log says of a material beside what was believed', () => {
  const [hard] = materialEffects(buildEnsemble(smallShop()), 'die') ?? [];
  expect(hard?.materialId).toBe('2507');
  expect(hard?.believed?.low).toBeCloseTo(1.497, 3);
  expect(hard?.believed?.high).toBeCloseTo(4.174, 3);
});

it('lists a material that nobody described, and learns from the log', () => {
  const worn = [1, 2, 3, 4, 5, 6].map((i) =>
    edge(`X${i}`, {
      before: [cut(240 + 20 * i, { materialId: 'odd' })],
      during: [cut(30, { materialId: 'odd' })],
      end: 'worn',
    }),
  );
  const ensemble = buildEnsemble({ ...smallShop(), kinds: { die: fitted([...HISTORIES, ...worn]) } });
  const odd = materialEffects(ensemble, 'die')?.find(({ materialId }) => materialId === 'odd');
  expect(odd?.believed).toBeUndefined();
  expect(odd?.factor.median).toBeGreaterThan(2);
  expect(materialEffects(ensemble, 'blade')).toBeUndefined();
});
