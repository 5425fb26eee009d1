import type { z } from 'zod';
import type { Actor } from '../../lib/access/actor';
import { permit } from '../../lib/access/permit';
import type { PayloadOf } from '../../lib/ledger/event';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import { type BenchEntry, BenchEntrySchema, STOPS } from '../../lib/shop/bench-input';
import { entryIdField } from '../../lib/shop/field';
import { tidyToolId } from '../../lib/shop/tool-id';
import { derivedId } from '../ledger/derived-id';
import { findEntryRow } from '../ledger/entry-row';
import type { Env, Recorded } from '../ledger/ledger';
import type { Db } from '../open';
import { findTool } from '../queries/tools';
import { issueTool, returnTool } from './issue-tool';
import { raiseConflict } from './keep-conflicts';
import { logCut } from './log-cut';
import { moveTool } from './move-tool';

/** What came of one entry of a bench: counted now, counted before, or kept as a conflict for a person to settle. */
export interface BenchAnswer {
  readonly entryId: string;
  readonly outcome: 'recorded' | 'already' | 'conflict';
  readonly sentence: string;
}

/** The server's clock, and by how much the device's runs behind it. */
interface BenchClock extends Env {
  readonly behindMs: number;
}

/**
 * Takes one entry that a bench made, perhaps hours ago: the same command as at any screen, with the clock set right. What
 * the record cannot take, or cannot read, is kept as a conflict, once; sending it again changes nothing and says so.
 * Refuses, so that the bench keeps it, only where nobody may enter anything now.
 */
export function takeBenchEntry(
  db: Db,
  actor: Actor | null,
  sent: unknown,
  clock: BenchClock,
): Result<BenchAnswer, Refusal> {
  const leave = permit(actor, 'log-cut');
  if (!leave.ok) return leave;
  const parsed = BenchEntrySchema.safeParse(sent);
  const stamp = stampOf(sent, clock.nowMs);
  if (!parsed.success && stamp === undefined)
    return refuse('input', 'An entry of the bench has no ID of its own and cannot be kept.');
  const { entryId, deviceAtMs } = parsed.data ?? (stamp as Stamp);
  const id = derivedId(entryId, 'conflict');
  if (findEntryRow(db.$client, id) !== undefined)
    return ok({ entryId, outcome: 'conflict', sentence: 'Kept for somebody to settle.' });
  const done = parsed.success ? run(db, actor, parsed.data, clock) : unreadable(parsed.error);
  if (done.ok) {
    const outcome = done.value.alreadyRecorded ? 'already' : 'recorded';
    const sentence = outcome === 'already' ? 'Already recorded; nothing was counted twice.' : '';
    return ok({ entryId, outcome, sentence });
  }
  if (!isConflict(done.refusal)) return done;
  const { sentence } = done.refusal;
  const toolId = tidyToolId(parsed.data?.toolId ?? '');
  const what = parsed.success ? benchWords(parsed.data) : 'an entry that cannot be read';
  const conflict = { toolId, what, sentence, sent: keptText(parsed.data ?? sent) };
  const raised = raiseConflict(db, leave.value, { id, deviceAtMs, conflict }, clock);
  return raised.ok ? ok({ entryId, outcome: 'conflict', sentence }) : raised;
}

/** An entry is a few hundred characters; one that is longer is kept in part, as a text. */
const SENT_MAX = 4000;

function keptText(sent: unknown): string {
  const json = jsonOf(sent);
  return json.length <= SENT_MAX ? json : JSON.stringify(json.slice(0, SENT_MAX));
}

/** JSON that is nested too deep to be written out is no entry of ours: only that is kept. */
function jsonOf(sent: unknown): string {
  try {
    return JSON.stringify(sent);
  } catch (error) {
    if (error instanceof RangeError) return '"nested too deep to be kept"';
    throw error;
  }
}

interface Stamp {
  readonly entryId: string;
  readonly deviceAtMs: number;
}

/** The ID and the moment of something that cannot be read otherwise. */
function stampOf(sent: unknown, nowMs: number): Stamp | undefined {
  const entryId = entryIdField.safeParse((sent as { entryId?: unknown } | null)?.entryId);
  return entryId.success ? { entryId: entryId.data, deviceAtMs: nowMs } : undefined;
}

function unreadable(error: z.ZodError): Result<never, Refusal> {
  return refuse('input', error.issues[0]?.message ?? 'This entry cannot be read.');
}

function run(
  db: Db,
  actor: Actor | null,
  entry: BenchEntry,
  { behindMs, ...env }: BenchClock,
): Result<Recorded, Refusal> {
  if (entry.kind === 'cut') {
    const { kind: _, ...input } = entry;
    const cutAtMs =
      keptMoment(db, entry) ??
      Math.min((input.cutAtMs ?? input.deviceAtMs) + Math.round(behindMs), env.nowMs);
    const leave = permit(actor, 'log-cut');
    return leave.ok ? logCut(db, leave.value, { ...input, cutAtMs }, env) : leave;
  }
  if (entry.kind === 'take') return take(db, actor, entry, env);
  if (entry.kind === 'give-back') return giveBack(db, actor, entry, env);
  return stop(db, actor, entry, env);
}

/** The moment under which a row sent before was kept: by now the clock of the device may be set right by another amount. */
function keptMoment(db: Db, { entryId, deviceAtMs }: BenchEntry): number | undefined {
  const row = findEntryRow(db.$client, entryId);
  if (row?.kind !== 'cut-logged' || row.device_at_ms !== deviceAtMs) return undefined;
  return (JSON.parse(row.payload) as PayloadOf<'cut-logged'>).cutAtMs;
}

/** A tool taken out of the crib at the bench, by whoever is acting. If somebody else was first, the second becomes a conflict. */
function take(
  db: Db,
  actor: Actor | null,
  { entryId, deviceAtMs, toolId, jobLineId }: Extract<BenchEntry, { kind: 'take' }>,
  env: Env,
): Result<Recorded, Refusal> {
  const leave = permit(actor, 'issue-tool');
  if (!leave.ok) return leave;
  const toPersonId = leave.value.actor.personId;
  const about = { entryId, deviceAtMs, toolId, reason: '' };
  return issueTool(db, leave.value, { ...about, toPersonId, jobLineId, bench: '' }, env);
}

/** A tool given back at the bench. */
function giveBack(
  db: Db,
  actor: Actor | null,
  { entryId, deviceAtMs, toolId, condition }: Extract<BenchEntry, { kind: 'give-back' }>,
  env: Env,
): Result<Recorded, Refusal> {
  const leave = permit(actor, 'return-tool');
  return leave.ok
    ? returnTool(db, leave.value, { entryId, deviceAtMs, toolId, reason: '', condition }, env)
    : leave;
}

/** A tool stopped at the bench: it comes back damaged and waits in quarantine, its pieces owed where some broke off. */
function stop(
  db: Db,
  actor: Actor | null,
  { entryId, deviceAtMs, toolId, how }: Extract<BenchEntry, { kind: 'stop' }>,
  env: Env,
): Result<Recorded, Refusal> {
  const why = STOPS.find(({ code }) => code === how) ?? STOPS[0];
  const about = { entryId, deviceAtMs, toolId, reason: `stopped: ${why.label.toLowerCase()}` };
  // Sent before, it is what it was then, wherever the tool is by now.
  const sentAs = findEntryRow(db.$client, entryId)?.kind;
  const isOut = sentAs === undefined && findTool(db, toolId)?.state === 'issued';
  if (sentAs === 'tool-returned' || isOut) {
    const leave = permit(actor, 'return-tool');
    const pieces = why.pieces ? ({ pieces: 'owed' } as const) : {};
    return leave.ok ? returnTool(db, leave.value, { ...about, condition: 'damaged', ...pieces }, env) : leave;
  }
  const leave = permit(actor, 'move-tool');
  return leave.ok ? moveTool(db, leave.value, { ...about, to: 'quarantined', backOnDay: null }, env) : leave;
}

/** Whoever is nobody, or a disk that is full, is no conflict: the bench keeps the entry and sends it again. */
function isConflict({ code }: Refusal): boolean {
  return code !== 'who' && code !== 'disk-full' && code !== 'busy' && code !== 'read-only';
}

/** What was entered, in shop words, for the screen that settles conflicts. */
export function benchWords(entry: BenchEntry): string {
  const tool = tidyToolId(entry.toolId);
  if (entry.kind === 'stop')
    return `${tool} stopped: ${(STOPS.find(({ code }) => code === entry.how) ?? STOPS[0]).label.toLowerCase()}`;
  if (entry.kind === 'take') return `${tool} taken for ${entry.jobLineId}`;
  if (entry.kind === 'give-back') return `${tool} given back`;
  const line = entry.jobLineId === null ? '' : `, for ${entry.jobLineId}`;
  return `${entry.ends} ends cut with ${tool}, ${entry.goodEnds} good${line}`;
}
