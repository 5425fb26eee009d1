import type { CheckKind, GaugeResult } from '../../lib/shop/acceptance';
import type { AcceptEnds } from '../../lib/shop/acceptance-input';
import { jobLineId } from '../../lib/shop/job-line-id';
import type { RejectCause, Role } from '../../lib/shop/vocabulary';
import type { CutRow } from './cutting';

/** One look at ends of a row of work, before it is known which gauges lie ready. */
export interface DemoLook {
  readonly row: CutRow;
  readonly endCount: number;
  readonly checkKind: CheckKind;
  readonly cause: RejectCause | null;
  /** Number of the first of these ends on its line; null for ends that were refused. */
  readonly firstEndNo: number | null;
  /** Minutes after the threads were cut. */
  readonly minutesLater: number;
  /** Nobody wrote down which gauges were used. */
  readonly unrecorded: boolean;
}

/** The job whose ends bear the marks of their spools, so that one mark finds one end. */
const MARKED_JOB = 'J-077';
const FIRST_SPOOL = 16;

/** The gauges that ends are looked at with in this shop. */
export const LOOK_ROLES: readonly Role[] = ['go-ring', 'not-go-ring', 'cone-gauge'];

/** What the person at the vise saw and entered. */
export function lookInput(
  look: DemoLook,
  found: {
    readonly gaugeIds: ReadonlyMap<Role, string>;
    readonly bladeId: string | null;
    readonly fluidId: string | null;
  },
): Omit<AcceptEnds, 'entryId' | 'deviceAtMs' | 'reason' | 'gaugedOnDay'> {
  const { job, dieId, offset, slot } = look.row;
  const { cause, endCount, firstEndNo } = look;
  return {
    jobLineId: jobLineId(job.id, 1),
    connectionId: job.connectionId,
    materialId: job.materialId,
    heat: job.heat,
    ...{ firstEndNo, endCount, endMarks: marksOf(look), operations: ['cone', 'thread'] },
    gauges: [...found.gaugeIds].map(([role, toolId]) => result(role, toolId, look)),
    finish: 'smooth',
    coneContact: look.checkKind === 'first-off' && cause === null ? 'nose-ring' : 'not-checked',
    exposedThreads: cause === 'length' ? 3.5 : 1 + ((offset + slot) & 1) / 2,
    boreClear: true,
    otherFault: cause === null || cause === 'go-tight' || cause === 'length' ? null : cause,
    ...{ dieId, bladeId: found.bladeId, fluidId: found.fluidId },
    independentCheck: look.checkKind === 'first-off' ? 'another-person' : 'no',
    ...{ checkKind: look.checkKind, regaugesId: null, gaugedAtMs: null },
  };
}

function result(role: Role, toolId: string, { cause, row }: DemoLook): GaugeResult {
  const fails = role === 'go-ring' && cause === 'go-tight';
  const turns = role === 'not-go-ring' ? (Math.abs(row.offset) % 4) / 2 : null;
  return { toolId, role, verdict: fails ? 'fail' : 'pass', turns };
}

/** “S-18 end 2”: two ends to a spool. */
function marksOf({ row, firstEndNo, endCount }: DemoLook): string[] {
  if (row.job.id !== MARKED_JOB || firstEndNo === null) return [];
  return Array.from({ length: endCount }, (_, at) => {
    const no = firstEndNo - 1 + at;
    return `S-${FIRST_SPOOL + Math.floor(no / 2)} end ${(no % 2) + 1}`;
  });
}
