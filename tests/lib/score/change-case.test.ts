import { expect, it } from 'vitest';
import { changeCase, RowSizes } from '@/lib/score/change-case';
import type { RowCut } from '@/lib/score/log-event';
import { wearShop } from '../../support/wear-shop';

const row = (change: Partial<RowCut>): RowCut => ({
  ...{ type: 'cut', toolId: 'D', edgeNo: 1, atMs: 0, connectionId: 'S', materialId: 'M' },
  ...{ dry: false, rework: false, ends: 10, goodEnds: 10, exposurePerEnd: 1 },
  ...change,
});

// source: hand. 10 and 14 ends: 12 next, unless fewer are asked; of another size nothing is known but what is asked.
it('expects a row like those before it', () => {
  const sizes = new RowSizes();
  expect(sizes.next(row({ askedEnds: 60 }), 'die')).toBe(60);
  sizes.add(row({}), 'die');
  sizes.add(row({ ends: 14 }), 'die');
  expect(sizes.next(row({ askedEnds: 60 }), 'die')).toBe(12);
  expect(sizes.next(row({ askedEnds: 7 }), 'die')).toBe(7);
  expect(sizes.next(row({ askedEnds: 60 }), 'blade')).toBe(60);
  expect(sizes.next(row({ askedEnds: 60, connectionId: 'T' }), 'die')).toBe(60);
});

const { facts, ensemble } = wearShop();
const tool = facts.tools.find(({ id }) => ensemble.tool(id)?.kind === 'die');
const die = tool && ensemble.tool(tool.id);

// source: identity. Its chance is the share of the futures in which the edge has so much left; dearer failures change sooner.
it('asks the futures of the tool', () => {
  if (die === undefined) throw new Error('the shop has a die');
  const materialId = facts.materials.find(({ isReference }) => isReference)?.id ?? '';
  const cut = row({ materialId, exposurePerEnd: 10, askedEnds: 90 });
  const asked = (failureCost: number, usedEnds = 0) => {
    const changing = { costs: { plannedCost: 12_600, failureCost }, regrinds: 0 };
    return changeCase(
      ensemble,
      die,
      { row: cut, workEnds: 40, usedEnds, changeAtEnds: 100, changing },
      new Map(),
    );
  };
  const residual = ensemble.residualLife(die.toolId) ?? new Float64Array();
  const lasting = residual.filter((left) => left >= 400).length / residual.length;
  expect(asked(18_000).carryOn?.finishes).toBeCloseTo(lasting, 12);
  expect(asked(180_000).carryOn?.breakEven).toBeGreaterThan(asked(18_000).carryOn?.breakEven ?? 1);
  expect([asked(18_000, 60).countPassed, asked(18_000, 61).countPassed]).toEqual([false, true]);
});

// source: hand. A shop that counts nothing is told nothing of a count; without a price nothing of money.
it('says only what it was asked', () => {
  if (die === undefined) throw new Error('the shop has a die');
  const question = { row: row({}), workEnds: 4, usedEnds: 0, changeAtEnds: undefined, changing: undefined };
  expect(changeCase(ensemble, die, question, new Map())).toEqual({
    ...{ workEnds: 4, countPassed: undefined, carryOn: undefined },
  });
});
