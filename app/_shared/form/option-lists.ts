import type { Option } from '../ui/field';

/** Choices that several forms offer. */
export const HAND_OPTIONS: readonly Option[] = [
  { value: 'LH', label: 'LH, left hand' },
  { value: 'RH', label: 'RH, right hand' },
];

/** Inside a number field, where there is room for the sign alone. */
export const LENGTH_UNIT_SIGNS: readonly Option[] = [
  { value: 'in', label: 'in' },
  { value: 'mm', label: 'mm' },
];

export const LENGTH_UNIT_OPTIONS: readonly Option[] = [
  { value: 'in', label: 'inches' },
  { value: 'mm', label: 'millimetres' },
];
