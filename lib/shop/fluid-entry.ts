import { dayField, form, measureField } from './field';

/** What happens to a bottle of fluid: opened, and its level read. */
export const FluidOpenedSchema = form({ onDay: dayField('The day opened') });
export const FluidLevelSchema = form({
  levelMl: measureField('The level', { min: 0, max: 1_000_000 }),
  onDay: dayField('The day read'),
});
