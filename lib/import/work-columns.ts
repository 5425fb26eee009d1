import type { ImportColumn } from './column';

/** What a row of the cut log and a line of a job both say of the work: its size, its service and the tube's material. */
export const WORK_COLUMNS = [
  {
    key: 'size',
    also: ['tube size', 'od', 'tube od', 'size in'],
    required: true,
    help: 'The tube size in inches: 9/16, 9/16 in or 0.5625.',
    example: '9/16 in',
  },
  {
    key: 'service',
    also: ['pressure', 'pressure service', 'pressure class'],
    required: true,
    help: 'medium or high.',
    example: 'high',
  },
  {
    key: 'material',
    also: ['grade', 'tube material', 'alloy'],
    required: true,
    help: 'The tube’s material, by its key or its name in the shop’s table.',
    example: '316L',
  },
] as const satisfies readonly ImportColumn[];
