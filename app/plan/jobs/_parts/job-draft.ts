import type { LineRow } from '@/db/queries/jobs';
import { readConnectionKey } from '@/lib/shop/connection-text';
import type { Duty } from '@/lib/shop/duty';
import { sizeLabel } from '@/lib/shop/size';
import type { Service } from '@/lib/shop/vocabulary';

/** One line of a job as the form shows it: everything as text. */
export interface LineDraft {
  readonly lineNo: number;
  /** A row of the size table, or empty when the size is typed. */
  readonly connectionId: string;
  readonly otherSize: string;
  readonly otherService: Service;
  readonly materialId: string;
  readonly heat: string;
  readonly ends: string;
  readonly cone: boolean;
  readonly thread: boolean;
  readonly assemble: boolean;
  readonly startOnDay: string;
  readonly dueOnDay: string;
  readonly precious: boolean;
  /** What the tube will carry. */
  readonly duty: Duty;
  /** Ends of it are logged: it can be changed, not removed. */
  readonly begun: boolean;
}

/** A line not yet written. */
export function blankLine(lineNo: number, today: string): LineDraft {
  return {
    lineNo,
    connectionId: '',
    otherSize: '',
    otherService: 'medium',
    materialId: '',
    heat: '',
    ends: '',
    cone: true,
    thread: true,
    assemble: false,
    startOnDay: today,
    dueOnDay: '',
    precious: false,
    duty: 'ordinary',
    begun: false,
  };
}

/** The first line of a new job, filled in with what the address already says: a question that was tried on the plan. */
export function askedLine(
  asked: Readonly<Record<string, string | string[] | undefined>>,
  today: string,
): LineDraft {
  const said = (name: string): string => (typeof asked[name] === 'string' ? asked[name] : '');
  const blank = blankLine(1, today);
  return {
    ...blank,
    connectionId: said('size'),
    materialId: said('material'),
    ends: said('ends'),
    startOnDay: said('start') || blank.startOnDay,
    dueOnDay: said('due'),
    precious: said('value') === 'precious',
  };
}

/** A line of the record, ready to be changed. A size without a table row goes where sizes are typed. */
export function draftOf(line: LineRow, knownConnectionIds: readonly string[]): LineDraft {
  const known = knownConnectionIds.includes(line.connectionId);
  const typed = known ? undefined : readConnectionKey(line.connectionId);
  return {
    lineNo: line.lineNo,
    connectionId: typed === undefined ? line.connectionId : '',
    otherSize: typed === undefined ? '' : sizeLabel({ num: typed.odNum, den: typed.odDen }),
    otherService: typed?.service ?? 'medium',
    materialId: line.materialId,
    heat: line.heat,
    ends: String(line.ends),
    cone: line.operations.includes('cone'),
    thread: line.operations.includes('thread'),
    assemble: line.operations.includes('assemble'),
    startOnDay: line.startOnDay,
    dueOnDay: line.dueOnDay,
    precious: line.value === 'precious',
    duty: line.duty ?? 'ordinary',
    begun: line.goodCones > 0 || line.goodThreads > 0,
  };
}
