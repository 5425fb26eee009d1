import { expect, it } from 'vitest';
import { currentEdge } from '@/lib/ledger/tool-record';
import { edgeRead } from '@/lib/ledger/tool-step/reading';
import { entry, move, toolAfter } from '../../../support/entry';

const grade = { finding: { method: 'grade', grade: 'light' }, onDay: '2026-03-09' } as const;
const land = { finding: { method: 'flank-land', landMm: 0.12 }, onDay: '2026-03-09' } as const;
const ring = { finding: { method: 'ring', go: 'tight', notGoTurns: null }, onDay: '2026-03-09' } as const;
const read = entry('edge-read', 'T-1', grade);

// source: hand. What can be read off which edge: common practice, no source.
it('keeps what was seen with all that the edge had cut by then', () => {
  const seen = edgeRead(toolAfter('die'), grade, read);
  if (!seen.ok) throw new Error(seen.refusal.sentence);
  expect(currentEdge(seen.value)?.readings).toEqual([
    { entryId: read.id, onDay: '2026-03-09', finding: grade.finding, use: [] },
  ]);
});

it('reads a land off a blade only, a ring off a die only, a grade off both', () => {
  expect(edgeRead(toolAfter('blade'), land, read).ok).toBe(true);
  expect(edgeRead(toolAfter('die'), land, read).ok).toBe(false);
  expect(edgeRead(toolAfter('die'), ring, read).ok).toBe(true);
  expect(edgeRead(toolAfter('blade'), ring, read).ok).toBe(false);
  expect(edgeRead(toolAfter('blade'), grade, read).ok).toBe(true);
});

it('has nothing to look at on a body, on a lost tool', () => {
  expect(edgeRead(toolAfter('coning-body'), grade, read).ok).toBe(false);
  expect(edgeRead(toolAfter('die', move('lost')), grade, read).ok).toBe(false);
});
