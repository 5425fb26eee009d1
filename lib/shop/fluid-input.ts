import type { z } from 'zod';
import { LineCleanedSchema } from './cleaning';
import { entered, markedIdField } from './entry-fields';
import { form, keyField, nameField } from './field';
import { FluidDisposedSchema, FluidDropsSchema, FluidExtendedSchema } from './fluid-entry';
import { FluidLotSchema } from './fluid-lot';

/** What the commands about fluids and cleaning take, parsed once at the door. */
const aboutBottle = { ...entered, toolId: markedIdField('the bottle’s ID', 'The bottle') };

export const CountDropsInput = form({ ...aboutBottle, ...FluidDropsSchema.shape });
export type CountDrops = z.output<typeof CountDropsInput>;

/** What was inspected stands in the entry; why the life was lengthened is asked for beside it. */
export const ExtendFluidInput = form({
  ...aboutBottle,
  ...FluidExtendedSchema.omit({ shelfLife: true }).shape,
  reason: nameField('The reason', 300),
});
export type ExtendFluid = z.output<typeof ExtendFluidInput>;

export const DisposeFluidInput = form({ ...aboutBottle, ...FluidDisposedSchema.shape });
export type DisposeFluid = z.output<typeof DisposeFluidInput>;

export const SetFluidLotInput = form({ ...entered, lot: FluidLotSchema });
export type SetFluidLot = z.output<typeof SetFluidLotInput>;

export const CleanLineInput = form({ ...entered, jobId: keyField('The job'), ...LineCleanedSchema.shape });
export type CleanLine = z.output<typeof CleanLineInput>;
