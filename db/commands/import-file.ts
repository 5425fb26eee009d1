import type { Permit } from '../../lib/access/permit';
import type { RowRemark } from '../../lib/import/group-jobs';
import { ERRORS_LISTED, type ReadFile, type ShownRow } from '../../lib/import/read-rows';
import type { RowError } from '../../lib/import/row-reader';
import { ok, type Refusal, type Result, refuse } from '../../lib/result';
import type { Env, Ledger } from '../ledger/ledger';
import { write } from '../ledger/write';
import type { Db } from '../open';
import { importCuts } from './import-cuts';
import { importJobs } from './import-jobs';
import { ImportRun, type Standing } from './import-run';
import { importTools } from './import-tools';

/** What an import does, or would do, row by row. */
export interface ImportCheck {
  readonly kind: ReadFile['kind'];
  /** Rows that hold anything. */
  readonly rowsTotal: number;
  readonly newRows: number;
  readonly alreadyThere: number;
  /** Rows that the file itself marks as taken back. */
  readonly leftOut: number;
  /** The first errors in row order; `errorCount` says how many there are in all. */
  readonly errors: readonly RowError[];
  readonly errorCount: number;
  /** What should be known before importing, though it stops nothing; the first of them, and how many in all. */
  readonly remarks: readonly RowRemark[];
  readonly remarkCount: number;
  readonly columns: readonly string[];
  readonly firstRows: readonly (ShownRow & { readonly standing: Standing })[];
}

/** Why nothing was imported, with the rows at fault where it was rows. */
export interface ImportRefusal extends Refusal {
  readonly check?: ImportCheck;
}

/**
 * Says truthfully what importing a file would do: runs the very import, decisions of the ledger and checks of the
 * database included, in a transaction that is always rolled back.
 */
export function checkImport(
  db: Db,
  permit: Permit<'import-file'>,
  file: ReadFile,
  env: Env,
): Result<ImportCheck, Refusal> {
  let check: ImportCheck | undefined;
  const tried = write(db, permit, env, (ledger) => {
    check = runImport(db, ledger, file, env);
    if (check.errorCount === 0) ledger.flush();
    return refuse('tried', 'Nothing was changed: this was a trial.');
  });
  if (!tried.ok && tried.refusal.code !== 'tried') return tried;
  return check === undefined ? refuse('tried', 'This file could not be tried.') : ok(check);
}

/**
 * Imports a file: all of it in one transaction, or none of it when a single row is at fault. `batchId` marks its entries
 * as one import. The same file again changes nothing.
 */
export function importFile(
  db: Db,
  permit: Permit<'import-file'>,
  file: ReadFile,
  env: Env & { readonly batchId: string },
): Result<ImportCheck, ImportRefusal> {
  let check: ImportCheck | undefined;
  const work = (ledger: Ledger): Result<ImportCheck, Refusal> => {
    check = runImport(db, ledger, file, env);
    return check.errorCount === 0 ? ok(check) : refuse('rows', errorSentence(check));
  };
  const done = write(db, permit, env, work, env.batchId);
  return done.ok ? done : { ok: false, refusal: { ...done.refusal, ...(check && { check }) } };
}

function runImport(db: Db, ledger: Ledger, file: ReadFile, env: Env): ImportCheck {
  const run = new ImportRun(db, ledger, file, env);
  if (file.kind === 'tools') importTools(run, file.rows);
  else if (file.kind === 'cuts') importCuts(run, file.rows);
  else importJobs(run, file.rows, file.errorCount === 0);
  const inRowOrder = (a: { rowNo: number }, b: { rowNo: number }) => a.rowNo - b.rowNo;
  const errors = [...file.errors, ...run.errors].sort(inRowOrder);
  return {
    kind: file.kind,
    rowsTotal: file.rowsTotal,
    newRows: run.counts.new,
    alreadyThere: run.counts['already-there'],
    leftOut: run.counts['left-out'],
    errors: errors.slice(0, ERRORS_LISTED),
    errorCount: file.errorCount + run.errors.length,
    remarks: run.remarks.toSorted(inRowOrder).slice(0, ERRORS_LISTED),
    remarkCount: run.remarks.length,
    columns: file.columns,
    firstRows: file.firstRows.map((row) => ({ ...row, standing: run.shown.get(row.rowNo) ?? 'error' })),
  };
}

function errorSentence({ errorCount, errors }: ImportCheck): string {
  const first = errors[0];
  const where = first === undefined ? '' : ` The first is in row ${first.rowNo}: ${first.sentence}`;
  return `Nothing was imported: the file has ${errorCount} ${errorCount === 1 ? 'error' : 'errors'}.${where}`;
}
