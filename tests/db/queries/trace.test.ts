import { expect, it } from 'vitest';
import { traceEnd } from '@/db/queries/trace';
import { acceptSender, acceptShop, CONE, GO, NG } from '../../support/accept-shop';
import { must, NOW_MS } from '../../support/db';
import { sender } from '../../support/send';

// source: hand. The end is looked up as an auditor asks for it; every figure was put in above it.
it('Q31: end 2 of spool S-18: who, when, with what, traceable to what', () => {
  const db = acceptShop();
  const { accept } = acceptSender(db);
  const send = sender(db);
  must(send.calibrate('G-56-GO-1', { onDay: '2026-02-20', certificate: 'PM-7', dueOnDay: '2026-12-31' }));
  must(send.cut('D-56-01', 4));
  must(accept(1, { gauges: [{ ...GO, verdict: 'fail' }, NG, CONE] }));
  const marks = ['S-18 end 1', 'S-18 end 2'];
  must(accept(2, { firstEndNo: 1, endMarks: marks, checkKind: 'first-off' }));
  const trace = traceEnd(db, { mark: 's-18 END 2' });
  expect(trace).toMatchObject({
    ...{ jobId: 'J-1', jobLineId: 'J-1.1', endNo: 2, mark: 'S-18 end 2', heat: 'C4407', materialId: '316' },
    ...{ connectionId: '9-16-high', shippedOnDay: null, recalls: [] },
    refusedBefore: [{ endCount: 1, cause: 'go-tight' }],
  });
  expect(trace?.looks).toMatchObject([
    {
      ...{ personId: 'ash', gaugedAtMs: NOW_MS, gaugedOnDay: '2026-03-02', checkKind: 'first-off' },
      // source: formula. Four ends of 10.5 turns: 42 turns.
      die: { toolId: 'D-56-01', usedThen: { edgeNo: 1, ends: 4, exposureMicro: 42_000_000 } },
      blade: { toolId: 'B-56-01', usedThen: { edgeNo: 1, ends: 0 } },
      fluid: { toolId: 'F-L01' },
      gauges: [
        { toolId: 'G-56-GO-1', certificate: { number: 'PM-7', dueOnDay: '2026-12-31' } },
        { toolId: 'G-56-NG-1', turns: 1 },
        { toolId: 'CG-56H-1' },
      ],
    },
  ]);
  expect(traceEnd(db, { jobLineId: 'J-1.1', endNo: 2 })).toEqual(trace);
  expect(traceEnd(db, { jobLineId: 'J-1.1', endNo: 3 })).toBeUndefined();
  expect(traceEnd(db, { mark: 'S-99 end 1' })).toBeUndefined();
});

// source: hand. Gauged again and recalled: both stand on the page.
it('tells of ends gauged again, and of recalls', () => {
  const db = acceptShop();
  const { accept, open, dispose } = acceptSender(db);
  const first = must(accept(1, { firstEndNo: 1, gauges: [GO] })).id;
  const again = must(accept(1, { regaugesId: first })).id;
  const { recallId } = must(open('G-56-GO-1', {}, NOW_MS + 60_000));
  must(dispose(recallId, first, 1));
  expect(traceEnd(db, { jobLineId: 'J-1.1', endNo: 1 })).toMatchObject({
    looks: [{ acceptanceId: first }, { acceptanceId: again }],
    recalls: [
      { recallId, gaugeId: 'G-56-GO-1', status: 'open', hows: ['cleared-otherwise'] },
      { recallId, hows: [] },
    ],
  });
});
