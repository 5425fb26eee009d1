import type { FileColumns, ImportLine } from '@/app/_import/import-line';
import type { ImportCheck } from '@/db/commands/import-file';
import type { FileInHand, Work } from './send-file';

/** What the screen knows of the file in hand. */
export interface ImportState {
  readonly file: FileInHand | null;
  /** The work that is going on, and how far it is. */
  readonly busy: { readonly work: Work; readonly line: ImportLine | null } | null;
  readonly columns: FileColumns | null;
  readonly check: ImportCheck | null;
  readonly imported: ImportCheck | null;
  readonly refusal: { readonly code: string; readonly sentence: string; readonly work: Work } | null;
}

export type ImportStep =
  | { readonly type: 'put-down' }
  | { readonly type: 'unreadable' }
  | { readonly type: 'send'; readonly work: Work; readonly file: FileInHand }
  | { readonly type: 'heard'; readonly line: ImportLine };

export const NO_FILE: ImportState = {
  file: null,
  busy: null,
  columns: null,
  check: null,
  imported: null,
  refusal: null,
};

const UNREADABLE = 'This file cannot be read any more: it was changed or moved. Choose it again.';

/** What comes after a step: pure, so that what the screen shows follows from what was heard. */
export function nextImportState(state: ImportState, step: ImportStep): ImportState {
  if (step.type === 'put-down') return NO_FILE;
  if (step.type === 'unreadable')
    return { ...NO_FILE, refusal: { code: 'unreadable', sentence: UNREADABLE, work: 'check' } };
  if (step.type === 'send') {
    const busy = { work: step.work, line: null };
    return step.work === 'check'
      ? { ...NO_FILE, file: step.file, busy, columns: state.file === step.file ? state.columns : null }
      : { ...state, busy, refusal: null };
  }
  return heard(state, step.line);
}

function heard(state: ImportState, line: ImportLine): ImportState {
  const { busy } = state;
  if (busy === null) return state;
  if (line.step === 'columns') return { ...state, columns: line.columns };
  if (line.step === 'done')
    return busy.work === 'run'
      ? { ...state, busy: null, imported: line.check }
      : { ...state, busy: null, check: line.check };
  if (line.step !== 'refused') return { ...state, busy: { ...busy, line } };
  const { code, sentence } = line;
  const check = line.check ?? state.check;
  return { ...state, busy: null, check, refusal: { code, sentence, work: busy.work } };
}
