import { expect, it } from 'vitest';
import {
  CHECK_KIND_LABEL,
  CHECK_KINDS,
  CONE_CONTACT_LABEL,
  CONE_CONTACTS,
  GaugeResultSchema,
} from '@/lib/shop/acceptance';

// source: hand. Every code has its word.
it('every kind of look and every contact has a word', () => {
  expect(Object.keys(CHECK_KIND_LABEL)).toEqual([...CHECK_KINDS]);
  expect(Object.keys(CONE_CONTACT_LABEL)).toEqual([...CONE_CONTACTS]);
});

it('a gauge has a name, a kind and a verdict', () => {
  const plain = { toolId: 'G-1', role: 'go-ring', verdict: 'pass', turns: null };
  expect(GaugeResultSchema.safeParse(plain).success).toBe(true);
  for (const wrong of [
    { toolId: '' },
    { role: 'hammer' },
    { verdict: 'perhaps' },
    { turns: -1 },
    { turns: 21 },
  ])
    expect(GaugeResultSchema.safeParse({ ...plain, ...wrong }).success).toBe(false);
});
