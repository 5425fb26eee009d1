/** A job line's ID: the job number and the line number, as "J-086.2". */
export function jobLineId(jobId: string, lineNo: number): string {
  return `${jobId}.${lineNo}`;
}
