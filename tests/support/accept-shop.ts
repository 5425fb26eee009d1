import { acceptEnds } from '@/db/commands/accept-ends';
import { disposeSuspects } from '@/db/commands/dispose-suspect';
import { closeRecall, reviewRecall } from '@/db/commands/keep-recall';
import { openRecall } from '@/db/commands/open-recall';
import { setNoun } from '@/db/commands/set-noun';
import { shipJob } from '@/db/commands/ship-job';
import type { Db } from '@/db/open';
import * as input from '@/lib/shop/acceptance-input';
import {
  ASH,
  BLADE,
  DIE,
  ENV,
  entered,
  envelope,
  FLUID,
  HIGH,
  may,
  must,
  NOW_MS,
  part,
  RING,
  receive,
  testShop,
} from './db';
import { sender } from './send';

export const NOT_GO = part({ id: 'ng-56', role: 'not-go-ring', name: '9/16 NOT GO ring', hand: 'LH' });
export const CONE_GAUGE = part({
  id: 'cg-56h',
  role: 'cone-gauge',
  name: '9/16 high cone gauge',
  fitsConnectionIds: [HIGH.id],
});
export const RH_RING = part({ id: 'go-56-rh', role: 'go-ring', name: '9/16 GO ring RH', hand: 'RH' });
export const QUARTER_RING = part({
  id: 'go-25',
  role: 'go-ring',
  name: '1/4 GO ring',
  hand: 'LH',
  fitsConnectionIds: ['1-4-medium'],
});

type Fields = Readonly<Record<string, unknown>>;

export const GO = { toolId: 'G-56-GO-1', role: 'go-ring', verdict: 'pass', turns: null };
export const NG = { toolId: 'G-56-NG-1', role: 'not-go-ring', verdict: 'pass', turns: 1 };
export const CONE = { toolId: 'CG-56H-1', role: 'cone-gauge', verdict: 'pass', turns: null };

/** A line of twenty 9/16 high-pressure ends, its die, blade and gauges, everything in date. The size's rule: three turns. */
export function acceptShop(): Db {
  const db = testShop();
  for (const value of [NOT_GO, CONE_GAUGE, RH_RING, QUARTER_RING])
    must(setNoun(db, may('set-up-shop'), { noun: 'part', value, envelope: envelope() }, ENV));
  const dueOnDay = '2026-12-31';
  receive(db, 'D-56-01', DIE);
  receive(db, 'B-56-01', BLADE);
  receive(db, 'F-L01', FLUID);
  for (const id of ['G-56-GO-1', 'G-56-GO-2']) receive(db, id, RING, { dueOnDay });
  for (const id of ['G-56-NG-1', 'G-56-NG-2']) receive(db, id, NOT_GO, { dueOnDay });
  for (const id of ['CG-56H-1', 'CG-56H-2']) receive(db, id, CONE_GAUGE, { dueOnDay });
  receive(db, 'G-56-GO-RH', RH_RING, { dueOnDay });
  receive(db, 'G-25-GO-1', QUARTER_RING, { dueOnDay });
  must(planLine(db, 'J-1', 20));
  return db;
}

/** A job of one line of 9/16 high-pressure ends in 316. */
export function planLine(db: Db, id: string, ends: number, over: Fields = {}) {
  const line = {
    ...{ lineNo: 1, connectionId: HIGH.id, materialId: '316', heat: 'C4407', ends, value: 'ordinary' },
    ...{ operations: ['cone', 'thread'], startOnDay: '2026-03-02', dueOnDay: '2026-03-13' },
  };
  return sender(db).plan({ id, title: '', lines: [line], ...over });
}

/** A look at ends as the screen sends it; `over` says what is not plain. */
export function lookAt(endCount: number, over: Fields = {}) {
  return {
    ...entered(),
    ...{ jobLineId: 'J-1.1', connectionId: HIGH.id, materialId: '316', heat: 'C4407' },
    ...{ firstEndNo: null, endCount, endMarks: [], operations: ['cone', 'thread'] },
    ...{ gauges: [GO, NG, CONE], finish: 'smooth', coneContact: 'nose-ring', exposedThreads: 1.5 },
    ...{ boreClear: true, otherFault: null, dieId: 'D-56-01', bladeId: 'B-56-01', fluidId: 'F-L01' },
    ...{ independentCheck: 'no', checkKind: 'each', regaugesId: null, gaugedOnDay: '2026-03-02' },
    ...over,
  };
}

/** The commands about accepted ends and recalls, as the screens call them; `nowMs` where it is not the test shop's hour. */
export function acceptSender(db: Db) {
  const at = (nowMs: number) => ({ nowMs });
  return {
    accept: (endCount: number, over: Fields = {}, nowMs = NOW_MS) =>
      acceptEnds(db, may('accept-ends', ASH), input.AcceptEndsInput.parse(lookAt(endCount, over)), at(nowMs)),
    ship: (jobId: string, onDay = '2026-03-02', over: Fields = {}) =>
      shipJob(db, may('ship-job'), input.ShipJobInput.parse({ ...entered(), jobId, onDay, ...over }), ENV),
    open: (gaugeId: string, over: Fields = {}, nowMs = NOW_MS) => {
      const plain = { direction: 'unknown', found: 'out', foundEntryId: null, foundOnDay: '2026-03-02' };
      const fields = input.OpenRecallInput.parse({ ...entered(), gaugeId, ...plain, ...over });
      return openRecall(db, may('keep-recalls'), fields, at(nowMs));
    },
    review: (recallId: string, over: Fields = {}, nowMs = NOW_MS) => {
      const fields = input.ReviewRecallInput.parse({ ...entered(), recallId, ...over });
      return reviewRecall(db, may('keep-recalls'), fields, at(nowMs));
    },
    dispose: (recallId: string, acceptanceId: string, endCount: number, over: Fields = {}) => {
      const items = [{ acceptanceId, endCount }];
      const plain = { how: 'cleared-otherwise', gaugeId: null, evidence: 'blued', onDay: '2026-03-02' };
      const fields = { ...entered(), recallId, items, ...plain, ...over };
      return disposeSuspects(db, may('keep-recalls'), input.DisposeSuspectsInput.parse(fields), ENV);
    },
    close: (recallId: string, conclusion = 'all looked at', over: Fields = {}) => {
      const fields = input.CloseRecallInput.parse({ ...entered(), recallId, conclusion, ...over });
      return closeRecall(db, may('keep-recalls'), fields, ENV);
    },
  };
}
