import { describe, expect, it } from 'vitest';
import { write } from '@/db/ledger/write';
import { findAcceptance, findLineStanding, listAcceptances, nextEndNo } from '@/db/queries/acceptance';
import { acceptSender, acceptShop, CONE, GO, NG, planLine } from '../../support/accept-shop';
import { entered, may, must, NOW_MS, sentence } from '../../support/db';
import { sender } from '../../support/send';

const DAY_MS = 86_400_000;

// source: hand. Twenty ends on the line; what is accepted, refused and left is counted by hand in each case.
describe('accepting ends', () => {
  it('records three ends with their gauges, the rule, and what die and blade had cut by then', () => {
    const db = acceptShop();
    must(sender(db).cut('D-56-01', 6));
    const { id } = must(acceptSender(db).accept(3, { firstEndNo: 1 }));
    const look = findAcceptance(db, id);
    expect(look).toMatchObject({
      ...{ decision: 'accepted', cause: null, gaugesMissing: [], personId: 'ash', gaugedAtMs: NOW_MS },
      rule: { notGoTurnsMax: 3, whose: 'the size table', source: 'size' },
      // source: formula. Six ends of 10.5 turns: 63 turns, in millionths.
      dieThen: { edgeNo: 1, ends: 6, exposureMicro: 63_000_000 },
      bladeThen: { edgeNo: 1, ends: 0, exposureMicro: 0 },
    });
    expect(findLineStanding(db, 'J-1.1')).toMatchObject({ acceptedEnds: 3, releasableEnds: 3, held: [] });
    expect(nextEndNo(db, 'J-1.1')).toBe(4);
  });

  it('the same look sent twice counts once; its ID with another count is refused', () => {
    const db = acceptShop();
    const { accept } = acceptSender(db);
    const same = entered();
    must(accept(3, same));
    expect(
      accept(3, { ...same, gauges: [{ ...GO, toolId: 'g-56-g0-1' }, NG, CONE] }, NOW_MS + DAY_MS),
    ).toMatchObject({
      ok: true,
      value: { alreadyRecorded: true },
    });
    expect(sentence(accept(4, same))).toMatch(/already used for something else/);
    expect(findLineStanding(db, 'J-1.1').acceptedEnds).toBe(3);
  });

  it('takes no more ends than the line has, nor a mark twice', () => {
    const db = acceptShop();
    const { accept } = acceptSender(db);
    must(accept(2, { endMarks: ['S-18 end 1', 'S-18 end 2'] }));
    expect(sentence(accept(1, { endMarks: ['S-18 end 2'] }))).toMatch(/accepted already/);
    must(accept(17));
    expect(sentence(accept(2))).toBe('J-1.1 has 20 ends; 19 are accepted, so 2 more would be too many.');
    must(accept(1));
    expect(sentence(accept(1))).toMatch(/All 20 ends of J-1.1 are accepted already/);
  });

  it('an end taken back no longer counts, and both entries stay', () => {
    const db = acceptShop();
    const { id } = must(acceptSender(db).accept(3));
    must(sender(db).reverse(id));
    expect(listAcceptances(db, 'J-1.1')).toEqual([]);
    expect(findLineStanding(db, 'J-1.1').acceptedEnds).toBe(0);
  });

  it.each([
    ['a gauge nobody knows', { gauges: [{ ...GO, toolId: 'G-99' }] }, /No gauge G-99/],
    ['a right-hand ring', { gauges: [{ ...GO, toolId: 'G-56-GO-RH' }, NG, CONE] }, /^HAND MISMATCH/],
    ['a ring of another size', { gauges: [{ ...GO, toolId: 'G-25-GO-1' }, NG, CONE] }, /is not for 9⁄16/],
    [
      'a GO ring used as NOT GO',
      { gauges: [GO, { ...NG, toolId: 'G-56-GO-2' }] },
      /is a GO ring, not a NOT GO ring/,
    ],
    ['a die that is no die', { dieId: 'B-56-01' }, /not a die/],
    ['a blade that nobody knows', { bladeId: 'B-99' }, /No blade B-99/],
    ['a fluid that is none', { fluidId: 'D-56-01' }, /not a fluid/],
    ['a bore that nobody looked through', { boreClear: false }, /Look through the bore/],
    [
      'a line of another size',
      { jobLineId: 'J-1.1', connectionId: '9-16-medium' },
      /another size or material/,
    ],
    ['a line that is none', { jobLineId: 'J-9.1' }, /No line J-9.1/],
    ['fewer marks than ends', { endMarks: ['S-1 end 1'] }, /1 marks for 3 ends/],
  ])('stops at %s and records nothing', (_what, over, said) => {
    const db = acceptShop();
    expect(sentence(acceptSender(db).accept(3, over))).toMatch(said);
    expect(listAcceptances(db, 'J-1.1')).toEqual([]);
  });

  it('stops at a gauge set aside or out of date; to the end of its due day it may be used', () => {
    const db = acceptShop();
    const { accept } = acceptSender(db);
    const send = sender(db);
    must(send.calibrate('G-56-GO-1', { onDay: '2026-02-01', dueOnDay: '2026-03-02' }));
    must(accept(1));
    const tomorrow = { gaugedOnDay: '2026-03-03' };
    expect(sentence(accept(1, tomorrow, NOW_MS + DAY_MS))).toMatch(/good to the end of 2 Mar 2026/);
    must(send.move('G-56-GO-2', 'quarantined'));
    expect(sentence(accept(1, { gauges: [{ ...GO, toolId: 'G-56-GO-2' }, NG, CONE] }))).toMatch(
      /G-56-GO-2 is quarantined. Do not accept with it/,
    );
  });

  it('the job’s own rule goes before the size table', () => {
    const db = acceptShop();
    const acceptanceRule = { notGoTurnsMax: 1, whose: 'drawing 12' };
    must(planLine(db, 'J-2', 5, { acceptanceRule }));
    const { id } = must(
      acceptSender(db).accept(1, { jobLineId: 'J-2.1', gauges: [GO, { ...NG, turns: 1.5 }, CONE] }),
    );
    expect(findAcceptance(db, id)).toMatchObject({
      ...{ decision: 'refused', cause: 'not-go-runs-on' },
      rule: { notGoTurnsMax: 1, whose: 'drawing 12', source: 'job' },
    });
  });

  it('a late entry counts as of its device’s moment for a week and no longer', () => {
    const db = acceptShop();
    const { accept } = acceptSender(db);
    const late = { gaugedAtMs: NOW_MS - 2 * DAY_MS, gaugedOnDay: '2026-02-28' };
    const { id } = must(accept(1, late));
    expect(findAcceptance(db, id)).toMatchObject({ gaugedAtMs: NOW_MS - 2 * DAY_MS, recordedAtMs: NOW_MS });
    const old = { gaugedAtMs: NOW_MS - 8 * DAY_MS, gaugedOnDay: '2026-02-22' };
    expect(sentence(accept(1, old))).toMatch(/Gauge them again/);
  });

  it('a gauge that has gauged as many ends as its interval allows stops the line', () => {
    const db = acceptShop();
    const { accept } = acceptSender(db);
    const gauge = sender(db);
    must(gauge.calibrate('G-56-GO-1', { onDay: '2026-03-01', dueOnDay: '2026-12-31' }));
    must(intervalOfEnds(db, 'G-56-GO-1', 5));
    must(accept(5));
    expect(sentence(accept(1))).toMatch(/G-56-GO-1 has gauged as many ends/);
    must(accept(1, { gauges: [{ ...GO, toolId: 'G-56-GO-2' }, NG, CONE] }));
  });
});

function intervalOfEnds(db: ReturnType<typeof acceptShop>, toolId: string, intervalEnds: number) {
  const draft = {
    ...{ id: entered().entryId, subjectId: toolId, deviceAtMs: NOW_MS, reason: 'much used' },
    payload: { intervalDays: null, intervalEnds, method: 'in-use' },
  } as const;
  return write(db, may('record-calibration'), { nowMs: NOW_MS }, (ledger) =>
    ledger.record({ ...draft, kind: 'gauge-interval-set' }),
  );
}
