import { describe, expect, it } from 'vitest';
import { findLineStanding } from '@/db/queries/acceptance';
import { listOpenFindings } from '@/db/queries/gauge-looks';
import { previewRecall } from '@/db/queries/recall-preview';
import { readRecallSheet } from '@/db/queries/recall-sheet';
import { findRecall, listRecalls } from '@/db/queries/recalls';
import { findTool } from '@/db/queries/tools';
import { acceptSender, acceptShop, CONE, GO, NG } from '../../support/accept-shop';
import { entered, must, NOW_MS, sentence } from '../../support/db';
import { sender } from '../../support/send';

const DAY_MS = 86_400_000;
const GAUGE = 'G-56-GO-1';
const other = [{ ...GO, toolId: 'G-56-GO-2' }, NG, CONE];

/** Looks before and after a good calibration, one with another ring, one refused; then the ring fails. */
function foundOut() {
  const db = acceptShop();
  const { accept, open } = acceptSender(db);
  const send = sender(db);
  const old = must(accept(2, { gaugedAtMs: NOW_MS - 3 * DAY_MS, gaugedOnDay: '2026-02-27' })).id;
  must(send.calibrate(GAUGE, { onDay: '2026-02-28', asFound: 'in', dueOnDay: '2026-12-31' }));
  const late = { gaugedAtMs: NOW_MS - 3_600_000 };
  const first = must(accept(3, late)).id;
  const second = must(accept(4, { ...late, independentCheck: 'another-person' })).id;
  must(accept(5, { ...late, gauges: other }));
  const refused = must(accept(1, { ...late, gauges: [{ ...GO, verdict: 'fail' }, NG, CONE] })).id;
  const failed = entered();
  must(send.calibrate(GAUGE, { ...failed, result: 'fail', dueOnDay: null }));
  return { db, open, send, old, first, second, refused, failedId: failed.entryId };
}

// source: hand. Which looks lie between the calibration of 28 February and the failure is plain from the list above.
describe('opening a recall', () => {
  it('sets the gauge aside and lists what was accepted with it since its last good evidence, not since the due date', () => {
    const { db, open, old, first, second, refused, failedId } = foundOut();
    expect(listOpenFindings(db)).toMatchObject([{ gaugeId: GAUGE, entryId: failedId, kind: 'calibration' }]);
    expect(previewRecall(db, GAUGE, failedId, '2026-03-02')).toMatchObject({
      suspects: [
        { acceptanceId: first, endCount: 3 },
        { acceptanceId: second, endCount: 4 },
      ],
    });
    const { recallId } = must(open(GAUGE, { foundEntryId: failedId, direction: 'large' }));
    const recall = findRecall(db, recallId);
    expect(recall).toMatchObject({
      ...{ id: `${GAUGE}.R1`, cause: 'calibration-failed', status: 'open', evidence: 'as-found' },
      ...{ evidenceOnDay: '2026-02-28', refusedIds: [refused] },
    });
    expect(new Set(recall?.suspects.map(({ acceptanceId }) => acceptanceId))).toEqual(
      new Set([first, second]),
    );
    expect(recall?.suspects.map(({ acceptanceId }) => acceptanceId)).not.toContain(old);
    expect(findTool(db, GAUGE)?.state).toBe('quarantined');
    expect(listOpenFindings(db)).toEqual([]);
    expect(findLineStanding(db, 'J-1.1')).toMatchObject({ acceptedEnds: 14, releasableEnds: 7 });
  });

  it('says what the direction means, and which ends were checked independently', () => {
    const { db, open, second, failedId } = foundOut();
    const { recallId } = must(open(GAUGE, { foundEntryId: failedId, direction: 'large' }));
    const sheet = readRecallSheet(db, recallId);
    expect(sheet?.meaning).toMatchObject({ effect: 'oversize-passed', urgency: 2 });
    expect(sheet?.suspects.filter((row) => row.independentlyChecked).map((row) => row.acceptanceId)).toEqual([
      second,
    ]);
    expect(sheet?.suspects.every(({ shippedOnDay }) => shippedOnDay === null)).toBe(true);
    expect(sheet?.refused).toHaveLength(1);
  });

  it('found at the bench: quarantined in the same step, and all of it or nothing', () => {
    const db = acceptShop();
    const { accept, open } = acceptSender(db);
    must(accept(3));
    const same = entered();
    const { recallId } = must(open(GAUGE, { ...same, direction: 'unknown' }, NOW_MS + 60_000));
    expect(findTool(db, GAUGE)).toMatchObject({ state: 'quarantined', stateReason: 'out' });
    expect(findRecall(db, recallId)).toMatchObject({
      cause: 'found-by-hand',
      evidence: 'none',
      windowFromMs: null,
    });
    expect(must(open(GAUGE, { ...same, direction: 'unknown' }))).toMatchObject({
      recallId,
      alreadyRecorded: true,
    });
    expect(sentence(open(GAUGE))).toBe(`Recall ${GAUGE}.R1 was opened for this already.`);
    expect(listRecalls(db)).toHaveLength(1);
  });

  it('refuses what is no gauge, an entry that shows no fault, and a gauge nobody knows', () => {
    const db = acceptShop();
    const { open } = acceptSender(db);
    const good = entered();
    must(sender(db).calibrate(GAUGE, good));
    expect(sentence(open('D-56-01'))).toMatch(/not kept under calibration/);
    expect(sentence(open(GAUGE, { foundEntryId: good.entryId }))).toMatch(/does not say that/);
    expect(sentence(open('G-99'))).toMatch(/No tool G-99/);
    expect(listRecalls(db)).toEqual([]);
  });

  it('ends that come in late join the recall, and open it again when it was closed', () => {
    const { db, open, first, second, failedId } = foundOut();
    const { accept, dispose, close } = acceptSender(db);
    const { recallId } = must(open(GAUGE, { foundEntryId: failedId }));
    must(dispose(recallId, first, 3));
    must(dispose(recallId, second, 4));
    must(close(recallId));
    const { id } = must(accept(2, { gaugedAtMs: NOW_MS - 7_200_000 }, NOW_MS + DAY_MS));
    expect(findRecall(db, recallId)).toMatchObject({ status: 'open' });
    expect(findRecall(db, recallId)?.suspects.at(-1)).toEqual({ acceptanceId: id, endCount: 2 });
  });
});
