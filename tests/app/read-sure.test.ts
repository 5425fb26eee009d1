import { expect, it } from 'vitest';
import { readSure } from '@/app/tools/[id]/_parts/read-sure';

// source: hand. 80, 90 and 95 % are offered; anything else is as if nothing had been asked.
it('reads the confidence that the address asks for', () => {
  expect(['80', '90', '95'].map((asked) => readSure(asked))).toEqual([0.8, 0.9, 0.95]);
  expect([undefined, '', '99', '8e1', ['80']].map((asked) => readSure(asked))).toEqual(
    Array.from({ length: 5 }, () => undefined),
  );
});
