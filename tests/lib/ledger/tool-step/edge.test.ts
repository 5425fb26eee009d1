import { expect, it } from 'vitest';
import { cutLogged, edgeEnded, edgeRenewed } from '@/lib/ledger/tool-step/edge';
import { must, NOW_MS, sentence } from '../../../support/db';
import { cut, end, entry, ISSUE, move, toolAfter } from '../../../support/entry';

const logged = entry('cut-logged', 'T-1', cut());
const renewal = entry('edge-renewed', 'T-1', { onDay: '2026-03-09' });

it('a row adds to the edge in service, in the crib or issued', () => {
  for (const tool of [toolAfter('die'), toolAfter('die', ISSUE)])
    expect(must(cutLogged(tool, cut(), logged)).edges[0]?.use).toMatchObject([
      { ends: 2, exposureMicro: 21_000_000 },
    ]);
});

it('a die cuts no cones, a body cuts nothing', () => {
  expect(sentence(cutLogged(toolAfter('die'), cut({ operation: 'cone' }), logged))).toBe(
    'T-1 is not a tool that cuts cones.',
  );
  expect(sentence(cutLogged(toolAfter('coning-body'), cut(), logged))).toBe(
    'T-1 is not a tool that cuts threads.',
  );
});

it('a row that the record could not add up exactly is refused', () => {
  const full = toolAfter('die', entry('cut-logged', 'T-1', cut({ exposureMicro: Number.MAX_SAFE_INTEGER })));
  expect(sentence(cutLogged(full, cut(), logged))).toBe(
    'This row is more than T-1 can have cut; check the ends and the size.',
  );
});

it('an ended edge keeps what it cut, its cause and its moment', () => {
  const ended = must(
    edgeEnded(toolAfter('die', logged), { cause: 'dropped', to: 'scrapped' }, end('dropped', 'scrapped')),
  );
  expect(ended).toMatchObject({ state: 'scrapped' });
  expect(ended.edges[0]).toMatchObject({
    end: 'incident',
    cause: 'dropped',
    endedAtMs: NOW_MS,
    use: [{ ends: 2 }],
  });
});

it('a scrapped tool can still be told why, but not be brought back by it', () => {
  const scrapped = toolAfter('die', move('scrapped'));
  const worn = { cause: 'worn' } as const;
  expect(must(edgeEnded(scrapped, { ...worn, to: 'scrapped' }, end('worn', 'scrapped'))).state).toBe(
    'scrapped',
  );
  expect(edgeEnded(scrapped, { ...worn, to: 'quarantined' }, end('worn', 'quarantined')).ok).toBe(false);
});

it('a regrind begins a new edge from zero; only blades are reground', () => {
  const blade = toolAfter('blade', end('worn', 'regrind'));
  const renewed = must(edgeRenewed(blade, { onDay: '2026-03-09' }, renewal));
  expect(renewed.edges.map((edge) => [edge.edgeNo, edge.end])).toEqual([
    [1, 'worn'],
    [2, null],
  ]);
  expect(renewed.state).toBe('in-crib');
  expect(edgeRenewed(toolAfter('die'), { onDay: '2026-03-09' }, renewal).ok).toBe(false);
  expect(edgeEnded(toolAfter('die'), { cause: 'worn', to: 'regrind' }, end('worn', 'regrind')).ok).toBe(
    false,
  );
});
