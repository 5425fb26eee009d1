import { expect, it } from 'vitest';
import * as field from '@/lib/shop/field';

type Schema = {
  safeParse: (value: unknown) => { success: boolean; error?: { issues: { message: string }[] } };
};
const say = (schema: Schema, value: unknown) => schema.safeParse(value).error?.issues[0]?.message ?? 'taken';

it('text: trimmed, short enough, and all of it to be seen', () => {
  const note = field.textField('The note', 5);
  expect(note.parse('  ab ')).toBe('ab');
  expect([say(note, 'abcdef'), say(note, null), say(note, '')]).toEqual([
    'The note is longer than 5 characters.',
    'The note is needed.',
    'taken',
  ]);
  for (const hidden of ['a\u0000', 'a\nb', 'a\u202eb', '\u200b', '\ud800', 'a\u2028b', '\u2066', 'x\ufeffx'])
    expect(say(note, hidden), JSON.stringify(hidden)).toBe(
      'The note holds characters that cannot be printed.',
    );
  for (const hidden of ['a\u00adb', 'a\u061cb', '\u180e', 'a\u206ab', '\ufff9', 'a\u{e0041}']) {
    expect(field.isPrintable(hidden), JSON.stringify(hidden)).toBe(false);
    expect(say(note, hidden)).toBe('The note holds characters that cannot be printed.');
  }
  for (const plain of ['Müß', '9⁄16″', '管', '😀', 'e\u0301']) expect(say(note, plain), plain).toBe('taken');
  expect(say(field.nameField('The name'), '   ')).toBe('The name is needed.');
});

it('entry IDs and keys: plain characters only', () => {
  const wrong = 'The entry ID must be 8 to 64 letters, digits, dashes, dots or colons.';
  expect(
    ['short', 'x'.repeat(65), 'eight but blank', 'entry-1\n', 'é'.repeat(8)].map((id) =>
      say(field.entryIdField, id),
    ),
  ).toEqual(Array(5).fill(wrong));
  expect([say(field.entryIdField, 'a:b.c_d-1'), say(field.entryIdField, undefined)]).toEqual([
    ...['taken', 'The entry ID is missing.'],
  ]);
  const key = field.keyField('The key');
  expect(
    ['9-16-high', 'A', '__proto__', '-a', '', 'a b', '../x', 'x'.repeat(65)].map(
      (text) => say(key, text) === 'taken',
    ),
  ).toEqual([true, true, ...Array(6).fill(false)]);
});

// source: published. Gregorian calendar: 2028 and 2000 are leap years, 2100 is not.
it.each([
  ['2028-02-29', true],
  ['2000-02-29', true],
  ['2100-02-29', false],
  ['2026-02-30', false],
  ['2026-13-01', false],
  ['2026-00-10', false],
  ['1989-12-31', false],
  ['1990-01-01', true],
  ['2199-12-31', true],
  ['2200-01-01', false],
  ['2026-3-1', false],
  ['2026-03-01T00:00', false],
])('the day %s exists: %s', (day, exists) => {
  expect(field.dayField('The day').safeParse(day).success).toBe(exists);
});

it('figures: finite and within bounds, each with its sentence', () => {
  const ends = field.countField('Ends', { min: 1, max: 9 });
  expect(
    [0, 10, 1.5, Number.NaN, Number.POSITIVE_INFINITY, '3', null].map((value) => say(ends, value)),
  ).toEqual([
    'Ends must be at least 1.',
    'Ends must be at most 9.',
    'Ends must be a whole number.',
    ...Array(4).fill('Ends must be a number.'),
  ]);
  const level = field.measureField('The level', { min: 0, max: 2 });
  expect([-0.1, 2.1, Number.NaN, 1.5].map((value) => say(level, value))).toEqual([
    ...[
      'The level must be at least 0.',
      'The level must be at most 2.',
      'The level must be a number.',
      'taken',
    ],
  ]);
  expect([say(field.microField('The sum'), 2 ** 53), say(field.microField('The sum'), 2 ** 53 - 1)][1]).toBe(
    'taken',
  );
  expect(field.microField('The sum').safeParse(2 ** 53).success).toBe(false);
});

// source: hand. Epoch milliseconds of 1990-01-01 and 2200-01-01, 00:00 UTC.
it('moments lie between 1990 and 2199', () => {
  const moment = field.momentField('The clock');
  expect(say(moment, Date.UTC(1990, 0, 1) - 1)).toBe('The clock lies before 1990.');
  expect(say(moment, Date.UTC(1990, 0, 1))).toBe('taken');
  expect(say(moment, Date.UTC(2200, 0, 1) + 1)).toBe('The clock lies after 2199.');
});

it('forms, lists, and yes or no', () => {
  expect(say(field.form({ a: field.yesNoField('Dry') }), null)).toBe('What was sent cannot be read.');
  expect(say(field.yesNoField('Dry'), 'yes')).toBe('Dry must be yes or no.');
  const list = field.listField('The lines', field.keyField('A line'), 2);
  expect([say(list, 'a'), say(list, ['a', 'b', 'c'])]).toEqual([
    'The lines must be a list.',
    'The lines are more than 2.',
  ]);
});
