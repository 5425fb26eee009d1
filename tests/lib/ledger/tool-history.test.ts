import { expect, it } from 'vitest';
import { evolveTool } from '@/lib/ledger/tool-history';
import { sentence } from '../../support/db';
import { entry, ISSUE, receipt, toolAfter } from '../../support/entry';

it('a tool begins with its receipt, once', () => {
  const first = entry('tool-received', 'T-1', receipt('die'));
  expect(evolveTool(undefined, first)).toMatchObject({ ok: true, value: { id: 'T-1', state: 'in-crib' } });
  expect(sentence(evolveTool(toolAfter('die'), first))).toBe('T-1 is already in the record.');
  expect(sentence(evolveTool(undefined, ISSUE))).toBe('No tool T-1 is in the record.');
});

it('an entry about something else is refused', () => {
  expect(sentence(evolveTool(toolAfter('die'), entry('job-closed', 'T-1', { how: 'done' })))).toBe(
    'An entry "job-closed" cannot be about a tool.',
  );
});
