/** Where a hand is about to do the thing that a caution is about. */
export const CAUTION_PLACES = [
  'bench',
  'blade',
  'cutting',
  'powered-head',
  'fluid',
  'regrind',
  'titanium',
  'oxygen',
  'accept',
  'broken',
  'assembly',
  'prediction',
  'gauge',
  'dimensions',
  'footer',
] as const;
export type CautionPlace = (typeof CAUTION_PLACES)[number];

/** Signal words: will kill or maim, could, could injure moderately, damage to things. Null: a standing rule, no panel. */
export type SignalWord = 'danger' | 'warning' | 'caution' | 'notice';

/** Registered number of a safety sign of ISO 7010: M must, P must not, W beware. Numbers from memory. */
export type SignCode =
  | 'M001'
  | 'M002'
  | 'M004'
  | 'M009'
  | 'M011'
  | 'M022'
  | 'P001'
  | 'P011'
  | 'P028'
  | 'W001'
  | 'W021'
  | 'W022'
  | 'W028'
  | 'W029';

/** One caution: what to do first, then why or how, and what it rests on. */
export interface Caution {
  readonly id: string;
  readonly at: readonly CautionPlace[];
  readonly signal: SignalWord | null;
  readonly sign: SignCode | null;
  /** The order, in a few words. */
  readonly lead: string;
  readonly text: string;
  /** The rule or the practice behind it, as a shop would look it up. */
  readonly basis: string;
}
