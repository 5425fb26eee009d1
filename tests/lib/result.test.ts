import { expect, it } from 'vitest';
import { ok, refuse } from '@/lib/result';

// source: hand. The two shapes that the doc comment states.
it('ok carries a value, a value of nothing too', () => {
  expect(ok(3)).toEqual({ ok: true, value: 3 });
  expect(ok(undefined)).toEqual({ ok: true, value: undefined });
});

it('refuse carries a code, a sentence, and the field at fault where there is one', () => {
  const refused = refuse('hand', 'Hand mismatch.');
  expect(refused).toEqual({ ok: false, refusal: { code: 'hand', sentence: 'Hand mismatch.' } });
  expect('field' in refused.refusal).toBe(false);
  expect(refuse('hand', 'Hand mismatch.', 'toolId').refusal.field).toBe('toolId');
});
