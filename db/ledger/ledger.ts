import type { Database } from 'better-sqlite3';
import type { Actor } from '../../lib/access/actor';
import { dayOfMs } from '../../lib/calendar/day';
import { invariant } from '../../lib/invariant';
import { ENTRY_LABEL } from '../../lib/ledger/entry-label';
import { type Draft, type Entry, type SubjectKind, subjectOf } from '../../lib/ledger/event';
import { evolve, findUnsupported, foldSubject, type RecordOf } from '../../lib/ledger/fold';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import { type EntryRow, entryOfRow, findEntryRow, standingEntries } from './entry-row';
import { markReversed, SAVE_ORDER, saveCut, saveRecord } from './projection';
import { holdsAll } from './same-content';
import { insert, statement } from './statements';

/** What a command needs from outside: the server's clock. Identifiers come with the entry, from the device. */
export interface Env {
  readonly nowMs: number;
  /** Minutes by which the shop's wall clock is ahead of UTC; absent: the shop keeps UTC. */
  readonly utcOffsetMinutes?: number;
}

/** The shop's calendar day at the moment of a command: what is due today is good until it ends. */
export function shopDay({ nowMs, utcOffsetMinutes = 0 }: Env): string {
  return dayOfMs(nowMs, utcOffsetMinutes);
}

/** What came of recording an entry: new, or already there because the device sent it twice. */
export interface Recorded {
  readonly id: string;
  readonly seq: number;
  readonly alreadyRecorded: boolean;
}

type AnyRecord = RecordOf[SubjectKind];

/**
 * The ledger, open for writing inside one transaction. `record` decides and appends; the subjects' records are folded
 * from their entries once, moved forward in memory, and saved by `flush` at the end.
 */
export class Ledger {
  readonly #client: Database;
  readonly #actor: Actor;
  readonly #env: Env;
  readonly #batchId: string | null;
  readonly #subjects = new Map<
    string,
    { kind: SubjectKind; id: string; record: AnyRecord | undefined; dirty: boolean }
  >();
  readonly #cuts: Entry[] = [];
  readonly #reversedCuts: string[] = [];

  constructor(client: Database, actor: Actor, env: Env, batchId: string | null = null) {
    this.#client = client;
    this.#actor = actor;
    this.#env = env;
    this.#batchId = batchId;
  }

  /** The record of a subject as it stands at this moment of the transaction. */
  find<S extends SubjectKind>(kind: S, id: string): RecordOf[S] | undefined {
    return this.#subject(kind, id).record as RecordOf[S] | undefined;
  }

  /**
   * What became of an entry that the device sent before: undefined if it never did. To be asked before anything is
   * decided, since what was allowed then may not be allowed now. `isSame` says whether the entry is what is being sent;
   * an ID used for something else is refused.
   */
  sentBefore(
    id: string,
    reason: string,
    isSame: (entry: Entry) => boolean,
  ): Result<Recorded, Refusal> | undefined {
    const row = findEntryRow(this.#client, id);
    if (row === undefined) return undefined;
    // An imported row is known by its content alone: its note may name the file, and files are renamed.
    const sameReason = row.reason === reason || row.batch_id !== null;
    return sameReason && row.reverses_id === null && isSame(entryOfRow(row))
      ? ok({ id: row.id, seq: row.seq, alreadyRecorded: true })
      : REUSED;
  }

  /**
   * The same about an entry as it would be recorded. `sent` is what of its content the device sent; the rest was worked out
   * here, by a clock or tables that may have moved since, and does not tell one entry from another.
   */
  knows(draft: Draft, sent: object = draft.payload): Result<Recorded, Refusal> | undefined {
    return this.sentBefore(draft.id, draft.reason, (entry) => isSameEntry(entry, draft, sent));
  }

  /** Decides one entry and appends it. The same entry twice counts once; its ID with other content is refused. */
  record(draft: Draft, sent: object = draft.payload): Result<Recorded, Refusal> {
    const before = this.knows(draft, sent);
    if (before !== undefined) return before;
    const subject = this.#subject(subjectOf(draft.kind), draft.subjectId);
    const provisional: Entry = {
      ...draft,
      seq: 0,
      actorId: this.#actor.personId,
      serverAtMs: this.#env.nowMs,
    };
    const next = evolve(subject.kind, subject.record as never, provisional);
    if (!next.ok) return next;
    const seq = this.#append(draft, subject.kind, null);
    subject.record = next.value;
    subject.dirty = true;
    if (draft.kind === 'cut-logged') this.#cuts.push({ ...provisional, seq });
    return ok({ id: draft.id, seq, alreadyRecorded: false });
  }

  /** Takes an entry back: both stay visible, and the subject's record becomes what its other entries add up to. */
  reverse(reversal: {
    id: string;
    targetId: string;
    deviceAtMs: number;
    reason: string;
  }): Result<Recorded, Refusal> {
    const { targetId } = reversal;
    const seen = findEntryRow(this.#client, reversal.id);
    if (seen !== undefined) {
      return seen.reverses_id === targetId && seen.reason === reversal.reason
        ? ok({ id: seen.id, seq: seen.seq, alreadyRecorded: true })
        : REUSED;
    }
    const target = findEntryRow(this.#client, targetId);
    if (target === undefined) return refuse('unknown-entry', 'There is no such entry to take back.');
    if (target.reverses_id !== null)
      return refuse('reversal', 'A reversal cannot be taken back; enter the matter again instead.');
    const again = statement(this.#client, 'SELECT 1 FROM entry WHERE reverses_id = ?').get(targetId);
    if (again !== undefined) return refuse('reversed', 'This entry was already taken back.');
    return this.#reverseTarget(reversal, target);
  }

  /** Saves every record that moved. Called once, at the end of the transaction. */
  flush(): void {
    const moved = [...this.#subjects.values()].filter((subject) => subject.dirty);
    moved.sort((a, b) => SAVE_ORDER.indexOf(a.kind) - SAVE_ORDER.indexOf(b.kind));
    for (const subject of moved) {
      saveRecord(this.#client, subject.kind, subject.id, subject.record);
      subject.dirty = false;
    }
    for (const cut of this.#cuts) saveCut(this.#client, cut);
    for (const id of this.#reversedCuts) markReversed(this.#client, id);
  }

  #reverseTarget(
    reversal: { id: string; targetId: string; deviceAtMs: number; reason: string },
    target: EntryRow,
  ): Result<Recorded, Refusal> {
    const left = standingEntries(this.#client, target.subject_kind, target.subject_id).filter(
      (entry) => entry.id !== target.id,
    );
    const folded = foldSubject(target.subject_kind, left);
    if (!folded.ok) return restedOn(findUnsupported(target.subject_kind, left));
    const draft = { ...reversal, kind: 'entry-reversed', subjectId: target.subject_id, payload: {} } as const;
    const seq = this.#append(draft, target.subject_kind, target.id);
    const subject = this.#subject(target.subject_kind, target.subject_id);
    subject.record = folded.value;
    subject.dirty = true;
    if (target.kind === 'cut-logged') this.#reversedCuts.push(target.id);
    return ok({ id: reversal.id, seq, alreadyRecorded: false });
  }

  #subject(kind: SubjectKind, id: string) {
    const key = `${kind} ${id}`;
    let subject = this.#subjects.get(key);
    if (subject === undefined) {
      const folded = foldSubject(kind, standingEntries(this.#client, kind, id));
      if (!folded.ok) throw new Error(`the ledger of ${key} does not fold: ${folded.refusal.sentence}`);
      subject = { kind, id, record: folded.value, dirty: false };
      this.#subjects.set(key, subject);
    }
    return subject;
  }

  #append(
    draft: {
      id: string;
      kind: string;
      subjectId: string;
      deviceAtMs: number;
      reason: string;
      payload: unknown;
    },
    subjectKind: SubjectKind,
    reversesId: string | null,
  ): number {
    const row = {
      id: draft.id,
      kind: draft.kind,
      subject_kind: subjectKind,
      subject_id: draft.subjectId,
      actor_id: this.#actor.personId,
      device_at_ms: draft.deviceAtMs,
      server_at_ms: this.#env.nowMs,
      reason: draft.reason,
      payload: JSON.stringify(draft.payload),
      reverses_id: reversesId,
      batch_id: this.#batchId,
    };
    return insert(this.#client, 'entry', row);
  }
}

const REUSED = refuse('id-reused', 'This entry ID was already used for something else.');

/** The same kind, about the same subject, with the same content as far as the device made it. */
function isSameEntry(entry: Entry, draft: Draft, sent: object): boolean {
  if (entry.kind !== draft.kind || entry.subjectId !== draft.subjectId) return false;
  return holdsAll(entry.payload, sent);
}

function restedOn(later: Entry | undefined): Result<never, Refusal> {
  invariant(later !== undefined, 'entries that do not fold hold one that cannot stand');
  return refuse(
    'rested-on',
    `Later entries rest on this one: take those back first, from the last back to the ${ENTRY_LABEL[later.kind]}.`,
  );
}
