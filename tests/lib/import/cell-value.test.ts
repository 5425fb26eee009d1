import { describe, expect, it } from 'vitest';
import {
  quoteCell,
  readCountCell,
  readDayCell,
  readMeasureCell,
  readSizeCell,
  readWordCell,
  readYesNoCell,
} from '@/lib/import/cell-value';
import { SERVICE_WORDS } from '@/lib/import/word-list';
import type { Result } from '@/lib/result';

function said<T>(result: Result<T>): T | string {
  return result.ok ? result.value : result.refusal.sentence;
}

describe('readDayCell', () => {
  it('takes a day written year first', () => {
    for (const text of [
      '2026-04-03',
      '2026/04/03',
      '2026.4.3',
      '2026-04-03 00:00:00',
      '2026-04-03T00:00:00Z',
    ])
      expect(said(readDayCell(text))).toBe('2026-04-03');
  });

  it('never guesses which of two days is meant, and says how to write both', () => {
    expect(said(readDayCell('03/04/2026'))).toContain('2026-04-03 or 2026-03-04');
    expect(said(readDayCell('3.4.2026'))).toContain('two days');
  });

  it.each([
    '13/04/2026',
    '04/04/2026',
    '3/4/26',
    '16-Sep',
    '46115',
    'yesterday',
    '2026-02-30',
    '1989-12-31',
    '2026-04-03 14:30',
  ])('refuses %s with the way to write it', (text) => {
    expect(readDayCell(text).ok).toBe(false);
    expect(said(readDayCell(text))).toMatch(/YYYY-MM-DD|calendar|between 1990 and 2199/);
  });
});

describe('readCountCell', () => {
  it('takes whole numbers within bounds', () => {
    expect(said(readCountCell('12', { min: 1, max: 5000 }))).toBe(12);
    expect(said(readCountCell('12.0', { min: 1, max: 5000 }))).toBe(12);
    expect(said(readCountCell('0', { min: 1, max: 5000 }))).toContain('at least 1');
    expect(said(readCountCell('5001', { min: 1, max: 5000 }))).toContain('at most 5000');
  });

  it.each(['1,200', '1.5', '-3', '1e3', '0x10', 'twelve', '∞', '9999999999'])('refuses %s', (text) => {
    expect(readCountCell(text, { min: 0, max: 5000 }).ok).toBe(false);
  });
});

describe('readMeasureCell', () => {
  it('takes a decimal with a point and explains the comma', () => {
    expect(said(readMeasureCell('250.5', { max: 1000 }))).toBe(250.5);
    expect(said(readMeasureCell('250,5', { max: 1000 }))).toContain('250.5');
    for (const text of ['-1', '1e9', 'NaN', 'Infinity', '2000'])
      expect(readMeasureCell(text, { max: 1000 }).ok).toBe(false);
  });
});

describe('readSizeCell', () => {
  it('takes a size in every way it is written', () => {
    for (const text of ['9/16', '9⁄16', '9/16 in', '9/16"', '0.5625', '.5625', '18/32'])
      expect(said(readSizeCell(text))).toEqual({ num: 9, den: 16 });
    expect(said(readSizeCell('1 1/2'))).toEqual({ num: 3, den: 2 });
    expect(said(readSizeCell('1 inch'))).toEqual({ num: 1, den: 1 });
  });

  it.each(['16-Sep', 'Sep-16', '2026-09-16', '9/16/2026', '16.09.2026', '1. Apr'])(
    'knows %s for a size turned into a date',
    (text) => {
      expect(said(readSizeCell(text))).toContain('a spreadsheet has turned the size into one');
    },
  );

  it('refuses commas and what is no fraction of a tube', () => {
    expect(said(readSizeCell('0,5625'))).toContain('comma');
    expect(said(readSizeCell('0.5627'))).toContain('not a tube size');
    expect(readSizeCell('-9/16').ok).toBe(false);
  });
});

it('readYesNoCell and readWordCell say what could have been written', () => {
  expect(said(readYesNoCell('Y'))).toBe(true);
  expect(said(readYesNoCell('maybe'))).toBe('“maybe” is neither yes nor no.');
  expect(said(readWordCell('HP', SERVICE_WORDS, 'medium or high'))).toBe('high');
  expect(said(readWordCell('low', SERVICE_WORDS, 'medium or high'))).toBe(
    '“low” is not known here. Write medium or high.',
  );
});

it('quoteCell cuts long cells short', () => {
  expect(quoteCell('x'.repeat(1_000_000))).toHaveLength(32);
});
