import { expect, it } from 'vitest';
import * as input from '@/lib/shop/command-input';
import { NOW_MS } from '../../support/db';
import { HOSTILE, TAKEN } from '../../support/inputs';

/** What is wrong, in a sentence of ours: begins with a capital, ends with a stop, no word of the parser's own. */
const SENTENCE = /^(?!Invalid|Too |Unrecognized|Expected|Required)[A-Z“].*\.$/su;

it.each(Object.entries(TAKEN))('%s takes what it should', (_name, [schema, value]) => {
  expect(schema.safeParse(value)).toMatchObject({ success: true });
});

it.each(Object.entries(TAKEN))(
  '%s answers whatever else is sent in a sentence, or takes it as harmless text',
  (_name, [schema, value]) => {
    for (const key of Object.keys(value)) {
      for (const bad of HOSTILE) {
        const result = schema.safeParse({ ...value, [key]: bad });
        if (result.success) expect(JSON.stringify(result.data).length).toBeLessThan(5000);
        else
          for (const issue of result.error.issues)
            expect(issue.message, `${key} ${String(bad)}`).toMatch(SENTENCE);
      }
    }
    for (const bad of HOSTILE) {
      const result = schema.safeParse(bad);
      expect(result.success && Object.keys(result.data)).toBe(false);
      if (!result.success) for (const { message } of result.error.issues) expect(message).toMatch(SENTENCE);
    }
  },
);

it('keys that nobody asked for are left behind', () => {
  const sent = JSON.parse(
    `{"entryId":"entry-000001","deviceAtMs":${NOW_MS},"targetId":"entry-000002","reason":"a slip","__proto__":{"admin":true},"admin":true}`,
  );
  const data = input.ReverseEntryInput.parse(sent);
  expect(Object.keys(data).sort()).toEqual(['deviceAtMs', 'entryId', 'reason', 'targetId']);
  expect((data as Record<string, unknown>).admin).toBeUndefined();
});

it('leaves out what may be left out', () => {
  const { reason: _reason, ...bare } = { ...TAKEN.IssueToolInput?.[1], reason: '' } as Record<
    string,
    unknown
  >;
  expect(input.IssueToolInput.parse(bare).reason).toBe('');
});
