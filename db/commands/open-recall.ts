import type { Permit } from '../../lib/access/permit';
import type { GaugeEvidence } from '../../lib/gauge/evidence';
import type { ToolRecord } from '../../lib/ledger/tool-record';
import { type Finding, recallWindow } from '../../lib/recall/recall-window';
import { listSuspects } from '../../lib/recall/suspect-looks';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import type { OpenRecall } from '../../lib/shop/acceptance-input';
import type { Recall, RecallCause } from '../../lib/shop/recall';
import { CALIBRATED_ROLES } from '../../lib/shop/vocabulary';
import { derivedId } from '../ledger/derived-id';
import type { Env, Ledger, Recorded } from '../ledger/ledger';
import { holdsAll } from '../ledger/same-content';
import { statement } from '../ledger/statements';
import { write } from '../ledger/write';
import type { Db } from '../open';
import { looksWithGauge } from '../queries/gauge-looks';
import { listRecallsOf } from '../queries/recalls';
import { findToolId, unknownTool } from './tool-entry';

/**
 * A gauge found out: in one transaction it is set aside, and every end accepted with it since its last good evidence is
 * listed. Gives the recall’s opening; its ID is the gauge’s with a running number.
 */
export function openRecall(
  db: Db,
  permit: Permit<'keep-recalls'>,
  input: OpenRecall,
  env: Env,
): Result<Recorded & { readonly recallId: string }, Refusal> {
  return write(db, permit, env, (ledger) => {
    const { entryId: id, deviceAtMs, reason } = input;
    const gaugeId = findToolId(db, input.gaugeId);
    if (gaugeId === undefined) return unknownTool(input.gaugeId, 'gaugeId');
    const { direction, found, foundEntryId } = input;
    const sent = { gaugeId, direction, found, foundEntryId };
    let recallId = newRecallId(db, gaugeId);
    const before = ledger.sentBefore(id, reason, (entry) => {
      recallId = entry.subjectId;
      return entry.kind === 'recall-opened' && holdsAll(entry.payload, sent);
    });
    if (before !== undefined) return before.ok ? ok({ ...before.value, recallId }) : before;
    const content = recallOf(db, ledger, { ...input, gaugeId }, env);
    if (!content.ok) return content;
    const setAside = quarantine(ledger, gaugeId, content.value, { id, deviceAtMs });
    if (!setAside.ok) return setAside;
    const payload = content.value;
    const opened = ledger.record({
      ...{ id, deviceAtMs, reason, subjectId: recallId },
      ...{ kind: 'recall-opened', payload },
    });
    return opened.ok ? ok({ ...opened.value, recallId }) : opened;
  });
}

function recallOf(db: Db, ledger: Ledger, input: OpenRecall, env: Env): Result<Recall, Refusal> {
  const { gaugeId, direction, found, foundEntryId } = input;
  const gauge = ledger.find('tool', gaugeId);
  if (gauge === undefined || !CALIBRATED_ROLES.includes(gauge.role))
    return refuse('role', `${gaugeId} is not kept under calibration; nothing was accepted by it.`, 'gaugeId');
  const finding = findingOf(gauge, input, env);
  if (!finding.ok) return finding;
  const known = listRecallsOf(db, gaugeId).find((recall) =>
    foundEntryId === null ? recall.status === 'open' : recall.foundEntryId === foundEntryId,
  );
  if (known !== undefined)
    return refuse('exists', `Recall ${known.id} was opened for this already.`, 'gaugeId');
  const window = recallWindow(gauge.evidence, finding.value);
  const list = listSuspects(looksWithGauge(db, gaugeId), window);
  return ok({
    ...{ gaugeId, direction, found, foundEntryId, cause: finding.value.cause },
    foundOnDay: finding.value.onDay,
    ...window,
    ...{ suspects: [...list.suspects], refusedIds: [...list.refusedIds] },
  });
}

type NamedFinding = Finding & { readonly cause: RecallCause };

function findingOf(
  gauge: ToolRecord,
  { foundEntryId, foundOnDay }: OpenRecall,
  { nowMs }: Env,
): Result<NamedFinding, Refusal> {
  if (foundEntryId === null)
    return ok({ entryId: null, onDay: foundOnDay, atMs: nowMs, cause: 'found-by-hand' });
  const shown = gauge.evidence.find(({ entryId }) => entryId === foundEntryId);
  if (shown === undefined || !showsFault(shown))
    return refuse(
      'finding',
      `That entry does not say that ${gauge.id} was out. Say what was found instead.`,
      'foundEntryId',
    );
  const cause = shown.kind === 'calibration' ? 'calibration-failed' : 'check-failed';
  return ok({ entryId: shown.entryId, onDay: shown.onDay, atMs: shown.atMs, cause });
}

/** Found out, or left out: either way what it accepted before is in doubt. */
function showsFault({ asFound, asLeft }: GaugeEvidence): boolean {
  return asFound === 'out' || asLeft === 'out';
}

/** Set aside at once, unless it is away, gone, set aside already, or found good again since. */
function quarantine(
  ledger: Ledger,
  gaugeId: string,
  { found, foundEntryId }: Recall,
  { id, deviceAtMs }: { readonly id: string; readonly deviceAtMs: number },
): Result<unknown, Refusal> {
  const gauge = ledger.find('tool', gaugeId);
  if (gauge === undefined || (gauge.state !== 'in-crib' && gauge.state !== 'issued')) return ok(null);
  const at = gauge.evidence.findIndex(({ entryId }) => entryId === foundEntryId);
  const goodSince = at >= 0 && gauge.evidence.slice(at).some(({ asLeft }) => asLeft === 'in');
  if (goodSince) return ok(null);
  return ledger.record({
    ...{ id: derivedId(id, 'set-aside'), deviceAtMs, reason: found, subjectId: gaugeId },
    ...{ kind: 'tool-moved', payload: { to: 'quarantined', backOnDay: null } },
  });
}

function newRecallId(db: Db, gaugeId: string): string {
  const made = statement(
    db.$client,
    `SELECT COUNT(*) AS count FROM entry WHERE kind = 'recall-opened' AND payload ->> 'gaugeId' = ?`,
  ).get(gaugeId) as { count: number };
  return `${gaugeId}.R${made.count + 1}`;
}
