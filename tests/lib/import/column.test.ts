import { describe, expect, it } from 'vitest';
import { foldWord, IMPORT_KINDS } from '@/lib/import/column';
import { COLUMNS } from '@/lib/import/columns';

describe('foldWord', () => {
  it('reads headers alike whatever their case, spaces, dashes and underscores', () => {
    for (const header of ['Tool ID', 'tool_id', 'TOOL-ID', ' tool id ', '\uFEFFtool.id', 'ｔｏｏｌ＿ｉｄ'])
      expect(foldWord(header)).toBe('toolid');
  });

  it('takes gage for gauge', () => {
    expect(foldWord('Cone Gage')).toBe(foldWord('cone gauge'));
  });
});

describe('the columns of each file', () => {
  it.each(IMPORT_KINDS)('of %s have no two that answer to one name', (kind) => {
    const names = COLUMNS[kind].flatMap((column) => [...new Set([column.key, ...column.also].map(foldWord))]);
    expect(names.length).toBeGreaterThan(COLUMNS[kind].length);
    expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
  });

  it.each(IMPORT_KINDS)('of %s each say in a line what they are for', (kind) => {
    for (const column of COLUMNS[kind]) {
      expect(column.help).toMatch(/^\S.*\.$/);
      expect(column.help).not.toContain('\n');
    }
  });
});
