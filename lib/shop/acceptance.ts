import { z } from 'zod';
import {
  countField,
  dayField,
  form,
  keyField,
  listField,
  measureField,
  microField,
  momentField,
  nameField,
  textField,
  yesNoField,
} from './field';
import { REJECT_CAUSES, ROLES } from './vocabulary';

/** One look at one or more ends with the same result: the whole content of `ends-accepted`. */
export const GAUGE_VERDICTS = ['pass', 'fail', 'not-used'] as const;
export const CHECK_KINDS = ['first-off', 'in-process', 'last-off', 'each'] as const;
export type CheckKind = (typeof CHECK_KINDS)[number];
export const CHECK_KIND_LABEL: Record<CheckKind, string> = {
  'first-off': 'first-off',
  'in-process': 'in process',
  'last-off': 'last-off',
  each: 'each end',
};

export const CONE_CONTACTS = ['nose-ring', 'broken', 'large-end', 'not-checked'] as const;
export type ConeContact = (typeof CONE_CONTACTS)[number];
/** What the blueing shows against a master seat. Common practice, no source. */
export const CONE_CONTACT_LABEL: Record<ConeContact, string> = {
  'nose-ring': 'unbroken ring near the nose',
  broken: 'broken ring',
  'large-end': 'blue at the large end',
  'not-checked': 'not blued',
};

export const FINISHES = ['smooth', 'can-be-felt'] as const;
export const INDEPENDENT_CHECKS = ['no', 'another-person', 'another-gauge'] as const;
export type IndependentCheck = (typeof INDEPENDENT_CHECKS)[number];

/** What one gauge said. `turns`: how far a NOT GO ring ran on; null for every other gauge. */
export const GaugeResultSchema = form({
  toolId: textField('The gauge', 40).min(1, 'Scan or type the gauge.'),
  role: z.enum(ROLES, { error: 'The kind of gauge is not one we know.' }),
  verdict: z.enum(GAUGE_VERDICTS, { error: 'Say what the gauge said: passed, failed or not used.' }),
  turns: measureField('Turns', { min: 0, max: 20 }).nullable(),
});
export type GaugeResult = z.infer<typeof GaugeResultSchema>;

/** What an edge had cut when the ends were looked at, and which edge of the tool it was. */
export const EdgeThenSchema = form({
  edgeNo: countField('The edge', { min: 1, max: 100 }),
  ends: countField('Ends'),
  /** Millionths of a turn (die) or of a mm³ (blade), before any material factor. */
  exposureMicro: microField('The exposure'),
});
export type EdgeThen = z.infer<typeof EdgeThenSchema>;

/** The rule that was applied, and where it is written. */
export const AppliedRuleSchema = form({
  notGoTurnsMax: measureField('NOT GO turns', { min: 0, max: 10 }),
  whose: textField('Whose rule it is', 120),
  source: z.enum(['job', 'size', 'shop'], {
    error: 'A rule stands on the job, in the size table or with the shop.',
  }),
});
export type AppliedRule = z.infer<typeof AppliedRuleSchema>;

export const rejectCauseField = z.enum(
  REJECT_CAUSES.map((cause) => cause.code),
  { error: 'A reject needs a cause from the list.' },
);

/** What was looked at and seen, as the person at the vise says it. */
export const endsSeen = {
  jobLineId: textField('The job line', 80).nullable(),
  connectionId: keyField('The connection'),
  materialId: keyField('The material'),
  heat: textField('The heat', 40),
  /** Ends of the line are numbered from one; null where they bear marks or no number. */
  firstEndNo: countField('The end’s number', { min: 1, max: 100_000 }).nullable(),
  endCount: countField('Ends', { min: 1, max: 500 }),
  /** Marks such as “S-18 end 2”: none, or one for each end. */
  endMarks: listField('The marks', nameField('A mark', 40), 500),
  operations: listField(
    'What was checked',
    z.enum(['cone', 'thread'], { error: 'Check cones, threads or both.' }),
    2,
  ).min(1, 'Say what was checked: cone, thread or both.'),
  gauges: listField('The gauges', GaugeResultSchema, 20),
  /** By the fingernail on the finished surface, never on an edge. */
  finish: z.enum(FINISHES, { error: 'Say whether a mark can be felt.' }),
  coneContact: z.enum(CONE_CONTACTS, { error: 'Say what the blueing shows.' }),
  /** Threads between collar and cone with the collar run on; null: not looked at. */
  exposedThreads: measureField('Exposed threads', { min: 0, max: 30 }).nullable(),
  boreClear: yesNoField('Bore clear'),
  /** Something that no gauge showed: a crooked thread, a nick. Null: nothing. */
  otherFault: rejectCauseField.nullable(),
  dieId: textField('The die', 40).nullable(),
  bladeId: textField('The blade', 40).nullable(),
  fluidId: textField('The fluid', 40).nullable(),
  independentCheck: z.enum(INDEPENDENT_CHECKS, {
    error: 'Say whether somebody else, or another gauge, checked it.',
  }),
  checkKind: z.enum(CHECK_KINDS, {
    error: 'Say which check it is: first-off, in process, last-off or each.',
  }),
  /** The earlier acceptance whose ends were gauged again now; null for ends looked at for the first time. */
  regaugesId: textField('The earlier acceptance', 64).nullable(),
};

export const AcceptanceSchema = form({
  ...endsSeen,
  gaugedAtMs: momentField('The moment of gauging'),
  gaugedOnDay: dayField('The day of gauging'),
  rule: AppliedRuleSchema.nullable(),
  dieThen: EdgeThenSchema.nullable(),
  bladeThen: EdgeThenSchema.nullable(),
  decision: z.enum(['accepted', 'refused']),
  cause: rejectCauseField.nullable(),
  /** Gauges that the work asks for and nobody recorded: while there are any, the ends are not releasable. */
  gaugesMissing: listField('The gauges missing', z.enum(ROLES), 20),
});
export type Acceptance = z.infer<typeof AcceptanceSchema>;
