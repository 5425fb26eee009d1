import { beforeEach, describe, expect, it } from 'vitest';
import { checkGauge } from '@/db/commands/keep-gauge';
import { setNoun } from '@/db/commands/set-noun';
import type { Db } from '@/db/open';
import { listEvidence } from '@/db/queries/gauges';
import { countedEvidence, gaugesOfMaster } from '@/db/queries/master-recalls';
import { previewRecall } from '@/db/queries/recall-preview';
import { findRecall } from '@/db/queries/recalls';
import { findTool } from '@/db/queries/tools';
import type { RecallRecord } from '@/lib/ledger/recall-history';
import { CheckGaugeInput } from '@/lib/shop/gauge-input';
import { acceptSender, acceptShop, CONE, GO, NG } from '../../support/accept-shop';
import { entered, envelope, may, must, NOW_MS, part, receive, sentence } from '../../support/db';
import { replayedEqualsKept } from '../../support/replayed';
import { sender } from '../../support/send';

const DAY_MS = 86_400_000;
const PLUG = part({ id: 'plug-56', role: 'setting-plug', name: '9/16 setting plug', hand: 'LH' });
const RING = 'G-56-GO-1';
const TWIN = 'G-56-GO-2';
const on = (daysAgo: number) => new Date(NOW_MS - daysAgo * DAY_MS).toISOString().slice(0, 10);
const NOW = { onDay: on(0), atMs: NOW_MS + DAY_MS };

let db: Db;
let acts: ReturnType<typeof acceptSender>;
let send: ReturnType<typeof sender>;

/** A check written down on its own day. */
function check(toolId: string, daysAgo: number, over: object = {}) {
  const plain = { onDay: on(daysAgo), result: 'pass', qualifies: true, againstToolId: 'SP-56-1' };
  const input = CheckGaugeInput.parse({ ...entered(), toolId, ...plain, ...over });
  return must(checkGauge(db, may('check-gauge'), input, { nowMs: NOW_MS - daysAgo * DAY_MS }));
}
/** So many ends gauged with a GO ring so many days ago. */
function accept(ends: number, daysAgo: number, ring = RING) {
  const gauges = [{ ...GO, toolId: ring }, NG, CONE];
  const when = NOW_MS - daysAgo * DAY_MS;
  return must(acts.accept(ends, { gauges, gaugedOnDay: on(daysAgo), gaugedAtMs: when }, when)).id;
}
const gauges = (recall: RecallRecord | undefined) =>
  recall === undefined ? [] : gaugesOfMaster(db, recall, NOW);

beforeEach(() => {
  db = acceptShop();
  acts = acceptSender(db);
  send = sender(db);
  must(
    setNoun(db, may('set-up-shop'), { noun: 'part', value: PLUG, envelope: envelope() }, { nowMs: NOW_MS }),
  );
  for (const id of ['SP-56-1', 'SP-56-2']) receive(db, id, PLUG, { dueOnDay: '2028-03-01' });
});

// source: hand. TRADE §1.4: the suspect window opens at the last good evidence; a check on a plug that was out is none. The
// ring was found good by a laboratory 30 days ago and checked on the plug 20 days ago; the plug was good 25 days ago.
describe('a setting plug found out', () => {
  function plugFoundOut() {
    must(send.calibrate(RING, { onDay: on(30), asFound: 'in', dueOnDay: '2026-12-31' }));
    must(send.calibrate(TWIN, { onDay: on(30), asFound: 'in', dueOnDay: '2026-12-31' }));
    must(send.calibrate('SP-56-1', { onDay: on(25), asFound: 'in', dueOnDay: '2028-01-31' }));
    const before = accept(2, 28);
    check(RING, 20);
    check(TWIN, 20);
    const after = accept(3, 10);
    check(TWIN, 5, { againstToolId: 'SP-56-2' });
    const { recallId } = must(acts.open('SP-56-1', { direction: 'large', found: 'Worn over size.' }));
    return { recallId, before, after };
  }

  it('lists the rings checked on it since its last good evidence, and which of them something else cleared', () => {
    const { recallId } = plugFoundOut();
    const recall = findRecall(db, recallId);
    expect(recall).toMatchObject({ evidence: 'as-found', evidenceOnDay: on(25), suspects: [] });
    expect(gauges(recall)).toMatchObject([
      { gaugeId: RING, standing: 'in-doubt', endsInDoubt: 5, recallId: null },
      { gaugeId: TWIN, standing: 'cleared', endsInDoubt: 0 },
    ]);
  });

  it('a recall of the ring follows: set aside, with the ends since it was good by something else', () => {
    const { recallId: masterRecallId, before, after } = plugFoundOut();
    expect(previewRecall(db, RING, null, on(0))?.suspects).toHaveLength(2);
    expect(sentence(acts.close(masterRecallId))).toBe(
      `Still resting on SP-56-1: ${RING}. Open the recall of each, or check it on another master.`,
    );
    const { recallId } = must(acts.open(RING, { masterRecallId, direction: 'large' }));
    const recall = findRecall(db, recallId);
    expect(recall).toMatchObject({ cause: 'master-found-out', masterRecallId, evidenceOnDay: on(30) });
    expect(recall?.suspects.map(({ acceptanceId }) => acceptanceId).sort()).toEqual([before, after].sort());
    expect(findTool(db, RING)?.state).toBe('quarantined');
    expect(sentence(acts.open(RING, { masterRecallId }))).toBe(
      `Recall ${recallId} was opened for this already.`,
    );
    must(acts.close(masterRecallId));
    replayedEqualsKept(db);
  });

  it('a ring that does not rest on it has no recall for it', () => {
    const { recallId: masterRecallId } = plugFoundOut();
    expect(sentence(acts.open(TWIN, { masterRecallId }))).toBe(
      `${TWIN} does not rest on SP-56-1. Something else found it good since.`,
    );
    expect(sentence(acts.open('G-56-NG-1', { masterRecallId }))).toMatch(/not checked or set on it/);
    expect(sentence(acts.open(RING, { masterRecallId: 'SP-56-1.R9' }))).toMatch(/^No recall SP-56-1.R9/);
  });

  it('a check on it counts no more, and counts again when the recall is taken back', () => {
    const { recallId } = plugFoundOut();
    const counts = () => countedEvidence(db, listEvidence(db, RING)).map(({ qualifies }) => qualifies);
    expect(counts()).toEqual([true, false]);
    const entry = db.$client.prepare(`SELECT id FROM entry WHERE subject_id = ?`).pluck().get(recallId);
    must(send.reverse(String(entry)));
    expect(counts()).toEqual([true, true]);
  });
});

it('a ring calibrated on a plug in the shop rests on it too', () => {
  must(
    send.calibrate(RING, { onDay: on(3), asFound: 'in', dueOnDay: '2026-12-31', againstToolId: 'sp-56-I' }),
  );
  expect(listEvidence(db, RING)).toMatchObject([{ kind: 'calibration', againstToolId: 'SP-56-1' }]);
  const { recallId } = must(acts.open('SP-56-1'));
  expect(gauges(findRecall(db, recallId))).toMatchObject([{ gaugeId: RING, standing: 'in-doubt' }]);
  expect(sentence(send.calibrate(TWIN, { againstToolId: 'SP-56-1' }))).toBe(
    'SP-56-1 is quarantined; a check on it does not count.',
  );
});
