import { expect, it } from 'vitest';
import { ENTRY, type EntryKind, subjectOf } from '@/lib/ledger/event';

it('every kind of entry is about one kind of subject', () => {
  expect(subjectOf('cut-logged')).toBe('tool');
  expect(subjectOf('life-guess-set')).toBe('guess');
  const kinds = Object.keys(ENTRY) as EntryKind[];
  expect(new Set(kinds.map(subjectOf))).toEqual(
    new Set([
      'shop',
      'person',
      'connection',
      'material',
      'part',
      'guess',
      'belief',
      'costs',
      'reading-settings',
      'gauge-settings',
      'fluid-lot',
      'job',
      'order',
      'kit',
      'conflict',
      'count',
      'tool',
      'acceptance',
      'recall',
    ]),
  );
});

it('whoever closes a job, slips or receives an order says how', () => {
  expect(ENTRY['job-closed'].payload.safeParse({ how: 'burnt' }).success).toBe(false);
  expect(ENTRY['order-received'].payload.safeParse({ quantity: 0 }).success).toBe(false);
  expect(ENTRY['order-slipped'].payload.safeParse({ expectedOnDay: '2026-02-30' }).success).toBe(false);
});
