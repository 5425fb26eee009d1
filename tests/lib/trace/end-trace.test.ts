import { describe, expect, it } from 'vitest';
import { type Certificate, certificateOn, isAboutEnd, sameMark } from '@/lib/trace/end-trace';

function certificate(onDay: string, dueOnDay: string | null, result: 'pass' | 'fail' = 'pass'): Certificate {
  return { number: `C-${onDay}`, laboratory: 'Plumbgate Metrology', onDay, dueOnDay, result };
}

// source: hand. Three certificates; which one a person would hand to an auditor for each day.
describe('the certificate valid on a day', () => {
  const all = [
    certificate('2026-01-05', '2026-07-05'),
    certificate('2026-06-20', '2026-12-20'),
    certificate('2026-11-01', null, 'fail'),
  ];
  it.each([
    ['before the first', '2026-01-04', null],
    ['on its own day', '2026-01-05', 'C-2026-01-05'],
    ['the newer one once it is there', '2026-06-25', 'C-2026-06-20'],
    ['none after the failure', '2026-11-05', null],
  ])('%s', (_when, onDay, number) => {
    expect(certificateOn(all, onDay)?.number ?? null).toBe(number);
  });

  it('to the end of the due day, and not a day longer', () => {
    const one = [certificate('2026-01-05', '2026-07-05')];
    expect(certificateOn(one, '2026-07-05')?.number).toBe('C-2026-01-05');
    expect(certificateOn(one, '2026-07-06')).toBeNull();
  });
});

// source: hand. Ends 4 to 6 of a line.
describe('which look an end belongs to', () => {
  const look = { decision: 'accepted', regaugesId: null, firstEndNo: 4, endCount: 3, endMarks: [] } as const;
  it.each([
    [3, false],
    [4, true],
    [6, true],
    [7, false],
  ])('end %i: %s', (endNo, yes) => {
    expect(isAboutEnd({ ...look, endMarks: [] }, { endNo })).toBe(yes);
  });

  it('refused ends and ends gauged again are not the first look', () => {
    expect(isAboutEnd({ ...look, endMarks: [], decision: 'refused' }, { endNo: 4 })).toBe(false);
    expect(isAboutEnd({ ...look, endMarks: [], regaugesId: 'a' }, { endNo: 4 })).toBe(false);
  });

  it('by mark, whatever its spacing and case', () => {
    expect(isAboutEnd({ ...look, endMarks: ['S-18 end 2'] }, { mark: 's-18  END 2 ' })).toBe(true);
    expect(sameMark('S-18 end 2', 'S-18 end 22')).toBe(false);
  });
});
