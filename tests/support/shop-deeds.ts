import fc from 'fast-check';
import { acceptEnds } from '@/db/commands/accept-ends';
import { chaseOrder } from '@/db/commands/chase-order';
import { cleanLine } from '@/db/commands/clean-line';
import { countStock } from '@/db/commands/count-stock';
import { disposeSuspects } from '@/db/commands/dispose-suspect';
import { approveOrders, draftOrders } from '@/db/commands/draft-orders';
import { issueKit } from '@/db/commands/issue-kit';
import { returnTool } from '@/db/commands/issue-tool';
import { settleConflict } from '@/db/commands/keep-conflicts';
import { disposeFluid, extendFluid } from '@/db/commands/keep-fluid';
import { closeKit, searchKit } from '@/db/commands/keep-kit';
import { placeOrder } from '@/db/commands/keep-orders';
import { closeRecall, reviewRecall } from '@/db/commands/keep-recall';
import { openRecall } from '@/db/commands/open-recall';
import { closeJob, planJob } from '@/db/commands/plan-job';
import { reverseEntry } from '@/db/commands/reverse-entry';
import { setFluidLot } from '@/db/commands/set-fluid-lot';
import { shipJob } from '@/db/commands/ship-job';
import { takeBenchEntry } from '@/db/commands/take-bench-entry';
import type { Env } from '@/db/ledger/ledger';
import type { Db } from '@/db/open';
import type { Actor } from '@/lib/access/actor';
import type { Result } from '@/lib/result';
import * as ends from '@/lib/shop/acceptance-input';
import * as basic from '@/lib/shop/command-input';
import * as fluid from '@/lib/shop/fluid-input';
import * as kit from '@/lib/shop/kit-input';
import * as order from '@/lib/shop/order-input';
import { lookAt } from './accept-shop';
import { DIE, FLUID, HIGH, may, NOW_MS } from './db';

const QUALITY: Actor = { personId: 'robin', name: 'Robin Vale', role: 'quality' };
const TODAY = '2026-03-02';

/** What can happen in a shop to kits, looks at ends, recalls, jobs, orders, lots, counts and conflicts. */
const DEEDS = [
  ...[
    'plan',
    'close-job',
    'ship',
    'clean',
    'accept',
    'accept',
    'accept',
    'accept',
    'recall',
    'recall',
    'dispose',
    'review',
    'dispose',
  ],
  ...['dispose', 'close-recall', 'kit', 'kit', 'return', 'return', 'search', 'close-kit', 'count', 'draft'],
  ...['approve', 'place', 'chase', 'lot', 'extend', 'discard', 'bench', 'settle', 'reverse', 'reverse'],
] as const;
export type ShopDeed = (typeof DEEDS)[number];

/** One thing that somebody does; `a` and `b` choose among what there is, `good` which way it goes. */
export const shopDeed = fc.record({
  do: fc.constantFrom(...DEEDS),
  a: fc.nat(9),
  b: fc.nat(9),
  good: fc.boolean(),
});
type Choice = typeof shopDeed extends fc.Arbitrary<infer D> ? D : never;

/** A deed as a command with its content fixed, to be sent as often as one likes. */
export type ShopSend = (db: Db, env: Env) => Result<unknown>;

const KIT_ITEMS = ['D-56-01', 'G-56-GO-1', 'B-56-01', 'F-L01'];
const COUNTED = ['D-56-01', 'B-56-01'];

/** What a deed is made from: the choice, its entry, and what the ledger has by now to pick from. */
interface Made {
  readonly a: number;
  readonly b: number;
  readonly good: boolean;
  readonly entered: { readonly entryId: string; readonly deviceAtMs: number; readonly reason: string };
  readonly kitId: string;
  readonly recallId: string;
  readonly orderId: string;
  pick(sql: string, at?: number): string;
}

const JOB = 'J-1';
/** The looks that recalls put in doubt, those of the latest recall first. */
const SUSPECTS = `SELECT suspect.value ->> 'acceptanceId' FROM entry, json_each(payload, '$.suspects') suspect
  WHERE kind = 'recall-opened' ORDER BY seq DESC`;

const SENDS: Record<ShopDeed, (made: Made) => ShopSend> = {
  plan: ({ entered, a, b, good }) => {
    const line = {
      ...{ lineNo: 1, connectionId: HIGH.id, materialId: good ? '316' : '2507', heat: '', ends: 12 + a },
      ...{ operations: ['cone', 'thread'], startOnDay: TODAY, dueOnDay: '2026-03-13', value: 'ordinary' },
      duty: b < 5 ? 'ordinary' : 'oxygen',
    };
    const input = basic.PlanJobInput.parse({ ...entered, job: { id: JOB, title: '', lines: [line] } });
    return (to, env) => planJob(to, may('plan-job'), input, env);
  },
  'close-job': ({ entered, good }) => {
    const input = basic.CloseJobInput.parse({ ...entered, jobId: JOB, how: good ? 'done' : 'cancelled' });
    return (to, env) => closeJob(to, may('plan-job'), input, env);
  },
  ship: ({ entered }) => {
    const input = ends.ShipJobInput.parse({ ...entered, jobId: JOB, onDay: TODAY });
    return (to, env) => shipJob(to, may('ship-job'), input, env);
  },
  clean: ({ entered, good }) => {
    const cleaning = { lineNo: good ? 1 : 2, procedure: 'CP-7', onDay: TODAY, evidence: 'sheet 4' };
    const input = fluid.CleanLineInput.parse({ ...entered, jobId: JOB, ...cleaning });
    return (to, env) => cleanLine(to, may('plan-job'), input, env);
  },
  accept: ({ entered, a, b, good, pick }) => {
    const regaugesId = b === 0 ? pick(subjectsOf('ends-accepted')) : null;
    const late = b === 9 ? { gaugedAtMs: NOW_MS - 3_600_000 } : {};
    const gauges = good ? {} : { gauges: [] };
    const input = ends.AcceptEndsInput.parse(
      lookAt(1 + (a % 4), { ...entered, ...gauges, ...late, regaugesId }),
    );
    return (to, env) => acceptEnds(to, may('accept-ends'), input, env);
  },
  recall: ({ entered, good }) => {
    const how = { direction: 'unknown', found: 'out', foundEntryId: null, foundOnDay: TODAY };
    const input = ends.OpenRecallInput.parse({
      ...entered,
      gaugeId: good ? 'G-56-GO-1' : 'D-56-01',
      ...how,
    });
    return (to, env) => openRecall(to, may('keep-recalls', QUALITY), input, env);
  },
  review: ({ entered, recallId }) => {
    const input = ends.ReviewRecallInput.parse({ ...entered, recallId });
    return (to, env) => reviewRecall(to, may('keep-recalls', QUALITY), input, env);
  },
  dispose: ({ entered, b, good, pick, recallId }) => {
    const items = [{ acceptanceId: pick(SUSPECTS), endCount: 1 + (b % 3) }];
    const how = good ? 'cleared-otherwise' : 'taken-back';
    const decided = { recallId, items, how, gaugeId: null, evidence: 'blued', onDay: TODAY };
    const input = ends.DisposeSuspectsInput.parse({ ...entered, ...decided });
    return (to, env) => disposeSuspects(to, may('keep-recalls', QUALITY), input, env);
  },
  'close-recall': ({ entered, recallId }) => {
    const input = ends.CloseRecallInput.parse({ ...entered, recallId, conclusion: 'all looked at' });
    return (to, env) => closeRecall(to, may('keep-recalls', QUALITY), input, env);
  },
  kit: ({ entered, a, good }) => {
    const toolIds = good ? KIT_ITEMS : [KIT_ITEMS[a % 4]];
    const input = kit.IssueKitInput.parse({ ...entered, jobLineId: 'J-1.1', toPersonId: 'ash', toolIds });
    return (to, env) => issueKit(to, may('issue-tool'), input, env);
  },
  return: ({ entered, a, good }) => {
    const toolId = KIT_ITEMS[a % 4];
    const input = basic.ReturnToolInput.parse({ ...entered, toolId, condition: good ? 'ok' : 'unsure' });
    return (to, env) => returnTool(to, may('return-tool'), input, env);
  },
  search: ({ entered, kitId }) => {
    const input = kit.SearchKitInput.parse({
      ...entered,
      kitId,
      toolIds: ['D-56-01'],
      lastSeen: 'bench 4',
    });
    return (to, env) => searchKit(to, may('return-tool'), input, env);
  },
  'close-kit': ({ entered, good, kitId }) => {
    const input = kit.CloseKitInput.parse({ ...entered, kitId, lostToolIds: good ? [] : ['D-56-01'] });
    return (to, env) => closeKit(to, may('return-tool', QUALITY), input, env);
  },
  count: ({ entered, good }) => {
    const missing = good ? [] : ['D-56-01'];
    const variances = missing.map((toolId) => ({
      toolId,
      kind: 'missing',
      outcome: 'lost',
      reason: 'no bin',
    }));
    const scanned = COUNTED.filter((id) => !missing.includes(id));
    const input = kit.CountStockInput.parse({ ...entered, scope: 'edges', scanned, variances });
    return (to, env) => countStock(to, may('move-tool'), input, env);
  },
  draft: ({ entered, orderId }) => {
    const plain = { partId: DIE.id, quantity: 2, draftedOnDay: TODAY, supplier: '', unitPriceMinor: null };
    const drafts = [{ id: orderId, ...plain, leadTimeDays: null, why: '' }];
    const input = order.DraftOrdersInput.parse({ ...entered, drafts });
    return (to, env) => draftOrders(to, may('keep-orders'), input, env);
  },
  approve: ({ entered, b, orderId }) => {
    const input = order.ApproveOrdersInput.parse({
      ...entered,
      orders: [{ id: orderId, quantity: 1 + b }],
    });
    const lead: Actor = { ...QUALITY, role: 'lead' };
    return (to, env) => approveOrders(to, may('approve-orders', lead), input, env);
  },
  place: ({ entered, good, orderId }) => {
    const days = { placedOnDay: TODAY, expectedOnDay: good ? '2026-04-01' : '2026-02-01' };
    const placed = { id: orderId, partId: DIE.id, quantity: 2, ...days };
    const input = basic.PlaceOrderInput.parse({ ...entered, order: placed });
    return (to, env) => placeOrder(to, may('keep-orders'), input, env);
  },
  chase: ({ entered, good, orderId }) => {
    const confirmedForDay = good ? '2026-04-08' : null;
    const input = order.ChaseOrderInput.parse({ ...entered, orderId, onDay: TODAY, confirmedForDay });
    return (to, env) => chaseOrder(to, may('keep-orders'), input, env);
  },
  lot: ({ entered, good }) => {
    const lot = {
      partId: FLUID.id,
      lot: 'L-9',
      shelfLife: good ? 'extendable' : 'fixed',
      chlorinated: 'no',
    };
    const input = fluid.SetFluidLotInput.parse({ ...entered, lot });
    return (to, env) => setFluidLot(to, may('keep-fluid'), input, env);
  },
  extend: ({ entered }) => {
    const longer = { toolId: 'F-L01', onDay: TODAY, untilDay: '2026-09-01', inspection: 'clear, no smell' };
    const input = fluid.ExtendFluidInput.parse({ ...entered, ...longer });
    return (to, env) => extendFluid(to, may('extend-fluid', QUALITY), input, env);
  },
  discard: ({ entered, good }) => {
    const end = { onDay: TODAY, how: 'waste-carrier', transferNote: good ? 'WT-1' : '', volumeMl: 20 };
    const input = fluid.DisposeFluidInput.parse({ ...entered, toolId: 'F-L01', ...end });
    return (to, env) => disposeFluid(to, may('keep-fluid'), input, env);
  },
  bench: ({ entered, a, b, good }) => {
    const cut = { kind: 'cut', toolId: 'D-56-01', connectionId: HIGH.id, materialId: '316' };
    const row = { ...entered, ...cut, ends: 1 + a, goodEnds: good ? 1 + a : 50 };
    const stop = { ...entered, kind: 'stop', toolId: 'B-56-01', how: 'chipped' };
    const sent = b < 7 ? row : stop;
    return (to, env) => takeBenchEntry(to, QUALITY, sent, { behindMs: 0, nowMs: env.nowMs });
  },
  settle: ({ entered, good, pick }) => {
    const conflictId = pick(subjectsOf('conflict-raised'));
    const done = { conflictId, how: good ? 'entered' : 'dropped', note: 'as said' };
    const input = kit.SettleConflictInput.parse({ ...entered, ...done });
    return (to, env) => settleConflict(to, may('settle-conflict', QUALITY), input, env);
  },
  reverse: ({ entered, a, b, pick }) => {
    const targetId = pick('SELECT id FROM entry ORDER BY seq DESC LIMIT 12', a + b);
    const input = basic.ReverseEntryInput.parse({ ...entered, targetId, reason: 'a slip' });
    return (to, env) => reverseEntry(to, may('reverse-entry'), input, env);
  },
};

/** Turns a choice into a command; what it is about is picked from the ledger as it stands. */
export function shopSend(db: Db, { do: what, a, b, good }: Choice, no: number): ShopSend {
  const entered = { entryId: `deed-${String(no).padStart(5, '0')}`, deviceAtMs: NOW_MS, reason: 'as seen' };
  const pick = (sql: string, at = a) => {
    const ids = db.$client.prepare(sql).pluck().all() as string[];
    return ids[at % Math.max(1, ids.length)] ?? 'nothing-yet';
  };
  const kitId = pick(subjectsOf('kit-issued'), b);
  const recallId = pick(subjectsOf('recall-opened'), b);
  return SENDS[what]({ a, b, good, entered, pick, kitId, recallId, orderId: `PO-${a % 3}` });
}

function subjectsOf(kind: string): string {
  return `SELECT subject_id FROM entry WHERE kind = '${kind}' ORDER BY seq DESC`;
}
