import { expect, it } from 'vitest';
import { SET_UP } from '@/lib/access/actor';
import { PERSON_ROLES } from '@/lib/shop/noun';

it('set-up is nobody’s role: a person cannot be given it', () => {
  expect(SET_UP.role).toBe('set-up');
  expect(PERSON_ROLES).not.toContain('set-up');
});
