/**
 * The shop's fixed words, each list in the order in which screens show it. Codes are stored; labels are shown.
 * Source of the words: common practice, no source.
 */

/** Pressure service of a connection: the same tube size is threaded short (medium) or long (high). */
export const SERVICES = ['medium', 'high'] as const;
export type Service = (typeof SERVICES)[number];
export const SERVICE_LABEL: Record<Service, string> = { medium: 'medium pressure', high: 'high pressure' };

/** What is done to an end. `assemble` is torquing the gland nut: needs a torque wrench, cuts nothing. */
export const OPERATIONS = ['cone', 'thread', 'assemble'] as const;
export type Operation = (typeof OPERATIONS)[number];

/** The operations that cut, and so wear an edge. */
export type CutOperation = Exclude<Operation, 'assemble'>;

/** Thread hand. Tube ends are left hand; a right-hand look-alike must never pass. */
export const HANDS = ['LH', 'RH'] as const;
export type Hand = (typeof HANDS)[number];
export const HAND_LABEL: Record<Hand, string> = { LH: 'left hand', RH: 'right hand' };

/** What a part is for in a complete set. Two of them have an edge that wears: blade and die. */
export const ROLES = [
  'coning-body',
  'coning-guide',
  'blade',
  'die-stock',
  'threading-guide',
  'die',
  'collet',
  'cone-gauge',
  'go-ring',
  'not-go-ring',
  'length-gauge',
  'setting-plug',
  'micrometer',
  'thread-wires',
  'master-seat',
  'torque-wrench',
  'deburr-tool',
  'brush',
  'fluid',
] as const;
export type Role = (typeof ROLES)[number];

export const ROLE_LABEL: Record<Role, string> = {
  'coning-body': 'coning body',
  'coning-guide': 'coning guide',
  blade: 'coning blade',
  'die-stock': 'die stock',
  'threading-guide': 'threading guide',
  die: 'threading die',
  collet: 'collet or vise adapter',
  'cone-gauge': 'cone gauge',
  'go-ring': 'GO ring',
  'not-go-ring': 'NOT GO ring',
  'length-gauge': 'thread-length gauge',
  'setting-plug': 'setting plug',
  micrometer: 'micrometer',
  'thread-wires': 'thread wires',
  'master-seat': 'master seat',
  'torque-wrench': 'torque wrench',
  'deburr-tool': 'deburring tool',
  brush: 'brush',
  fluid: 'cutting fluid',
};

/** Roles with a cutting edge: the kinds that the life model knows. */
export const EDGE_KINDS = ['blade', 'die'] as const;
export type EdgeKind = (typeof EDGE_KINDS)[number];

/** Roles that carry a hand: what is of the other hand never goes out for a size. Common practice, no source. */
export const HANDED_ROLES: readonly Role[] = ['die', 'go-ring', 'not-go-ring', 'setting-plug'];

/** Roles that one piece does for every size, so that a part of them need name none. Common practice, no source. */
export const UNSIZED_ROLES: readonly Role[] = [
  'micrometer',
  'thread-wires',
  'torque-wrench',
  'deburr-tool',
  'brush',
  'fluid',
];

/** Roles kept under calibration: out of date means not to be used for acceptance. */
export const CALIBRATED_ROLES: readonly Role[] = [
  'cone-gauge',
  'go-ring',
  'not-go-ring',
  'length-gauge',
  'setting-plug',
  'micrometer',
  'thread-wires',
  'master-seat',
  'torque-wrench',
];

/** Where a tool stands. Exactly one at any time. */
export const TOOL_STATES = [
  'in-crib',
  'issued',
  'regrind',
  'calibration',
  'quarantined',
  'scrapped',
  'lost',
] as const;
export type ToolState = (typeof TOOL_STATES)[number];
export const TOOL_STATE_LABEL: Record<ToolState, string> = {
  'in-crib': 'in the crib',
  issued: 'issued',
  regrind: 'out for regrind',
  calibration: 'out for calibration',
  quarantined: 'quarantined',
  scrapped: 'scrapped',
  lost: 'lost',
};

/**
 * How an edge's life ended. Only `worn` is evidence about wear; `incident` (dropped, cross-threaded, chipped when new)
 * is censoring with a rate of its own; `removed-working` is censoring.
 */
export const EDGE_ENDS = ['worn', 'incident', 'removed-working'] as const;
export type EdgeEnd = (typeof EDGE_ENDS)[number];

/** Why an edge ended, in shop words, and which kind of evidence that is. Common practice, no source. */
export const END_CAUSES = [
  { code: 'worn', label: 'worn: cuts rough, or GO will not run on', end: 'worn' },
  { code: 'teeth-broken-worn', label: 'broke at the end of its life', end: 'worn' },
  { code: 'dropped', label: 'dropped', end: 'incident' },
  { code: 'chipped-early', label: 'chipped early', end: 'incident' },
  { code: 'cross-threaded', label: 'cross-threaded by hand', end: 'incident' },
  { code: 'galled', label: 'galled: dry or wrong fluid', end: 'incident' },
  { code: 'bad-lot', label: 'faulty from the maker', end: 'incident' },
  { code: 'retired-good', label: 'taken out while still good', end: 'removed-working' },
] as const satisfies readonly { code: string; label: string; end: EdgeEnd }[];
export type EndCause = (typeof END_CAUSES)[number]['code'];

/** Why an end was refused at the vise. Common practice, no source. */
export const REJECT_CAUSES = [
  { code: 'go-tight', label: 'GO ring will not run on' },
  { code: 'not-go-runs-on', label: 'NOT GO runs on too far' },
  { code: 'torn-thread', label: 'torn or rough thread' },
  { code: 'crooked', label: 'cross-cut or crooked thread' },
  { code: 'length', label: 'thread too short or too long' },
  { code: 'cone-finish', label: 'cone finish: chatter, step or tear' },
  { code: 'cone-angle', label: 'cone angle or contact wrong' },
  { code: 'nicked', label: 'nicked or handled badly' },
  { code: 'other', label: 'other' },
] as const satisfies readonly { code: string; label: string }[];
export type RejectCause = (typeof REJECT_CAUSES)[number]['code'];
