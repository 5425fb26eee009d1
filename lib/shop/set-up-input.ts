import { z } from 'zod';
import { BeliefSchema } from './belief';
import { stamped } from './entry-fields';
import { countField, dayField, keyField } from './field';
import { LifeGuessSchema, MaterialSchema, PersonSchema } from './noun';
import { PartSchema } from './part';
import { ShopSchema } from './shop-settings';

/** What the set-up screens send. Each writes several entries under one entry ID, all or none. */

/** The first page: the shop, the first person, and the sizes in use, picked from the shipped examples. */
export const FoundShopInput = z.object({
  ...stamped,
  shop: ShopSchema,
  person: PersonSchema,
  connectionIds: z
    .array(keyField('The size'))
    .min(1, 'Tick at least one size that the shop works in.')
    .max(40),
});
export type FoundShop = z.output<typeof FoundShopInput>;

export const SetShopInput = z.object({ ...stamped, shop: ShopSchema });
export const SetPersonInput = z.object({ ...stamped, person: PersonSchema });
export const SetMaterialInput = z.object({ ...stamped, material: MaterialSchema });
export const SetPartInput = z.object({ ...stamped, part: PartSchema });
export const SetBeliefInput = z.object({ ...stamped, belief: BeliefSchema });
export const SetGuessesInput = z.object({ ...stamped, guesses: z.array(LifeGuessSchema).max(400) });
export const AddSizesInput = z.object({
  ...stamped,
  connectionIds: z.array(keyField('The size')).min(1, 'Tick at least one size.').max(40),
});

/** Each thing counted is an entry or two; other screens wait until they are written. */
const COUNTED_AT_ONCE_MAX = 1000;

/** Opening counts: so many of a part, found on the shelf on the first day. */
export const CountInInput = z.object({
  ...stamped,
  onDay: dayField('The day of the count'),
  counts: z
    .array(
      z.object({
        partId: keyField('The part'),
        count: countField('The count', { min: 1, max: 200 }),
        opening: z.enum(['new', 'unknown']),
        dueOnDay: dayField('The calibration due day').nullable(),
        levelMl: z.number().min(0).max(1_000_000).nullable(),
      }),
    )
    .min(1, 'Count at least one thing.')
    .max(400)
    .refine(
      (counts) => counts.reduce((sum, { count }) => sum + count, 0) <= COUNTED_AT_ONCE_MAX,
      `Count at most ${COUNTED_AT_ONCE_MAX} things at once, and the rest afterwards.`,
    ),
});
export type CountIn = z.output<typeof CountInInput>;
