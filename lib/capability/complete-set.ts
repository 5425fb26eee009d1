import type { Operation, Role } from '../shop/vocabulary';

/** Where in the work a need bites: "can cut", "can accept" and "can assemble" are different answers. */
export type NeedPhase = 'cut' | 'accept' | 'assemble';

/** One item of a complete set. */
export interface SetNeed {
  readonly role: Role;
  /** What stops when it is absent. A ring out of calibration stops acceptance, not cutting. */
  readonly phase: NeedPhase;
  /** One item may serve several connections. What an item fits is on the item; this says what to expect. */
  readonly sharedBetweenSizes: boolean;
  /** On one line at a time from its start to its due day. False: handed across the bench within the day. */
  readonly heldByLine: boolean;
  /** Must carry the hand of the connection: a right-hand die in the left-hand slot never satisfies the need. */
  readonly handBound: boolean;
  /** What use does to it: nothing to speak of, wears an edge, or uses it up. */
  readonly use: 'lasting' | 'wears' | 'consumed';
}

type Row = SetNeed & { readonly ops: readonly Operation[] };

const LASTING = { sharedBetweenSizes: false, heldByLine: true, handBound: false, use: 'lasting' } as const;
const SHARED = { ...LASTING, sharedBetweenSizes: true } as const;
const PASSED = { ...SHARED, heldByLine: false } as const;

/** The complete set, in the order in which the bench reaches for it. Source: common practice, no source. */
export const COMPLETE_SET: readonly Row[] = [
  { role: 'collet', ops: ['cone', 'thread'], phase: 'cut', ...LASTING },
  { role: 'coning-body', ops: ['cone'], phase: 'cut', ...SHARED },
  { role: 'coning-guide', ops: ['cone'], phase: 'cut', ...LASTING },
  { role: 'blade', ops: ['cone'], phase: 'cut', ...LASTING, use: 'wears' },
  { role: 'die-stock', ops: ['thread'], phase: 'cut', ...SHARED },
  { role: 'threading-guide', ops: ['thread'], phase: 'cut', ...LASTING },
  { role: 'die', ops: ['thread'], phase: 'cut', ...LASTING, handBound: true, use: 'wears' },
  { role: 'deburr-tool', ops: ['cone', 'thread'], phase: 'cut', ...PASSED },
  { role: 'brush', ops: ['cone', 'thread'], phase: 'cut', ...PASSED },
  { role: 'fluid', ops: ['cone', 'thread'], phase: 'cut', ...PASSED, use: 'consumed' },
  { role: 'cone-gauge', ops: ['cone'], phase: 'accept', ...LASTING },
  { role: 'go-ring', ops: ['thread'], phase: 'accept', ...LASTING, handBound: true },
  { role: 'not-go-ring', ops: ['thread'], phase: 'accept', ...LASTING, handBound: true },
  { role: 'length-gauge', ops: ['thread'], phase: 'accept', ...LASTING },
  { role: 'torque-wrench', ops: ['assemble'], phase: 'assemble', ...PASSED },
];

/**
 * What a complete set holds for the work to be done, each role once, in bench order. For asking whether a size can be
 * made at all. Source: the table above, common practice.
 * @example setNeeds(['assemble']).length // => 1
 */
export function setNeeds(ops: readonly Operation[]): readonly SetNeed[] {
  return COMPLETE_SET.filter((row) => row.ops.some((op) => ops.includes(op)));
}
