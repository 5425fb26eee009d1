import { ok, type Refusal, type Result, refuse } from '../result';
import type { Recall, Suspect, SuspectDisposal } from '../shop/recall';
import { entryDay } from './entry-day';
import type { Entry, PayloadOf } from './event';

/** One decision about suspect ends, with who took it. */
export interface DisposalRecord extends SuspectDisposal {
  readonly entryId: string;
  readonly personId: string;
  readonly atMs: number;
}

/** A recall with what came of it. */
export interface RecallRecord extends Recall {
  readonly id: string;
  readonly status: 'open' | 'closed';
  readonly openedById: string;
  readonly openedAtMs: number;
  readonly disposals: readonly DisposalRecord[];
  readonly conclusion: string;
  readonly closedAtMs: number | null;
  /** The same as the shop’s day. */
  readonly closedOnDay: string | null;
}

/** Suspect ends of one acceptance that nothing has been decided about yet. */
export function endsLeftOpen(recall: RecallRecord, acceptanceId: string): number {
  const of = (list: readonly Suspect[]) =>
    list.reduce((sum, row) => sum + (row.acceptanceId === acceptanceId ? row.endCount : 0), 0);
  return of(recall.suspects) - of(recall.disposals);
}

/** Suspect ends of the whole recall that nothing has been decided about yet. */
export function suspectEndsLeft(recall: Pick<RecallRecord, 'suspects' | 'disposals'>): number {
  const sum = (list: readonly Suspect[]) => list.reduce((total, { endCount }) => total + endCount, 0);
  return sum(recall.suspects) - sum(recall.disposals);
}

/** One more entry in a recall's history: opened once, extended by what comes to light, closed when all is decided. */
export function evolveRecall(recall: RecallRecord | undefined, entry: Entry): Result<RecallRecord, Refusal> {
  if (entry.kind === 'recall-opened') {
    if (recall !== undefined) return refuse('exists', `Recall ${recall.id} is already open.`);
    return opened(entry.payload, entry);
  }
  if (recall === undefined) return refuse('unknown-recall', `No recall ${entry.subjectId} is in the record.`);
  if (entry.kind === 'recall-extended') return extended(recall, entry.payload);
  if (entry.kind !== 'suspect-disposed' && entry.kind !== 'recall-closed')
    return refuse('kind', `An entry "${entry.kind}" cannot be about a recall.`);
  if (recall.status === 'closed') return refuse('closed', `Recall ${recall.id} is closed.`);
  return entry.kind === 'suspect-disposed' ? disposed(recall, entry.payload, entry) : closed(recall, entry);
}

function opened(payload: PayloadOf<'recall-opened'>, entry: Entry): Result<RecallRecord, Refusal> {
  const repeated = sameTwice(payload.suspects);
  if (repeated) return refuse('suspects', 'The same ends stand twice among the suspects.');
  const opening = { id: entry.subjectId, openedById: entry.actorId, openedAtMs: entry.serverAtMs };
  return ok({
    ...payload,
    ...opening,
    status: 'open',
    disposals: [],
    conclusion: '',
    closedAtMs: null,
    closedOnDay: null,
  });
}

/** New evidence opens a closed recall again. */
function extended(
  recall: RecallRecord,
  { suspects, refusedIds, window = {} }: Extension,
): Result<RecallRecord, Refusal> {
  const all = [...recall.suspects, ...suspects];
  if (sameTwice(all)) return refuse('suspects', 'These ends already belong to the recall.');
  const reopened = { status: 'open', conclusion: '', closedAtMs: null, closedOnDay: null } as const;
  return ok({
    ...recall,
    ...window,
    ...{ suspects: all, refusedIds: [...new Set([...recall.refusedIds, ...refusedIds])] },
    ...(suspects.length > 0 ? reopened : {}),
  });
}

type Extension = Omit<PayloadOf<'recall-extended'>, 'window'> & {
  readonly window?: Partial<PayloadOf<'recall-extended'>['window']>;
};

function disposed(
  recall: RecallRecord,
  payload: PayloadOf<'suspect-disposed'>,
  entry: Entry,
): Result<RecallRecord, Refusal> {
  const left = endsLeftOpen(recall, payload.acceptanceId);
  if (payload.endCount > left)
    return refuse(
      'ends',
      left <= 0
        ? 'Nothing is left to decide about these ends.'
        : `Only ${left} of these ends are still to be decided.`,
      'endCount',
    );
  if (payload.how === 'regauged-good' && payload.gaugeId === null)
    return refuse('gauge', 'Say with which other gauge they were gauged again.', 'gaugeId');
  if (payload.how !== 'regauged-good' && payload.evidence === '')
    return refuse('evidence', GROUNDS_ASKED[payload.how], 'evidence');
  const { id: entryId, actorId: personId, serverAtMs: atMs } = entry;
  return ok({ ...recall, disposals: [...recall.disposals, { ...payload, entryId, personId, atMs }] });
}

const GROUNDS_ASKED: Record<SuspectDisposal['how'], string> = {
  'regauged-good': 'Say on what grounds.',
  'cleared-otherwise': 'Say by which check they were cleared.',
  reworked: 'Say how they were made again.',
  scrapped: 'Say why they were scrapped, and where they are.',
  concession: 'Say who granted the concession, and for what.',
  'customer-told': 'Say who was told, when and how.',
  'taken-back': 'Say why the entry was taken back.',
};

function closed(
  recall: RecallRecord,
  entry: Entry & { kind: 'recall-closed' },
): Result<RecallRecord, Refusal> {
  const left = suspectEndsLeft(recall);
  if (left > 0)
    return refuse('open-ends', `${left} suspect ${left === 1 ? 'end is' : 'ends are'} still to be decided.`);
  const { conclusion } = entry.payload;
  const closing = { closedAtMs: entry.serverAtMs, closedOnDay: entryDay(entry.payload, entry) };
  return ok({ ...recall, status: 'closed', conclusion, ...closing });
}

function sameTwice(suspects: readonly Suspect[]): boolean {
  return new Set(suspects.map(({ acceptanceId }) => acceptanceId)).size !== suspects.length;
}
