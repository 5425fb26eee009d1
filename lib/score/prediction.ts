/** What can be predicted of the future and judged afterwards. */
export const PREDICTION_KINDS = ['tool-finishes', 'line-made', 'order-by'] as const;
export type PredictionKind = (typeof PREDICTION_KINDS)[number];

/** Why a prediction was settled as it was. Some void it (`outcome` null): nothing can be learnt from it either way. */
export const SETTLE_REASONS = [
  'cut-them',
  'wore-out-before',
  'made-in-time',
  'late',
  'arrived-in-time',
  'removed-while-good',
  'incident',
  'lost',
  'cancelled',
  'no-edge-wore-out',
  'spare-took-over',
  'further-edge',
  'closed-short',
  'changed',
  'other-work',
] as const;
export type SettleReason = (typeof SETTLE_REASONS)[number];

/** What became of it. `outcome` null: void, not scored. */
export interface Settlement {
  readonly outcome: boolean | null;
  readonly reason: SettleReason;
  readonly atMs: number;
  /** Ends that the edge lasted from then on: exactly so many, or at least so many. For the coverage of bands. */
  readonly lasted?: { readonly ends: number; readonly exact: boolean };
}

/** What a prediction is about. */
export interface PredictionSubject {
  readonly toolId?: string;
  readonly edgeNo?: number;
  readonly lineId?: string;
  readonly orderId?: string;
  readonly ends?: number;
  readonly connectionId?: string;
  readonly materialId?: string;
  /** For a line or an order: the day by which it must be done or here, 'YYYY-MM-DD'. */
  readonly byDay?: string;
}

/** A probability that someone saw and may have acted on, kept as it was shown. */
export interface Prediction {
  readonly id: string;
  readonly madeAtMs: number;
  readonly kind: PredictionKind;
  readonly probability: number;
  readonly what: PredictionSubject;
  /** The 80 % band of ends left that was shown with it. */
  readonly band?: { readonly low: number; readonly high: number };
  /** What the shop's fixed count would have said of the same case: 1 yes, 0 no; undefined where it has none. */
  readonly fixedCount?: 0 | 1;
  readonly settled: Settlement | null;
}
