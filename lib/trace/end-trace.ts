import type { Day } from '../calendar';
import type { AcceptanceRecord } from '../ledger/acceptance-history';
import type { CheckKind, EdgeThen, IndependentCheck } from '../shop/acceptance';
import type { Disposition } from '../shop/recall';
import type { RejectCause, Role } from '../shop/vocabulary';

/** A gauge that had a say about the end, with the certificate that was valid on that day. */
export interface TracedGauge {
  readonly toolId: string;
  readonly role: Role;
  readonly verdict: 'pass' | 'fail' | 'not-used';
  readonly turns: number | null;
  readonly certificate: Certificate | null;
}

/** A calibration as far as a trace prints it. */
export interface Certificate {
  readonly number: string;
  readonly laboratory: string;
  readonly onDay: Day;
  readonly dueOnDay: Day | null;
  readonly result: 'pass' | 'fail';
  /** The certificate itself, where it was filed. */
  readonly file?: { readonly sha256: string; readonly name: string } | null;
}

/** The tool that cut the end, with what it had cut by then. */
export interface TracedEdge {
  readonly toolId: string;
  readonly lot: string;
  readonly usedThen: EdgeThen | null;
}

/** One look at the end. */
export interface TracedLook {
  readonly acceptanceId: string;
  readonly personId: string;
  readonly gaugedAtMs: number;
  readonly gaugedOnDay: Day;
  readonly checkKind: CheckKind;
  readonly decision: 'accepted' | 'refused';
  readonly cause: RejectCause | null;
  readonly rule: AcceptanceRecord['rule'];
  readonly finish: AcceptanceRecord['finish'];
  readonly coneContact: AcceptanceRecord['coneContact'];
  readonly exposedThreads: number | null;
  readonly boreClear: boolean;
  readonly independentCheck: IndependentCheck;
  readonly gauges: readonly TracedGauge[];
  /** Gauges that the work asked for and nobody recorded at this look. */
  readonly gaugesMissing: readonly Role[];
  readonly die: TracedEdge | null;
  readonly blade: TracedEdge | null;
  readonly fluid: { readonly toolId: string; readonly lot: string } | null;
}

/** What a recall says about the end. */
export interface TracedRecall {
  readonly recallId: string;
  readonly gaugeId: string;
  readonly status: 'open' | 'closed';
  readonly hows: readonly Disposition[];
}

/** Everything that is known of one end. */
export interface EndTrace {
  readonly jobId: string | null;
  readonly jobLineId: string | null;
  readonly endNo: number | null;
  readonly mark: string | null;
  readonly connectionId: string;
  readonly materialId: string;
  readonly heat: string;
  readonly shippedOnDay: Day | null;
  /** What the look was about: the cone, the thread, or both. */
  readonly operations: AcceptanceRecord['operations'];
  /** The look that accepted it first, then those that gauged it again. */
  readonly looks: readonly TracedLook[];
  /** Ends of the same line refused up to the day it was accepted: its non-conformances. */
  readonly refusedBefore: readonly {
    readonly acceptanceId: string;
    readonly endCount: number;
    readonly cause: RejectCause;
  }[];
  readonly recalls: readonly TracedRecall[];
}

/** The tools that looks name, as the record has them. */
export interface TracedTools {
  readonly lotOf: (toolId: string) => string;
  readonly calibrations: (toolId: string) => readonly Certificate[];
}

/**
 * Which certificate was valid for a gauge on a day: the last one that passed, calibrated on or before that day and not yet
 * past its due day (to its end). Null where none was: the gauge could show none that day.
 * @example certificateOn([{ number: 'C-1', laboratory: '', onDay: '2026-01-05', dueOnDay: '2026-07-05', result: 'pass' }], '2026-07-06') // => null
 */
export function certificateOn(calibrations: readonly Certificate[], onDay: Day): Certificate | null {
  const upTo = calibrations.filter((one) => one.onDay <= onDay);
  const last = upTo.reduce<Certificate | undefined>(
    (latest, one) => (latest === undefined || one.onDay >= latest.onDay ? one : latest),
    undefined,
  );
  if (last === undefined || last.result === 'fail') return null;
  return last.dueOnDay === null || last.dueOnDay >= onDay ? last : null;
}

/** One look as a trace prints it. */
export function traceLook(look: AcceptanceRecord, tools: TracedTools): TracedLook {
  const { personId, gaugedAtMs, gaugedOnDay, checkKind, decision, cause, rule, finish, coneContact } = look;
  const { exposedThreads, boreClear, independentCheck, dieId, bladeId, fluidId, dieThen, bladeThen } = look;
  return {
    acceptanceId: look.id,
    ...{ personId, gaugedAtMs, gaugedOnDay, checkKind, decision, cause, rule, finish, coneContact },
    ...{ exposedThreads, boreClear, independentCheck, gaugesMissing: look.gaugesMissing },
    gauges: look.gauges.map((gauge) => ({
      ...gauge,
      certificate: certificateOn(tools.calibrations(gauge.toolId), gaugedOnDay),
    })),
    die: dieId === null ? null : { toolId: dieId, lot: tools.lotOf(dieId), usedThen: dieThen },
    blade: bladeId === null ? null : { toolId: bladeId, lot: tools.lotOf(bladeId), usedThen: bladeThen },
    fluid: fluidId === null ? null : { toolId: fluidId, lot: tools.lotOf(fluidId) },
  };
}

/** Whether a look is about an end of a line: by its mark, or by its number. */
export function isAboutEnd(
  look: Pick<AcceptanceRecord, 'decision' | 'regaugesId' | 'firstEndNo' | 'endCount' | 'endMarks'>,
  asked: { readonly endNo: number } | { readonly mark: string },
): boolean {
  if (look.decision !== 'accepted' || look.regaugesId !== null) return false;
  if ('mark' in asked) return look.endMarks.some((mark) => sameMark(mark, asked.mark));
  const { firstEndNo, endCount } = look;
  return firstEndNo !== null && asked.endNo >= firstEndNo && asked.endNo < firstEndNo + endCount;
}

/**
 * Marks read the same whatever their case and spacing: "S-18 end 2" and "s-18  END 2".
 * @example sameMark('S-18 end 2', ' s-18  END 2') // => true
 */
export function sameMark(a: string, b: string): boolean {
  const plain = (mark: string) => mark.toLowerCase().split(/\s+/).filter(Boolean).join(' ');
  return plain(a) === plain(b);
}
