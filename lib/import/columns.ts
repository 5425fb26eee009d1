import type { ImportColumn, ImportKind } from './column';
import { CUT_COLUMNS } from './cut-columns';
import { JOB_COLUMNS } from './job-columns';
import { TOOL_COLUMNS } from './tool-columns';

/** The columns of each file, in the order in which we write them. */
export const COLUMNS: Readonly<Record<ImportKind, readonly ImportColumn[]>> = {
  tools: TOOL_COLUMNS,
  cuts: CUT_COLUMNS,
  jobs: JOB_COLUMNS,
};
