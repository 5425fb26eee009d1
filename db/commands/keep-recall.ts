import type { Permit } from '../../lib/access/permit';
import { recallWindow } from '../../lib/recall/recall-window';
import { listSuspects } from '../../lib/recall/suspect-looks';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import type { CloseRecall, ReviewRecall } from '../../lib/shop/acceptance-input';
import { type Env, type Ledger, type Recorded, shopDay } from '../ledger/ledger';
import { write } from '../ledger/write';
import type { Db } from '../open';
import { looksWithGauge } from '../queries/gauge-looks';
import { countedEvidence, gaugesOfMaster, gaugesUnreviewed } from '../queries/master-recalls';

/**
 * Works the window out again from what stands now: evidence taken back since moves it back, and ends that fall in it join.
 * A window never narrows and no suspect leaves it; what was in doubt is decided about, not forgotten.
 */
export function reviewRecall(
  db: Db,
  permit: Permit<'keep-recalls'>,
  input: ReviewRecall,
  env: Env,
): Result<Recorded, Refusal> {
  const { entryId: id, deviceAtMs, reason, recallId } = input;
  return write(db, permit, env, (ledger) => {
    const before = ledger.sentBefore(
      id,
      reason,
      (entry) => entry.kind === 'recall-extended' && entry.subjectId === recallId,
    );
    if (before !== undefined) return before;
    const recall = ledger.find('recall', recallId);
    const gauge = recall && ledger.find('tool', recall.gaugeId);
    if (recall === undefined || gauge === undefined)
      return refuse('unknown-recall', `No recall ${recallId} is in the record.`, 'recallId');
    const found = { entryId: recall.foundEntryId, onDay: recall.foundOnDay, atMs: recall.windowToMs };
    const { windowToMs: _to, ...window } = recallWindow(countedEvidence(db, gauge.evidence), found);
    const wider = { ...window, windowToMs: recall.windowToMs };
    const list = listSuspects(looksWithGauge(db, gauge.id), wider);
    const kept = new Set(recall.suspects.map(({ acceptanceId }) => acceptanceId));
    const suspects = list.suspects.filter(({ acceptanceId }) => !kept.has(acceptanceId));
    const refusedIds = list.refusedIds.filter((one) => !recall.refusedIds.includes(one));
    const movedBack = window.evidenceEntryId !== recall.evidenceEntryId && opensEarlier(window, recall);
    if (suspects.length + refusedIds.length === 0 && !movedBack)
      return refuse('nothing-new', 'Nothing new falls in its window.');
    const payload = { suspects, refusedIds, ...(movedBack ? { window } : {}) };
    return ledger.record({ id, deviceAtMs, reason, subjectId: recallId, kind: 'recall-extended', payload });
  });
}

type Opening = { readonly evidenceOnDay: string | null; readonly windowFromMs: number | null };

function opensEarlier(now: Opening, then: Opening): boolean {
  if (then.evidenceOnDay === null) return false;
  if (now.evidenceOnDay === null) return true;
  if (now.evidenceOnDay !== then.evidenceOnDay) return now.evidenceOnDay < then.evidenceOnDay;
  return (now.windowFromMs ?? 0) < (then.windowFromMs ?? 0);
}

/** Closes a recall with what was concluded; only when all of its ends are decided about. */
export function closeRecall(
  db: Db,
  permit: Permit<'keep-recalls'>,
  input: CloseRecall,
  env: Env,
): Result<Recorded, Refusal> {
  const { entryId: id, deviceAtMs, reason, recallId: subjectId, conclusion } = input;
  return write(db, permit, env, (ledger) => {
    const sent = { conclusion };
    const payload = { ...sent, onDay: shopDay(env) };
    const draft = { id, deviceAtMs, reason, subjectId, kind: 'recall-closed', payload } as const;
    const before = ledger.knows(draft, sent);
    if (before !== undefined) return before;
    const reviewed = checkReviewed(db, ledger, subjectId, env);
    return reviewed.ok ? ledger.record(draft, sent) : reviewed;
  });
}

/** A master’s recall is not closed over the gauges that still rest on it. */
function checkReviewed(db: Db, ledger: Ledger, recallId: string, env: Env): Result<null, Refusal> {
  const recall = ledger.find('recall', recallId);
  if (recall === undefined) return ok(null);
  const now = { onDay: shopDay(env), atMs: env.nowMs };
  const left = gaugesUnreviewed(gaugesOfMaster(db, recall, now)).map(({ gaugeId }) => gaugeId);
  if (left.length === 0) return ok(null);
  return refuse(
    'gauges-in-doubt',
    `Still resting on ${recall.gaugeId}: ${left.join(', ')}. Open the recall of each, or check it on another master.`,
  );
}
