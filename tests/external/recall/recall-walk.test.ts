import fc from 'fast-check';
import { expect, it } from 'vitest';
import { acceptEnds } from '@/db/commands/accept-ends';
import { checkGauge } from '@/db/commands/keep-gauge';
import { reviewRecall } from '@/db/commands/keep-recall';
import { openRecall } from '@/db/commands/open-recall';
import { recordCalibration } from '@/db/commands/record-calibration';
import { reverseEntry } from '@/db/commands/reverse-entry';
import { setNoun } from '@/db/commands/set-noun';
import { replay } from '@/db/ledger/replay';
import type { Db } from '@/db/open';
import { findRecall, listRecallsOf } from '@/db/queries/recalls';
import { AcceptEndsInput, OpenRecallInput, ReviewRecallInput } from '@/lib/shop/acceptance-input';
import { RecordCalibrationInput, ReverseEntryInput } from '@/lib/shop/command-input';
import { CheckGaugeInput } from '@/lib/shop/gauge-input';
import { acceptShop, CONE, GO, lookAt, NG, planLine } from '../../support/accept-shop';
import { ASH, dump, ENV, entered, envelope, may, must, part, receive, testDb } from '../../support/db';
import { suspectsByWalk } from './walk';

const DAY_MS = 86_400_000;
/** A day in the test shop’s year; every act has an hour of its own, so that the order is plain. */
const T0 = Date.UTC(2026, 2, 3, 6);
const GAUGE = 'G-56-GO-1';
const PLUG = part({ id: 'sp-56', role: 'setting-plug', name: '9/16 setting plug', hand: 'LH' });

const deed = fc.oneof(
  {
    weight: 14,
    arbitrary: fc.record({
      do: fc.constant('look' as const),
      ends: fc.integer({ min: 1, max: 6 }),
      gauge: fc.constantFrom(GAUGE, GAUGE, GAUGE, 'G-56-GO-2'),
      verdict: fc.constantFrom('pass', 'pass', 'pass', 'fail', 'not-used'),
      lateDays: fc.constantFrom(0, 0, 0, 1, 4),
    }),
  },
  {
    weight: 3,
    arbitrary: fc.record({
      do: fc.constant('calibrate' as const),
      asFound: fc.constantFrom('in', 'in', 'not-taken', undefined),
      onDayAgo: fc.constantFrom(0, 0, 1, 3),
    }),
  },
  {
    weight: 3,
    arbitrary: fc.record({
      do: fc.constant('check' as const),
      qualifies: fc.boolean(),
      plug: fc.constantFrom('SP-56-1', 'SP-56-1', 'SP-56-2'),
    }),
  },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('plug-good' as const) }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('plug-out' as const) }) },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('reverse' as const), which: fc.nat(40) }) },
);
type Deed = typeof deed extends fc.Arbitrary<infer D> ? D : never;

const history = fc.record({
  deeds: fc.array(deed, { minLength: 10, maxLength: 30, size: 'max' }),
  finding: fc.constantFrom('calibration', 'check', 'by-hand'),
});

function shop(): Db {
  const db = acceptShop();
  must(planLine(db, 'J-2', 400));
  must(setNoun(db, may('set-up-shop'), { noun: 'part', value: PLUG, envelope: envelope() }, ENV));
  for (const id of ['SP-56-1', 'SP-56-2']) receive(db, id, PLUG, { dueOnDay: '2027-12-31' });
  return db;
}

const dayOf = (ms: number) => new Date(ms).toISOString().slice(0, 10);

/** Does one thing at one moment; what the shop refuses did not happen. */
function play(db: Db, one: Deed, nowMs: number, past: readonly string[]): string | undefined {
  const id = entered().entryId;
  const about = { entryId: id, deviceAtMs: nowMs, reason: 'x' };
  const env = { nowMs };
  const result = (() => {
    if (one.do === 'look') {
      const gaugedAtMs = nowMs - one.lateDays * DAY_MS;
      const go = { ...GO, toolId: one.gauge, verdict: one.verdict };
      const look = {
        ...lookAt(one.ends, { jobLineId: 'J-2.1', gauges: [go, NG, CONE] }),
        ...{ ...about, gaugedAtMs, gaugedOnDay: dayOf(gaugedAtMs) },
      };
      return acceptEnds(db, may('accept-ends', ASH), AcceptEndsInput.parse(look), env);
    }
    if (one.do === 'calibrate') {
      const input = RecordCalibrationInput.parse({
        ...{ ...about, toolId: GAUGE, onDay: dayOf(nowMs - one.onDayAgo * DAY_MS) },
        ...{ result: 'pass', dueOnDay: '2027-12-31', certificate: '', asFound: one.asFound },
      });
      return recordCalibration(db, may('record-calibration'), input, env);
    }
    if (one.do === 'check') {
      const input = CheckGaugeInput.parse({
        ...{ ...about, toolId: GAUGE, onDay: dayOf(nowMs), result: 'pass' },
        ...{ qualifies: one.qualifies, againstToolId: one.plug },
      });
      return checkGauge(db, may('check-gauge'), input, env);
    }
    if (one.do === 'plug-good') {
      const good = { result: 'pass', dueOnDay: '2027-12-31', certificate: '', asFound: 'in' };
      const fields = { ...about, toolId: 'SP-56-1', onDay: dayOf(nowMs), ...good };
      return recordCalibration(db, may('record-calibration'), RecordCalibrationInput.parse(fields), env);
    }
    if (one.do === 'plug-out') {
      const found = { direction: 'large', found: 'out', foundEntryId: null, foundOnDay: dayOf(nowMs) };
      const fields = OpenRecallInput.parse({ ...about, gaugeId: 'SP-56-1', ...found });
      return openRecall(db, may('keep-recalls'), fields, env);
    }
    const targetId = past[past.length - 1 - (one.which % Math.max(1, past.length))];
    if (targetId === undefined) return undefined;
    return reverseEntry(db, may('reverse-entry'), ReverseEntryInput.parse({ ...about, targetId }), env);
  })();
  return result?.ok === true ? id : undefined;
}

/** Looks at the windows of the plug’s recalls again: what one rested on may have been taken back since. */
function reviewPlugs(db: Db, nowMs: number): void {
  for (const { id: recallId } of listRecallsOf(db, 'SP-56-1')) {
    const input = ReviewRecallInput.parse({ ...entered(), recallId });
    reviewRecall(db, may('keep-recalls'), input, { nowMs });
  }
}

/** Finds the gauge out, and opens the recall for it. */
function findOut(db: Db, finding: string, nowMs: number): string {
  const about = { entryId: entered().entryId, deviceAtMs: nowMs, reason: '' };
  const onDay = dayOf(nowMs);
  const env = { nowMs };
  if (finding === 'calibration') {
    const failed = { ...about, toolId: GAUGE, onDay, result: 'fail', dueOnDay: null, certificate: '' };
    must(recordCalibration(db, may('record-calibration'), RecordCalibrationInput.parse(failed), env));
  }
  if (finding === 'check') {
    const failed = {
      ...about,
      toolId: GAUGE,
      onDay,
      result: 'fail',
      qualifies: true,
      againstToolId: 'SP-56-2',
    };
    must(checkGauge(db, may('check-gauge'), CheckGaugeInput.parse(failed), env));
  }
  const foundEntryId = finding === 'by-hand' ? null : about.entryId;
  const open = {
    ...entered(),
    gaugeId: GAUGE,
    direction: 'large',
    found: 'out',
    foundEntryId,
    foundOnDay: onDay,
  };
  return must(openRecall(db, may('keep-recalls'), OpenRecallInput.parse(open), { nowMs: nowMs + 60_000 }))
    .recallId;
}

// source: identity. The recall lists what a plain walk over the raw entries of the ledger lists, written without our code.
it('a recall lists exactly what a plain walk of the ledger lists, whatever happened', () => {
  const seen = { listed: 0, reversed: 0, beyondFirstCertificate: 0, doubted: 0 };
  fc.assert(
    fc.property(history, ({ deeds, finding }) => {
      const db = shop();
      const past: string[] = [];
      deeds.forEach((one, no) => {
        const id = play(db, one, T0 + no * (DAY_MS / 3), past);
        if (id === undefined) return;
        if (one.do === 'reverse') seen.reversed += 1;
        else past.push(id);
      });
      const foundAtMs = T0 + deeds.length * (DAY_MS / 3) + DAY_MS;
      reviewPlugs(db, foundAtMs);
      const recall = findRecall(db, findOut(db, finding, foundAtMs));
      const walked = suspectsByWalk(db, {
        gaugeId: GAUGE,
        foundAtMs,
        foundEntryId: recall?.foundEntryId ?? null,
      });
      expect(new Map(recall?.suspects.map(({ acceptanceId, endCount }) => [acceptanceId, endCount]))).toEqual(
        walked.suspects,
      );
      expect(new Set(recall?.refusedIds)).toEqual(walked.refused);
      const again = testDb();
      replay(db, again);
      expect(dump(again)).toEqual(dump(db));
      seen.listed += walked.suspects.size;
      if (walked.skippedCertificate) seen.beyondFirstCertificate += 1;
      if (walked.skippedCheck) seen.doubted += 1;
    }),
    { numRuns: 150, seed: 4711 },
  );
  expect(seen.listed).toBeGreaterThan(200);
  expect(seen.reversed).toBeGreaterThan(30);
  // Enough of each kind that a wrong window would show.
  expect(seen.beyondFirstCertificate).toBeGreaterThan(5);
  expect(seen.doubted, 'checks on a plug found out, since').toBeGreaterThan(5);
});
