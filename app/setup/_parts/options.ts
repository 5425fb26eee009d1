/** Choices that several set-up forms offer. */
export const ROLE_OPTIONS = [
  { value: 'lead', label: 'lead' },
  { value: 'attendant', label: 'crib attendant' },
  { value: 'technician', label: 'technician' },
  { value: 'quality', label: 'quality' },
];
