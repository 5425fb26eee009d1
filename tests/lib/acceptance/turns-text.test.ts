import { expect, it } from 'vitest';
import { turnsText } from '@/lib/acceptance/turns-text';

// source: hand. As a person would say it.
it.each([
  [0, 'no turns'],
  [0.5, '½ turn'],
  [1, '1 turn'],
  [1.5, '1½ turns'],
  [2.25, '2¼ turns'],
  [2.3, '2.3 turns'],
])('%f reads %s', (turns, words) => {
  expect(turnsText(turns)).toBe(words);
});
