import { checkGauge } from '../../lib/acceptance/gauge-fit';
import type { Permit } from '../../lib/access/permit';
import type { AcceptanceRecord } from '../../lib/ledger/acceptance-history';
import type { RecallRecord } from '../../lib/ledger/recall-history';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import type { DisposeSuspects } from '../../lib/shop/acceptance-input';
import type { Suspect } from '../../lib/shop/recall';
import { checkBatch } from '../ledger/batch';
import { derivedId } from '../ledger/derived-id';
import type { Env, Ledger, Recorded } from '../ledger/ledger';
import { holdsAll } from '../ledger/same-content';
import { write } from '../ledger/write';
import type { Db } from '../open';
import { gaugeFacts } from './accept/gauge-facts';
import { findToolId } from './tool-entry';

/** Decides about suspect ends of one or more looks: one entry for each, all of them or none. Gives the first. */
export function disposeSuspects(
  db: Db,
  permit: Permit<'keep-recalls'>,
  input: DisposeSuspects,
  env: Env,
): Result<Recorded, Refusal> {
  return write(db, permit, env, (ledger) => {
    const gaugeId = input.gaugeId === null ? null : (findToolId(db, input.gaugeId) ?? input.gaugeId);
    const named = { ...input, gaugeId };
    const whole = checkBatch(db, (place) => disposalId(input.entryId, place), input.items.length);
    if (!whole.ok) return whole;
    let first: Result<Recorded, Refusal> | undefined;
    for (const [at, item] of input.items.entries()) {
      const done = disposeOne(db, ledger, named, item, { at, nowMs: env.nowMs });
      if (!done.ok) return done;
      first ??= done;
    }
    return first ?? refuse('items', 'Choose the ends that this is about.', 'items');
  });
}

function disposalId(entryId: string, at: number): string {
  return at === 0 ? entryId : derivedId(entryId, String(at));
}

function disposeOne(
  db: Db,
  ledger: Ledger,
  input: DisposeSuspects,
  { acceptanceId, endCount }: Suspect,
  { at, nowMs }: { readonly at: number; readonly nowMs: number },
): Result<Recorded, Refusal> {
  const { entryId, deviceAtMs, reason, recallId: subjectId, how, gaugeId, evidence } = input;
  const id = disposalId(entryId, at);
  const payload = { acceptanceId, endCount, how, gaugeId, evidence };
  const before = ledger.sentBefore(
    id,
    reason,
    (entry) =>
      entry.kind === 'suspect-disposed' && entry.subjectId === subjectId && holdsAll(entry.payload, payload),
  );
  if (before !== undefined) return before;
  const recall = ledger.find('recall', subjectId);
  if (recall === undefined)
    return refuse('unknown-recall', `No recall ${subjectId} is in the record.`, 'recallId');
  const look = ledger.find('acceptance', acceptanceId);
  const fits = checkFits(db, ledger, recall, look, { ...input, nowMs });
  if (!fits.ok) return fits;
  return ledger.record({ id, deviceAtMs, reason, subjectId, kind: 'suspect-disposed', payload });
}

function checkFits(
  db: Db,
  ledger: Ledger,
  recall: RecallRecord,
  look: AcceptanceRecord | undefined,
  { how, gaugeId, onDay, nowMs }: DisposeSuspects & { readonly nowMs: number },
): Result<null, Refusal> {
  if (look === undefined)
    return how === 'taken-back'
      ? ok(null)
      : refuse('taken-back', 'The entry of these ends was taken back meanwhile. Say so instead.', 'how');
  if (how === 'taken-back')
    return refuse('stands', 'The entry of these ends still stands. Take it back first.', 'how');
  const connection = ledger.find('connection', look.connectionId);
  const role = ledger.find('tool', recall.gaugeId)?.role;
  if (gaugeId === null || connection === undefined || role === undefined) return ok(null);
  if (gaugeId === recall.gaugeId && !isGoodSince(ledger, recall))
    return refuse('gauge', `${gaugeId} is the gauge that was found out; take another one.`, 'gaugeId');
  const used = { toolId: gaugeId, role, verdict: 'pass', turns: null } as const;
  return checkGauge(used, gaugeFacts(db, ledger, gaugeId), {
    connection,
    gaugedOnDay: onDay,
    gaugedAtMs: nowMs,
  });
}

/** The gauge that was found out may gauge its own ends again once it came back good. */
function isGoodSince(ledger: Ledger, { gaugeId, windowToMs }: RecallRecord): boolean {
  const evidence = ledger.find('tool', gaugeId)?.evidence ?? [];
  return evidence.some(
    ({ atMs, asLeft, kind }) => kind === 'calibration' && asLeft === 'in' && atMs > windowToMs,
  );
}
