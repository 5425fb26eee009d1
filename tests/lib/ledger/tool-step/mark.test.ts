import { expect, it } from 'vitest';
import { toolMarked } from '@/lib/ledger/tool-step/mark';
import { entry, move, toolAfter } from '../../../support/entry';

const mark = { how: 'etched', codeKind: 'data-matrix', readBack: true, onDay: '2026-03-02' } as const;
const marked = entry('tool-marked', 'T-1', mark);

// source: hand. A new mark says nothing of where a tool stands or what it has cut.
it('changes nothing but the history', () => {
  const die = toolAfter('die');
  expect(toolMarked(die, mark, marked)).toEqual({ ok: true, value: die });
  expect(toolMarked(toolAfter('die', move('quarantined')), mark, marked).ok).toBe(true);
});

// source: hand.
it('is not put on what is gone', () => {
  expect(toolMarked(toolAfter('die', move('lost')), mark, marked).ok).toBe(false);
  expect(toolMarked(toolAfter('die', move('scrapped')), mark, marked).ok).toBe(false);
});
