import { describe, expect, it } from 'vitest';
import { readServiceCell, readToolIdCell, readToolRow, toolRowContent } from '@/lib/import/read-tool-row';
import { RowReader } from '@/lib/import/row-reader';

function read(cells: Record<string, string>) {
  const keys = Object.keys(cells);
  const places = new Map(keys.map((key, at) => [key, { at, header: key }]));
  const reader = new RowReader(5, Object.values(cells), places);
  const row = readToolRow(reader);
  return { row, columns: reader.errors.map((error) => error.column) };
}

const DIE = {
  tool_id: 'd-56–14',
  kind: 'threading die',
  size: '9/16',
  service: 'HP',
  hand: 'left hand',
  opening: '34',
};

describe('readToolRow', () => {
  it('reads a row as it was meant; what is not there claims nothing', () => {
    const { row, columns } = read(DIE);
    expect(columns).toEqual([]);
    expect(row).toMatchObject({
      rowNo: 5,
      toolId: 'D-56-14',
      role: 'die',
      size: { num: 9, den: 16 },
      service: 'high',
      hand: 'LH',
      opening: 34,
    });
    expect(row).toMatchObject({
      partId: '',
      receivedOnDay: null,
      dueOnDay: null,
      state: null,
      levelMl: null,
    });
  });

  it.each([
    ['new', 'new'],
    ['0', 'new'],
    ['unknown', 'unknown'],
    ['', null],
  ])('reads the opening %j as %j', (opening, value) => {
    expect(read({ ...DIE, opening }).row?.opening).toBe(value);
  });

  it.each([
    ['tool_id', ''],
    ['tool_id', 'D 56/14'],
    ['kind', 'spoon'],
    ['hand', 'middle'],
    ['opening', '1,5'],
    ['opening', '-1'],
    ['received_on', '03/04/2026'],
    ['calibration_due', 'soon'],
    ['level_ml', '1,5'],
    ['state', 'somewhere'],
    ['note', 'x'.repeat(301)],
  ])('refuses %s %j under that column', (column, cell) => {
    expect(read({ ...DIE, [column]: cell })).toEqual({ row: undefined, columns: [column] });
  });

  it('needs a kind or a part', () => {
    expect(read({ tool_id: 'D-1', kind: '' }).columns).toEqual(['kind']);
    expect(read({ tool_id: 'D-1', kind: '', part: 'die-56' }).row?.partId).toBe('die-56');
  });
});

it('toolRowContent leaves out where the row stands', () => {
  const { row } = read(DIE);
  if (row === undefined) throw new Error('unread');
  expect(toolRowContent({ ...row, rowNo: 9 })).toBe(toolRowContent(row));
  expect(toolRowContent({ ...row, lot: 'L2' })).not.toBe(toolRowContent(row));
});

it('readServiceCell and readToolIdCell read what is shared by the files', () => {
  expect(readServiceCell('medium pressure')).toEqual({ ok: true, value: 'medium' });
  expect(readToolIdCell(' b 56h 03 ')).toEqual({ ok: true, value: 'B-56H-03' });
  expect(readToolIdCell('=cmd|x').ok).toBe(false);
});
