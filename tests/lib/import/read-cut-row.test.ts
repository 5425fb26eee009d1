import { describe, expect, it } from 'vitest';
import { cutRowContent, readCutRow } from '@/lib/import/read-cut-row';
import { RowReader } from '@/lib/import/row-reader';

function read(cells: Record<string, string>) {
  const places = new Map(Object.keys(cells).map((key, at) => [key, { at, header: key }]));
  const reader = new RowReader(5, Object.values(cells), places);
  const row = readCutRow(reader);
  return { row, columns: reader.errors.map((error) => error.column) };
}

const CUT = {
  tool_id: 'D-56-14',
  cut_on: '2026-02-10',
  size: '9/16 in',
  service: 'high',
  material: '316',
  ends: '12',
};

describe('readCutRow', () => {
  it('reads a row; without more, all ends were good', () => {
    expect(read(CUT).row).toEqual({
      rowNo: 5,
      entryId: null,
      toolId: 'D-56-14',
      cutOnDay: '2026-02-10',
      size: { num: 9, den: 16 },
      service: 'high',
      material: '316',
      heat: '',
      ends: 12,
      goodEnds: 12,
      threadLength: null,
      dry: false,
      rework: false,
      fluid: '',
      job: '',
      by: '',
      rejects: [],
      ending: null,
      reversed: false,
    });
  });

  it('counts rejects off the good ends where those are not given', () => {
    expect(read({ ...CUT, rejects: 'torn: 2; length: 1' }).row?.goodEnds).toBe(9);
    expect(read({ ...CUT, rejects: 'torn: 2', good_ends: '5' }).row?.goodEnds).toBe(5);
  });

  // source: hand. 15/16 in × 25.4 mm/in = 23.8125 mm.
  it('reads a thread length with its unit in the cell or beside it', () => {
    const length = { typed: '15/16', unit: 'in', lengthMm: 23.8125 };
    expect(read({ ...CUT, thread_length: '15/16 in' }).row?.threadLength).toEqual(length);
    expect(read({ ...CUT, thread_length: '15/16', thread_length_unit: 'inch' }).row?.threadLength).toEqual(
      length,
    );
    expect(read({ ...CUT, thread_length: '15/16 in', thread_length_unit: 'in' }).row?.threadLength).toEqual(
      length,
    );
  });

  it.each([
    ['cut_on', '03/04/2026'],
    ['size', '16-Sep'],
    ['service', ''],
    ['material', ''],
    ['ends', '0'],
    ['ends', '5001'],
    ['good_ends', '13'],
    ['rejects', 'torn: 13'],
    ['thread_length', '23.8'],
    ['dry', 'perhaps'],
    ['edge_ended', 'sold'],
    ['entry_id', 'short'],
  ])('refuses %s %j under that column', (column, cell) => {
    expect(read({ ...CUT, [column]: cell })).toEqual({ row: undefined, columns: [column] });
  });
});

describe('cutRowContent', () => {
  const content = (change: Record<string, string>) => {
    const { row } = read({ ...CUT, ...change });
    if (row === undefined) throw new Error('unread');
    return cutRowContent(row);
  };

  it('is the same for one row written in two ways', () => {
    expect(content({ size: '0.5625', good_ends: '12', dry: 'no', tool_id: 'd 56 14' })).toBe(content({}));
  });

  it('does not hold how the edge ended, so that writing it in later does not count the cut twice', () => {
    expect(content({ edge_ended: 'worn' })).toBe(content({}));
  });

  it('differs with everything that was cut', () => {
    const changes = [
      { ends: '13' },
      { heat: 'H1' },
      { job: 'J-1' },
      { by: 'Ash' },
      { dry: 'yes' },
      { cut_on: '2026-02-11' },
      { rejects: 'torn' },
    ];
    const all = [{}, ...changes].map((change) => content(change as Record<string, string>));
    expect(new Set(all).size).toBe(all.length);
  });
});
