import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { capital } from '@/lib/text/capital';

describe('capital', () => {
  // source: hand. A sentence begins with a large letter; a fraction, an empty text and a large letter stay as they are.
  it.each([
    ['two tools', 'Two tools'],
    ['NOT GO ring', 'NOT GO ring'],
    ['9⁄16 high pressure', '9⁄16 high pressure'],
    ['étau', 'Étau'],
    ['', ''],
  ])('begins %o as a sentence', (words, sentence) => {
    expect(capital(words)).toBe(sentence);
  });

  // source: identity. Begun twice is begun once, and nothing after the first character moves.
  it('is begun once and touches nothing further on', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[a-z0-9 ]*$/), (words) => {
        expect(capital(capital(words))).toBe(capital(words));
        expect(capital(words).slice(1)).toBe(words.slice(1));
      }),
    );
  });
});
