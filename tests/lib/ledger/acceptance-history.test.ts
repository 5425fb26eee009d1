import { expect, it } from 'vitest';
import { evolveAcceptance } from '@/lib/ledger/acceptance-history';
import type { Entry } from '@/lib/ledger/event';
import { AcceptanceSchema } from '@/lib/shop/acceptance';
import { must, sentence } from '../../support/db';

const payload = AcceptanceSchema.parse({
  ...{
    jobLineId: null,
    connectionId: 'c',
    materialId: 'm',
    heat: '',
    firstEndNo: null,
    endCount: 2,
    endMarks: [],
  },
  ...{
    operations: ['thread'],
    gauges: [],
    finish: 'smooth',
    coneContact: 'not-checked',
    exposedThreads: null,
  },
  ...{ boreClear: true, otherFault: null, dieId: null, bladeId: null, fluidId: null, independentCheck: 'no' },
  ...{ checkKind: 'each', regaugesId: null, gaugedAtMs: Date.UTC(2026, 2, 2), gaugedOnDay: '2026-03-02' },
  ...{
    rule: null,
    dieThen: null,
    bladeThen: null,
    decision: 'accepted',
    cause: null,
    gaugesMissing: ['go-ring'],
  },
});
const entry = (over: Partial<typeof payload> = {}): Entry => ({
  ...{
    id: 'entry-01',
    subjectId: 'entry-01',
    deviceAtMs: 1,
    reason: '',
    seq: 1,
    actorId: 'ash',
    serverAtMs: 9,
  },
  ...{ kind: 'ends-accepted', payload: { ...payload, ...over } },
});

// source: hand. One entry makes the record; a second about the same ends is refused.
it('an acceptance is one entry, with who looked', () => {
  const record = must(evolveAcceptance(undefined, entry()));
  expect(record).toMatchObject({ id: 'entry-01', personId: 'ash', recordedAtMs: 9, endCount: 2 });
  expect(sentence(evolveAcceptance(record, entry()))).toMatch(/already in the record/);
  expect(
    sentence(evolveAcceptance(undefined, { ...entry(), kind: 'job-closed', payload: { how: 'done' } })),
  ).toMatch(/cannot be about/);
});

it('marks are one for each end, and none twice', () => {
  expect(sentence(evolveAcceptance(undefined, entry({ endMarks: ['S-1'] })))).toBe('1 marks for 2 ends.');
  expect(sentence(evolveAcceptance(undefined, entry({ endMarks: ['S-1', 'S-1'] })))).toMatch(/twice/);
  expect(must(evolveAcceptance(undefined, entry({ endMarks: ['S-1', 'S-2'] }))).endMarks).toHaveLength(2);
});
