import type { EntryKind } from './event';

/** What kind of entry it is, in shop words, as in "take back the return". */
export const ENTRY_LABEL: Record<EntryKind | 'entry-reversed', string> = {
  'shop-set': 'shop settings',
  'person-set': 'person',
  'connection-set': 'table row of the size',
  'material-set': 'material',
  'part-set': 'part',
  'life-guess-set': 'first guess of its life',
  'belief-set': 'belief before the log',
  'job-set': 'job plan',
  'job-closed': 'closing of the job',
  'order-placed': 'order',
  'order-slipped': 'new day of the order',
  'order-received': 'delivery',
  'tool-received': 'receipt',
  'cut-logged': 'row of the cut log',
  'tool-issued': 'issue',
  'tool-returned': 'return',
  'tool-moved': 'move',
  'edge-ended': 'end of its edge',
  'edge-renewed': 'regrind',
  'edge-read': 'reading',
  'gauge-calibrated': 'calibration',
  'fluid-opened': 'opening of the bottle',
  'fluid-level-read': 'level reading',
  'entry-reversed': 'reversal',
};
