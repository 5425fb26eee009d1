import type { Permit } from '../../lib/access/permit';
import type { GaugeEvidence } from '../../lib/gauge/evidence';
import type { RecallRecord } from '../../lib/ledger/recall-history';
import type { ToolRecord } from '../../lib/ledger/tool-record';
import { type GaugeOnMaster, gaugeOnMaster } from '../../lib/recall/gauge-on-master';
import { type Finding, recallWindow } from '../../lib/recall/recall-window';
import { listSuspects } from '../../lib/recall/suspect-looks';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import type { OpenRecall } from '../../lib/shop/acceptance-input';
import type { Recall, RecallCause } from '../../lib/shop/recall';
import { CALIBRATED_ROLES } from '../../lib/shop/vocabulary';
import { derivedId } from '../ledger/derived-id';
import { type Env, type Ledger, type Recorded, shopDay } from '../ledger/ledger';
import { holdsAll } from '../ledger/same-content';
import { statement } from '../ledger/statements';
import { write } from '../ledger/write';
import type { Db } from '../open';
import { looksWithGauge } from '../queries/gauge-looks';
import { countedEvidence, recallsOfMasters } from '../queries/master-recalls';
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
    const sent = { gaugeId, direction, found, foundEntryId, ...throughMaster(input) };
    let recallId = newRecallId(db, gaugeId);
    const before = ledger.sentBefore(id, reason, (entry) => {
      recallId = entry.subjectId;
      return entry.kind === 'recall-opened' && holdsAll(entry.payload, sent);
    });
    if (before !== undefined) return before.ok ? ok({ ...before.value, recallId }) : before;
    const content = recallOf(db, ledger, { ...input, gaugeId }, env);
    if (!content.ok) return content;
    const setAside = quarantine(ledger, gaugeId, content.value, { id, deviceAtMs, nowMs: env.nowMs });
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
  const finding =
    input.masterRecallId === null
      ? findingOf(gauge, input, env)
      : doubtOf(db, ledger, gauge, input.masterRecallId, env);
  if (!finding.ok) return finding;
  const known = listRecallsOf(db, gaugeId).find((recall) => isSameFinding(recall, input));
  if (known !== undefined)
    return refuse('exists', `Recall ${known.id} was opened for this already.`, 'gaugeId');
  const window = recallWindow(countedEvidence(db, gauge.evidence), finding.value);
  const list = listSuspects(looksWithGauge(db, gaugeId), window);
  return ok({
    ...{ gaugeId, direction, found, foundEntryId, cause: finding.value.cause },
    foundOnDay: finding.value.onDay,
    ...window,
    ...throughMaster(input),
    ...{ suspects: [...list.suspects], refusedIds: [...list.refusedIds] },
  });
}

/** The field of the entry that says which master casts the doubt; none where the gauge was found out itself. */
function throughMaster({ masterRecallId }: Pick<OpenRecall, 'masterRecallId'>) {
  return masterRecallId === null ? {} : { masterRecallId };
}

function isSameFinding(
  recall: RecallRecord,
  { foundEntryId, masterRecallId }: Pick<OpenRecall, 'foundEntryId' | 'masterRecallId'>,
): boolean {
  if (masterRecallId !== null) return recall.masterRecallId === masterRecallId;
  if (foundEntryId !== null) return recall.foundEntryId === foundEntryId;
  return recall.status === 'open' && recall.masterRecallId === undefined;
}

/** In doubt through its master: since when nothing else has shown it good. */
function doubtOf(
  db: Db,
  ledger: Ledger,
  gauge: ToolRecord,
  masterRecallId: string,
  env: Env,
): Result<NamedFinding, Refusal> {
  const master = ledger.find('recall', masterRecallId);
  if (master === undefined)
    return refuse('unknown-recall', `No recall ${masterRecallId} is in the record.`, 'masterRecallId');
  const now = { onDay: shopDay(env), atMs: env.nowMs };
  const stands = gaugeOnMaster(gauge.evidence, master, recallsOfMasters(db, gauge.evidence), now);
  if (stands?.standing !== 'in-doubt')
    return refuse('master', `${gauge.id} does not rest on ${master.gaugeId}. ${whyNot(stands)}`, 'gaugeId');
  return ok({ ...stands.until, entryId: null, cause: 'master-found-out' });
}

function whyNot(stands: GaugeOnMaster | undefined): string {
  if (stands === undefined) return 'It was not checked or set on it in that time.';
  return stands.standing === 'cleared'
    ? 'Something else found it good since.'
    : 'It did not pass on it; check it on another master.';
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
  { found, foundEntryId, masterRecallId, windowToMs }: Recall,
  { id, deviceAtMs, nowMs }: { readonly id: string; readonly deviceAtMs: number; readonly nowMs: number },
): Result<unknown, Refusal> {
  const gauge = ledger.find('tool', gaugeId);
  if (gauge === undefined || (gauge.state !== 'in-crib' && gauge.state !== 'issued')) return ok(null);
  const at = gauge.evidence.findIndex(({ entryId }) => entryId === foundEntryId);
  const goodSince = at >= 0 && gauge.evidence.slice(at).some(({ asLeft }) => asLeft === 'in');
  const seenToSince = masterRecallId !== undefined && windowToMs < nowMs;
  if (goodSince || seenToSince) return ok(null);
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
