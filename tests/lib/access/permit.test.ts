import { expect, it } from 'vitest';
import { permit } from '@/lib/access/permit';
import { ROBIN, sentence } from '../../support/db';

it('whoever has a name may act, and the permit says who and what', () => {
  expect(permit(ROBIN, 'log-cut')).toEqual({ ok: true, value: { actor: ROBIN, action: 'log-cut' } });
});

it('nobody acts without a name', () => {
  expect(sentence(permit(null, 'log-cut'))).toBe('Say who you are first: choose your name.');
});
