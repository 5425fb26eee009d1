import { describe, expect, it } from 'vitest';
import { closeRecall } from '@/db/commands/keep-recall';
import { looksWithGauge } from '@/db/queries/gauge-looks';
import { previewRecall } from '@/db/queries/recall-preview';
import { readRecallSheet } from '@/db/queries/recall-sheet';
import { findRecall, listRecalls, listRecallsOf } from '@/db/queries/recalls';
import { CloseRecallInput } from '@/lib/shop/acceptance-input';
import { acceptSender, acceptShop, CONE, GO, NG, planLine } from '../../support/accept-shop';
import { entered, may, must, NOW_MS } from '../../support/db';
import { sender } from '../../support/send';

// source: hand. Open ones first, the last opened on top.
it('lists recalls, open ones first', () => {
  const db = acceptShop();
  const { open, close } = acceptSender(db);
  const first = must(open('G-56-GO-1', {}, NOW_MS)).recallId;
  const second = must(open('G-56-NG-1', {}, NOW_MS + 1)).recallId;
  must(close(second));
  expect(listRecalls(db).map(({ id }) => id)).toEqual([first, second]);
  expect(listRecallsOf(db, 'G-56-NG-1').map(({ id }) => id)).toEqual([second]);
  expect(findRecall(db, 'none')).toBeUndefined();
});

it('a look that names a gauge twice counts by its worse word', () => {
  const db = acceptShop();
  must(acceptSender(db).accept(1, { gauges: [GO, { ...GO, verdict: 'fail' }, NG, CONE] }));
  expect(looksWithGauge(db, 'G-56-GO-1')).toMatchObject([{ verdict: 'fail', decision: 'refused' }]);
});

describe('Q2: a cone gauge failed its calibration. Which ends are suspect?', () => {
  // source: hand. Check on 1 March; two ends before it, three and four after, four of them shipped, three checked by another.
  it('those accepted with it since the last good evidence: shipped or not, independently checked or not, with the direction', () => {
    const db = acceptShop();
    const { accept, open, ship } = acceptSender(db);
    const send = sender(db);
    must(planLine(db, 'J-2', 4));
    must(send.calibrate('CG-56H-1', { onDay: '2025-12-01', asFound: 'in', dueOnDay: '2026-12-01' }));
    must(accept(2, { gaugedAtMs: NOW_MS - 3 * 86_400_000, gaugedOnDay: '2026-02-27' }));
    must(send.calibrate('CG-56H-1', { onDay: '2026-03-01', asFound: 'in', dueOnDay: '2026-12-01' }));
    const inHouse = must(accept(3, { independentCheck: 'another-person' })).id;
    const gone = must(accept(4, { jobLineId: 'J-2.1' })).id;
    must(send.close('J-2', 'done'));
    must(ship('J-2'));
    const failed = entered();
    must(send.calibrate('CG-56H-1', { ...failed, result: 'fail', dueOnDay: null, asFound: 'out' }));
    const { recallId } = must(
      open('CG-56H-1', { foundEntryId: failed.entryId, direction: 'large' }, NOW_MS + 60_000),
    );
    const sheet = readRecallSheet(db, recallId);
    expect(sheet?.recall).toMatchObject({
      evidence: 'as-found',
      evidenceOnDay: '2026-03-01',
      cause: 'calibration-failed',
    });
    expect(
      sheet?.suspects.map(({ acceptanceId, endCount, shippedOnDay, independentlyChecked }) => ({
        ...{ acceptanceId, endCount, shipped: shippedOnDay !== null, independentlyChecked },
      })),
    ).toEqual([
      { acceptanceId: gone, endCount: 4, shipped: true, independentlyChecked: false },
      { acceptanceId: inHouse, endCount: 3, shipped: false, independentlyChecked: true },
    ]);
    expect(sheet?.meaning.sentence).toMatch(/worn open/i);
  });

  // source: hand. Closed on the evening of 2 March in a shop eight hours behind UTC, where it is the 3rd already; what left
  // on the 3rd left after it was closed.
  it('a job that left on the shop’s day after the closing had not left', () => {
    const db = acceptShop();
    const { accept, open, dispose, ship } = acceptSender(db);
    const look = must(accept(2)).id;
    const { recallId } = must(open('CG-56H-1', {}, NOW_MS + 60_000));
    must(dispose(recallId, look, 2));
    const fields = CloseRecallInput.parse({ ...entered(), recallId, conclusion: 'blued' });
    const evening = { nowMs: Date.UTC(2026, 2, 3, 4), utcOffsetMinutes: -480 };
    must(closeRecall(db, may('keep-recalls'), fields, evening));
    must(sender(db).close('J-1', 'done'));
    const sentAgain = { nowMs: Date.UTC(2026, 2, 3, 9), utcOffsetMinutes: -480 };
    expect(must(closeRecall(db, may('keep-recalls'), fields, sentAgain)).alreadyRecorded).toBe(true);
    must(ship('J-1', '2026-03-03'));
    expect(readRecallSheet(db, recallId)?.suspects).toMatchObject([{ shippedOnDay: null }]);
  });

  // source: hand. The newest certificate does not say how it was found: back to the one before.
  it('without as-found data the window goes back to the certificate before', () => {
    const db = acceptShop();
    const { accept } = acceptSender(db);
    const send = sender(db);
    must(send.calibrate('CG-56H-1', { onDay: '2026-02-01', asFound: 'in', dueOnDay: '2026-12-01' }));
    const between = must(accept(2, { gaugedAtMs: NOW_MS - 3 * 86_400_000, gaugedOnDay: '2026-02-27' })).id;
    must(send.calibrate('CG-56H-1', { onDay: '2026-03-01', dueOnDay: '2026-12-01' }));
    expect(previewRecall(db, 'CG-56H-1', null, '2026-03-02')).toMatchObject({
      window: { evidence: 'as-found', evidenceOnDay: '2026-02-01' },
      suspects: [{ acceptanceId: between, endCount: 2 }],
    });
    expect(previewRecall(db, 'nothing', null, '2026-03-02')).toBeUndefined();
  });
});
