import { expect, it } from 'vitest';
import { readConnectionKey } from '@/lib/shop/connection-text';
import { typedConnectionKey } from '@/lib/shop/typed-connection';

// source: hand. 0.5625 = 9/16, 6/16 = 3/8, 1 1/2 = 3/2; the key writes them in lowest terms.
it.each([
  ['1', 'high', '1-high'],
  ['9/16', 'medium', '9-16-medium'],
  ['0.5625', 'high', '9-16-high'],
  ['6/16', 'high', '3-8-high'],
  ['1 1/2 in', 'medium', '3-2-medium'],
  ['¾', 'medium', '3-4-medium'],
] as const)('%s in, %s pressure is %s, and can be read back', (text, service, key) => {
  expect(typedConnectionKey(text, service)).toEqual({ ok: true, value: key });
  expect(readConnectionKey(key)?.service).toBe(service);
});

// source: hand. 0.3 is 3/10: no halves, quarters … 64ths; 7 is above 6; "3.8" is what 3/8 becomes when mistyped.
it.each(['', 'big', '0.3', '3.8', '7', '0', '1/3'])('refuses “%s” with a sentence', (text) => {
  const result = typedConnectionKey(text, 'high');
  expect(result.ok).toBe(false);
  if (!result.ok) expect(result.refusal.sentence).toMatch(/^[“A-Z].*\.$/);
});
