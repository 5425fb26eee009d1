import { expect, it } from 'vitest';
import { aboutTool, entered, markedIdField, stamped } from '@/lib/shop/entry-fields';
import { form } from '@/lib/shop/field';

const STAMP = { entryId: 'device-a.0001', deviceAtMs: 1_772_438_400_000 };
const firstFault = (schema: ReturnType<typeof form>, sent: unknown) =>
  schema.safeParse(sent).error?.issues[0]?.message;

// source: hand. The house rule: an entry has an ID and a moment from the device; a note may be left out and is then empty.
it('a stamp has an ID and a moment, an entry a note that may be left out', () => {
  expect(form(stamped).parse(STAMP)).toEqual(STAMP);
  expect(form(entered).parse(STAMP)).toEqual({ ...STAMP, reason: '' });
  expect(form(entered).parse({ ...STAMP, reason: '  a slip ' })).toEqual({ ...STAMP, reason: 'a slip' });
  expect(firstFault(form(stamped), { deviceAtMs: 0 })).toBe('The entry ID is missing.');
  expect(firstFault(form(stamped), { entryId: STAMP.entryId })).toBe('The device’s clock is needed.');
  expect(form(entered).safeParse({ ...STAMP, reason: 'n'.repeat(301) }).success).toBe(false);
});

// source: hand. An empty scan is asked for again in the words of the thing that is meant; 40 characters are the longest mark.
it('what an entry is about is scanned or typed, never empty', () => {
  expect(form(aboutTool).parse({ ...STAMP, toolId: ' D-56-01 ' }).toolId).toBe('D-56-01');
  expect(firstFault(form(aboutTool), { ...STAMP, toolId: ' ' })).toBe('Scan or type a tool ID.');
  const gauge = form({ gaugeId: markedIdField('the gauge', 'The gauge') });
  expect(firstFault(gauge, { gaugeId: '' })).toBe('Scan or type the gauge.');
  expect(firstFault(gauge, {})).toBe('The gauge is needed.');
  expect(markedIdField().safeParse('D'.repeat(40)).success).toBe(true);
  expect(markedIdField().safeParse('D'.repeat(41)).success).toBe(false);
});
