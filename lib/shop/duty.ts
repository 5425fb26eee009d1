/**
 * What the tube will carry, as far as the shop's fluids and cleaning care. An oil film is fuel in oxygen; hydrogen and
 * drinking water have cleaning plans of their own. Common practice, no source.
 */
export const DUTIES = ['ordinary', 'oxygen', 'hydrogen', 'potable'] as const;
export type Duty = (typeof DUTIES)[number];
export const DUTY_LABEL: Record<Duty, string> = {
  ordinary: 'ordinary service',
  oxygen: 'oxygen service',
  hydrogen: 'hydrogen service',
  potable: 'drinking-water service',
};

/** Duties for which a line is held until its cleaning is written down. Common practice, no source. */
export const HELD_FOR_CLEANING: readonly Duty[] = ['oxygen'];
