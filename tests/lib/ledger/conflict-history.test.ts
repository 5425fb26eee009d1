import { expect, it } from 'vitest';
import { evolveConflict } from '@/lib/ledger/conflict-history';
import { must, NOW_MS, sentence } from '../../support/db';
import { entry } from '../../support/entry';

const raised = entry('conflict-raised', 'c-1', { toolId: 'D-1', what: 'x', sentence: 'y', sent: '{}' });
const settled = entry('conflict-settled', 'c-1', { how: 'dropped', note: 'logged on D-2 already' });

// source: hand. Raised once, settled once.
it('is raised once and settled once', () => {
  const conflict = must(evolveConflict(undefined, raised));
  expect(conflict).toMatchObject({ raisedAtMs: NOW_MS, raisedById: 'robin', settled: null });
  const done = must(evolveConflict(conflict, settled));
  expect(done).toMatchObject({ settled: 'dropped', note: 'logged on D-2 already' });
  expect(sentence(evolveConflict(done, settled))).toBe('Somebody has already settled this.');
  expect(sentence(evolveConflict(conflict, raised))).toBe('This conflict is already in the record.');
  expect(sentence(evolveConflict(undefined, settled))).toBe('This conflict is not in the record.');
  expect(sentence(evolveConflict(conflict, entry('tool-freed', 'c-1', {})))).toBe(
    'An entry "tool-freed" cannot be about a conflict.',
  );
});
