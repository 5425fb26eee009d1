import { expect, it } from 'vitest';
import { regrindWords } from '@/app/plan/orders/_parts/proposal-words';

const regrinds = {
  pieces: 2,
  wornIds: ['B-1', 'B-2'],
  backOnDay: '2026-01-12',
  awayDays: 15,
  costMinor: 2_000,
};

// source: hand. Which blades can go out today, and by when they are back; without one of these, how long each is away.
it('says in the order’s reason what can be reground instead', () => {
  expect(regrindWords({ regrinds }, '2025-12-28')).toContain('2 new ones fewer');
  expect(regrindWords({ regrinds }, '2025-12-28')).toContain('B-1 and B-2 can be reground by Mon 12 Jan');
  expect(regrindWords({ regrinds: { ...regrinds, wornIds: [] } }, '2025-12-28')).toContain('back in 15 days');
  expect(regrindWords({ regrinds: null }, '2025-12-28')).toBe('');
});
