import { expect, it } from 'vitest';
import { newEdge } from '@/lib/ledger/tool-record';
import { edgeEnded, placed, standing, withEdge } from '@/lib/ledger/tool-step/place';
import { end, entry, ISSUE, move, toolAfter } from '../../../support/entry';

it('a tool placed anew has no holder, bench or day left over', () => {
  const away = toolAfter('blade', move('regrind', '2026-03-20'));
  const found = entry(
    'tool-moved',
    'T-1',
    { to: 'in-crib', backOnDay: null },
    { reason: 'found', serverAtMs: 5 },
  );
  for (const tool of [toolAfter('blade', ISSUE), away])
    expect(placed(tool, 'in-crib', found)).toMatchObject({
      ...{ state: 'in-crib', holderId: null, jobLineId: null, bench: '', backOnDay: null },
      ...{ stateReason: 'found', stateSinceMs: 5 },
    });
});

it('says where it stands in shop words', () => {
  expect(standing(toolAfter('die'))).toBe('in the crib');
  expect(standing(toolAfter('blade', move('regrind')))).toBe('out for regrind');
});

it('replaces the edge in service, and knows when it is over', () => {
  const die = toolAfter('die');
  expect(withEdge(die, newEdge(9)).edges.map((edge) => edge.edgeNo)).toEqual([9]);
  expect([die, toolAfter('die', end('worn', 'scrapped')), toolAfter('brush')].map(edgeEnded)).toEqual([
    ...[false, true, false],
  ]);
});
