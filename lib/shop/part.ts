import { z } from 'zod';
import { DUTIES } from './duty';
import {
  countField,
  form,
  keyField,
  listField,
  measureField,
  nameField,
  textField,
  yesNoField,
} from './field';
import { OfferSchema, termFields } from './offer';
import { HANDS, ROLES } from './vocabulary';

/** A thing that can be bought: a 9/16 left-hand die, a blade, a guide, a gauge, a fluid. The whole content of `part-set`. */
export const PartSchema = form({
  id: keyField('The part’s key'),
  role: z.enum(ROLES, { error: 'The kind of part is not one we know.' }),
  name: nameField('The part’s name', 100),
  /** What an order line spells out, e.g. "9/16-18 UNF-LH, split". */
  designation: textField('The designation', 100),
  hand: z.enum(HANDS, { error: 'The hand must be LH or RH.' }).nullable(),
  adjustable: yesNoField('Adjustable'),
  /** Matched blades are ground together and kept as one tool. */
  matchedPair: yesNoField('Matched pair'),
  regrindLimit: countField('The regrind limit', { max: 20 }),
  fitsConnectionIds: listField('The connections', keyField('A connection'), 100),
  supplier: textField('The supplier', 80),
  priceMinor: countField('The price', { max: 100_000_000 }).nullable(),
  leadTimeDays: countField('The lead time', { max: 1000 }).nullable(),
  /** How its first supplier sells it. Absent or null: singly, one at least, one price. */
  packSize: termFields.packSize.nullable().optional(),
  minQuantity: termFields.minQuantity.nullable().optional(),
  breakKind: termFields.breakKind.nullable().optional(),
  priceBreaks: termFields.priceBreaks.nullable().optional(),
  /** Who else sells it. Absent or null: nobody on record. */
  offers: listField('The offers', OfferSchema, 10).nullable().optional(),
  permittedMaterialIds: z.union([z.literal('all'), listField('The materials', keyField('A material'), 100)], {
    error: 'The permitted materials must be all, or a list of at most 100.',
  }),
  chlorinated: z.enum(['yes', 'no', 'unknown'], { error: 'Chlorinated must be yes, no or unknown.' }),
  openedLifeDays: countField('Opened life', { max: 5000 }).nullable(),
  dropsPerMl: measureField('Drops per mL', { min: 5, max: 200 }).nullable(),
  /** What one container of a fluid holds; null for what is no fluid, or not written down. */
  containerMl: measureField('The container', { min: 1, max: 1_000_000 }).nullable().default(null),
  /** Days a closed container keeps from the day received; null or absent: not written down. */
  shelfLifeDays: countField('Shelf life', { max: 5000 }).nullable().optional(),
  /** Services for which a fluid may be used. Absent: ordinary service only. */
  permittedDuties: listField(
    'The services',
    z.enum(DUTIES, { error: 'A service must be ordinary, oxygen, hydrogen or drinking water.' }),
    DUTIES.length,
  ).optional(),
});
export type Part = z.infer<typeof PartSchema>;
