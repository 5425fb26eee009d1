import { z } from 'zod';
import { countField, dayField, form, measureField, nameField, textField } from './field';

/** What happens to a bottle of fluid: opened, and its level read. */
export const FluidOpenedSchema = form({ onDay: dayField('The day opened') });
export const FluidLevelSchema = form({
  levelMl: measureField('The level', { min: 0, max: 1_000_000 }),
  onDay: dayField('The day read'),
});

/** Drops counted into a small measure: how many drops this bottle's dropper gives to the millilitre. */
export const FluidDropsSchema = form({
  drops: countField('The drops', { min: 10, max: 5000 }),
  volumeMl: measureField('The volume', { min: 0.2, max: 250 }),
  onDay: dayField('The day counted'),
});

/** Longer life after an inspection. Only for a lot whose shelf life may be extended: what it was then is kept here. */
export const FluidExtendedSchema = form({
  onDay: dayField('The day inspected'),
  untilDay: dayField('The new day'),
  inspection: nameField('What was inspected, and what was found', 300),
  shelfLife: z.literal('extendable', { error: 'Only a fluid whose shelf life may be extended.' }),
});

export const DISPOSALS = ['waste-carrier', 'returned-to-supplier', 'used-up'] as const;
export type Disposal = (typeof DISPOSALS)[number];
export const DISPOSAL_LABEL: Record<Disposal, string> = {
  'waste-carrier': 'to a licensed waste carrier',
  'returned-to-supplier': 'back to the supplier',
  'used-up': 'used up, only the empty container left',
};

/** The end of a bottle. Neat oil is controlled waste in many places: the note that went with it is kept. */
export const FluidDisposedSchema = form({
  onDay: dayField('The day disposed of'),
  how: z.enum(DISPOSALS, { error: 'Say where it went.' }),
  transferNote: textField('The transfer note', 80),
  volumeMl: measureField('The volume', { min: 0, max: 1_000_000 }),
});
export type FluidDisposed = z.infer<typeof FluidDisposedSchema>;
