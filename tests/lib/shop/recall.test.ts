import { expect, it } from 'vitest';
import {
  DISPOSITION_LABEL,
  DISPOSITIONS,
  FAULT_DIRECTION_LABEL,
  FAULT_DIRECTIONS,
  RECALL_CAUSE_LABEL,
  RECALL_CAUSES,
  SuspectSchema,
} from '@/lib/shop/recall';

// source: hand. Every code has its word.
it('every cause, direction and decision has a word', () => {
  expect(Object.keys(RECALL_CAUSE_LABEL)).toEqual([...RECALL_CAUSES]);
  expect(Object.keys(FAULT_DIRECTION_LABEL)).toEqual([...FAULT_DIRECTIONS]);
  expect(Object.keys(DISPOSITION_LABEL)).toEqual([...DISPOSITIONS]);
  expect(SuspectSchema.safeParse({ acceptanceId: 'a', endCount: 0 }).success).toBe(false);
});
