import { z } from 'zod';
import { dayField, form, keyField, listField, nameField, textField } from './field';
import { GHS_CODES, GHS_SIGNALS } from './ghs';

/** How a shelf life may end: on a fixed day (Type I), or later after an inspection (Type II). Words after DoDM 4140.27. */
export const SHELF_LIVES = ['fixed', 'extendable'] as const;
export type ShelfLife = (typeof SHELF_LIVES)[number];
export const SHELF_LIFE_LABEL: Record<ShelfLife, string> = {
  fixed: 'ends on a fixed day (Type I)',
  extendable: 'may be extended after an inspection (Type II)',
};

export const CHLORINATED = ['yes', 'no', 'unknown'] as const;
export type Chlorinated = (typeof CHLORINATED)[number];

/**
 * What is known of one lot of a fluid: the safety data sheet that came with it, what the supplier answered, what its label
 * has to say. The whole content of `fluid-lot-set`. Nothing in it is guessed: what is not typed stays empty and the label says so.
 */
export const FluidLotSchema = form({
  partId: keyField('The fluid'),
  lot: nameField('The lot', 60),
  shelfLife: z.enum(SHELF_LIVES, { error: 'Say whether the shelf life may be extended.' }),
  chlorinated: z.enum(CHLORINATED, { error: 'Chlorinated paraffins must be yes, no or unknown.' }),
  /** Who answered, and when, or where it is written. */
  supplierAnswer: textField('The supplier’s answer', 200).default(''),
  productIdentifier: textField('The product identifier', 100).default(''),
  sdsRevision: textField('The SDS revision', 40).default(''),
  sdsOnDay: dayField('The day of the SDS').nullable().default(null),
  sdsKeptAt: textField('Where the SDS is kept', 100).default(''),
  /** Null: not written down. */
  signal: z
    .enum(GHS_SIGNALS, { error: 'The signal word must be danger, warning or none.' })
    .nullable()
    .default(null),
  pictograms: listField(
    'The pictograms',
    z.enum(GHS_CODES, { error: 'Not a pictogram of the GHS.' }),
    9,
  ).default([]),
  /** The hazard statements as the SDS words them. */
  hazards: listField('The hazard statements', nameField('A hazard statement', 160), 20).default([]),
  usedAt: textField('Where it is used', 160).default(''),
  storage: textField('Storage', 200).default(''),
  firstAid: textField('First aid', 400).default(''),
  disposal: textField('Disposal', 200).default(''),
  reviewOnDay: dayField('The day of review').nullable().default(null),
});
export type FluidLot = z.infer<typeof FluidLotSchema>;

/**
 * The key under which a lot's record is kept: a lot number means something only with its product.
 * @example fluidLotId({ partId: 'fluid', lot: 'L04' }) // => "fluid/L04"
 */
export function fluidLotId({ partId, lot }: Pick<FluidLot, 'partId' | 'lot'>): string {
  return `${partId}/${lot}`;
}
