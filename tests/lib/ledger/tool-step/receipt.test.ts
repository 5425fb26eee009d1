import { expect, it } from 'vitest';
import { received } from '@/lib/ledger/tool-step/receipt';
import { NOW_MS } from '../../../support/db';
import { entry, receipt } from '../../../support/entry';

it('comes into the crib, with one edge if it cuts', () => {
  const edges = (['die', 'blade', 'go-ring', 'fluid', 'coning-body'] as const).map((role) => {
    const content = receipt(role);
    const tool = received(entry('tool-received', 'T-1', content), content);
    expect(tool).toMatchObject({ id: 'T-1', state: 'in-crib', stateSinceMs: NOW_MS, holderId: null });
    return tool.edges.length;
  });
  expect(edges).toEqual([1, 1, 0, 0, 0]);
});

it('ends counted before it came count on its edge, but are no row of the log', () => {
  const opening = {
    known: 'counted',
    connectionId: 'c',
    materialId: 'm',
    ends: 10,
    exposureMicro: 105_000_000,
  } as const;
  const content = receipt('die', { opening });
  const [edge] = received(entry('tool-received', 'T-1', content), content).edges;
  expect(edge?.lastUse).toBeNull();
  expect(edge?.use).toMatchObject([{ ends: 10, goodEnds: 10, exposureMicro: 105_000_000, dry: false }]);
});

it('use that is not known is not made up', () => {
  const content = receipt('die', { opening: { known: 'unknown' } });
  const tool = received(entry('tool-received', 'T-1', content), content);
  expect(tool.opening).toEqual({ known: 'unknown' });
  expect(tool.edges[0]?.use).toEqual([]);
});
