import { connectionKey } from '../shop/connection-text';
import type { Job, JobLine } from '../shop/job';
import type { JobRow } from './read-job-row';
import { findConnection, findMaterial, type ShopIndex, sizeServiceText } from './shop-index';

/** Something about a row that does not stop an import but should be known before it. */
export interface RowRemark {
  readonly rowNo: number;
  readonly sentence: string;
}

/** What is wrong with one row of a group, by our column. */
export interface RowFault extends RowRemark {
  readonly key: string;
}

/** One job of a file: its lines with the rows that they come from, or what is wrong. */
export interface JobGroup {
  readonly job: Job;
  readonly status: JobRow['status'];
  /** The rows in file order, and the line that each of them is. */
  readonly rowNos: readonly number[];
  readonly lineNos: readonly number[];
  readonly faults: readonly RowFault[];
  readonly remarks: readonly RowRemark[];
}

const LINES_MAX = 200;

/**
 * Puts the rows of each job together, in the order in which the jobs first appear. A size or a material that the shop
 * does not know is kept, with a remark: the plan will say what is missing.
 */
export function groupJobs(index: ShopIndex, rows: readonly JobRow[]): JobGroup[] {
  const byJob = new Map<string, JobRow[]>();
  for (const row of rows) {
    const group = byJob.get(row.job);
    if (group === undefined) byJob.set(row.job, [row]);
    else group.push(row);
  }
  return [...byJob.values()].map((group) => groupOf(index, group));
}

function groupOf(index: ShopIndex, rows: readonly JobRow[]): JobGroup {
  const faults: RowFault[] = [...titleFaults(rows), ...statusFaults(rows), ...lineFaults(rows)];
  const remarks: RowRemark[] = [];
  const lines = rows.map((row, at): JobLine => {
    const connection = findConnection(index, row.size, row.service);
    const material = findMaterial(index, row.material);
    const { rowNo, heat, ends, operations, startOnDay, dueOnDay, value } = row;
    if (!connection.ok)
      remarks.push({
        rowNo,
        sentence: `The shop has no table row for ${sizeServiceText(row.size, row.service)}; the plan will say what is missing.`,
      });
    if (
      !material.ok &&
      material.refusal.code === 'unknown-material' &&
      /^[A-Za-z0-9][A-Za-z0-9_.-]{0,63}$/.test(row.material)
    )
      remarks.push({ rowNo, sentence: `The shop knows no material ${row.material}; the plan will say so.` });
    else if (!material.ok) faults.push({ rowNo, key: 'material', sentence: material.refusal.sentence });
    return {
      lineNo: row.line ?? at + 1,
      connectionId: connection.ok ? connection.value.id : connectionKey(row.size, row.service),
      materialId: material.ok ? material.value.id : row.material,
      ...{ heat, ends, operations: [...operations], startOnDay, dueOnDay, value },
    };
  });
  const title = rows.find((row) => row.title !== '')?.title ?? '';
  const job = { id: rows[0]?.job ?? '', title, lines: lines.toSorted((a, b) => a.lineNo - b.lineNo) };
  const status = rows[0]?.status ?? 'open';
  return {
    job,
    status,
    rowNos: rows.map((row) => row.rowNo),
    lineNos: lines.map((line) => line.lineNo),
    faults,
    remarks,
  };
}

function titleFaults(rows: readonly JobRow[]): RowFault[] {
  const first = rows.find((row) => row.title !== '');
  return rows
    .filter((row) => row.title !== '' && row.title !== first?.title)
    .map((row) => ({
      rowNo: row.rowNo,
      key: 'title',
      sentence: `Job ${row.job} has another title in row ${first?.rowNo}.`,
    }));
}

function statusFaults(rows: readonly JobRow[]): RowFault[] {
  const first = rows[0];
  return rows
    .filter((row) => row.status !== first?.status)
    .map(({ rowNo, job, status }) => ({
      rowNo,
      key: 'status',
      sentence: `Job ${job} is ${status} here and ${first?.status} in row ${first?.rowNo}.`,
    }));
}

function lineFaults(rows: readonly JobRow[]): RowFault[] {
  const faults: RowFault[] = [];
  const numbered = rows.filter((row) => row.line !== null);
  if (numbered.length > 0 && numbered.length < rows.length) {
    for (const row of rows)
      if (row.line === null)
        faults.push({
          rowNo: row.rowNo,
          key: 'line',
          sentence: `Other rows of job ${row.job} have line numbers; this one needs one too.`,
        });
  }
  const first = new Map<number, number>();
  for (const row of numbered) {
    const before = first.get(row.line ?? 0);
    if (before !== undefined)
      faults.push({
        rowNo: row.rowNo,
        key: 'line',
        sentence: `Job ${row.job} has line ${row.line} in row ${before} already.`,
      });
    else first.set(row.line ?? 0, row.rowNo);
  }
  const over = rows[LINES_MAX];
  if (over !== undefined)
    faults.push({
      rowNo: over.rowNo,
      key: 'job',
      sentence: `Job ${over.job} has more than ${LINES_MAX} lines.`,
    });
  return faults;
}
