import { describe, expect, it } from 'vitest';
import { checkSentence, importedSentence } from '@/app/import/_parts/check-sentence';
import { type ImportStep, NO_FILE, nextImportState } from '@/app/import/_parts/import-state';
import type { ImportCheck } from '@/db/commands/import-file';

const file = { kind: 'cuts', name: 'cuts.csv', bytes: new ArrayBuffer(3) } as const;

function check(counts: Partial<ImportCheck>): ImportCheck {
  const none = { errors: [], errorCount: 0, remarks: [], remarkCount: 0, columns: [], firstRows: [] };
  return { kind: 'cuts', rowsTotal: 0, newRows: 0, alreadyThere: 0, leftOut: 0, ...none, ...counts };
}

function stateAfter(...steps: ImportStep[]) {
  return steps.reduce(nextImportState, NO_FILE);
}

const heard = (line: Extract<ImportStep, { type: 'heard' }>['line']): ImportStep => ({ type: 'heard', line });
const checked = [
  { type: 'send', work: 'check', file } as const,
  heard({ step: 'reading', rowsDone: 1000, rowsTotal: 1500 }),
  heard({ step: 'done', check: check({ newRows: 1500 }) }),
];

// source: hand. What the screen has to show after each answer.
describe('nextImportState', () => {
  it('shows what a file would do, and only an import makes it imported', () => {
    const shown = stateAfter(...checked);
    expect([shown.busy, shown.check?.newRows, shown.imported]).toEqual([null, 1500, null]);
    const done = stateAfter(
      ...checked,
      { type: 'send', work: 'run', file },
      heard({ step: 'done', check: check({ newRows: 1500 }) }),
    );
    expect(done.imported?.newRows).toBe(1500);
  });

  it('keeps what was checked when the connection is lost in mid-import, so that it can be sent again', () => {
    const lost = stateAfter(
      ...checked,
      { type: 'send', work: 'run', file },
      heard({ step: 'refused', code: 'lost', sentence: 'Lost.' }),
    );
    expect([lost.file, lost.busy, lost.check?.newRows, lost.imported, lost.refusal?.work]).toEqual([
      file,
      null,
      1500,
      null,
      'run',
    ]);
  });

  it('shows the rows at fault that an import was refused for, in place of the check before it', () => {
    const refused = stateAfter(
      ...checked,
      { type: 'send', work: 'run', file },
      heard({ step: 'refused', code: 'rows', sentence: 'No.', check: check({ errorCount: 2 }) }),
    );
    expect([refused.check?.errorCount, refused.imported]).toEqual([2, null]);
  });

  it('forgets the last check when another begins, and hears nothing once the file is put down', () => {
    expect(stateAfter(...checked, { type: 'send', work: 'check', file }).check).toBeNull();
    expect(
      stateAfter(...checked, { type: 'put-down' }, heard({ step: 'done', check: check({ newRows: 9 }) })),
    ).toEqual(NO_FILE);
  });
});

// source: hand. The sentences that the brief of the screen asks for.
describe('sentences', () => {
  it('say what a file would do', () => {
    expect(checkSentence(check({ newRows: 150 }))).toBe('150 rows would be imported.');
    expect(checkSentence(check({ alreadyThere: 150 }))).toBe('Nothing new: all 150 rows are there already.');
    expect(checkSentence(check({ alreadyThere: 2 }))).toBe('Nothing new: both rows are there already.');
    expect(checkSentence(check({ alreadyThere: 1 }))).toBe('Nothing new: the one row is there already.');
    expect(checkSentence(check({ newRows: 3, errorCount: 1 }))).toContain('1 error: nothing can be imported');
    expect(importedSentence(check({ newRows: 1, alreadyThere: 4 }), 'cuts.csv')).toBe(
      '1 row imported from cuts.csv. 4 rows had been there already.',
    );
  });
});
