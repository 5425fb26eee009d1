import { describe, expect, it } from 'vitest';
import { cutCells, jobCells, toolCells } from '@/lib/import/export-cells';
import { readCutRow } from '@/lib/import/read-cut-row';
import { readJobRow } from '@/lib/import/read-job-row';
import { readToolRow } from '@/lib/import/read-tool-row';
import { RowReader } from '@/lib/import/row-reader';
import { DIE, HIGH, MEDIUM } from '@/tests/support/db';

const connections = new Map([MEDIUM, HIGH].map((connection) => [connection.id, connection]));

function reader(cells: Record<string, string>): RowReader {
  const places = new Map(Object.keys(cells).map((key, at) => [key, { at, header: key }]));
  return new RowReader(2, Object.values(cells), places);
}

const TOOL = {
  ...{
    id: 'D-01',
    partId: DIE.id,
    role: 'die' as const,
    hand: 'LH' as const,
    lot: 'L1',
    receivedOnDay: '2026-01-05',
    state: 'quarantined' as const,
  },
  ...{
    stateSinceMs: 0,
    stateReason: 'chip',
    holderId: null,
    jobLineId: null,
    bench: '',
    backOnDay: null,
    dueOnDay: null,
  },
  ...{ expiresOnDay: null, openedOnDay: null, levelMl: 12.5 },
  opening: { known: 'counted', connectionId: HIGH.id, materialId: '316', ends: 5, exposureMicro: 1 },
} as const;

describe('the cells of an export are read back', () => {
  it('for a tool', () => {
    const cells = toolCells({ tool: TOOL, part: DIE, connections });
    expect(cells.size).toBe('9/16 in');
    expect(readToolRow(reader(cells))).toMatchObject({
      toolId: 'D-01',
      role: 'die',
      partId: DIE.id,
      size: { num: 9, den: 16 },
      service: null,
      hand: 'LH',
      opening: 5,
      openingService: 'high',
      openingMaterial: '316',
      levelMl: 12.5,
      state: 'quarantined',
      note: 'chip',
    });
  });

  it('for a row of the cut log', () => {
    const cut = {
      ...{
        operation: 'thread',
        connectionId: HIGH.id,
        materialId: '316',
        heat: 'H1',
        ends: 5,
        goodEnds: 3,
        dry: true,
        rework: false,
      },
      ...{
        threadLengthMm: 23.8125,
        threadLengthTyped: '15/16 in',
        jobLineId: 'J-1.1',
        cutAtMs: Date.UTC(2026, 1, 10, 23),
        exposureMicro: 1,
      },
      ...{ rejects: [{ cause: 'length', count: 2 }], correctsId: null },
    } as Parameters<typeof cutCells>[0]['cut'];
    const about = { entryId: 'entry-0001', toolId: 'D-01', connection: HIGH, by: 'Ash', reversed: true };
    const cells = cutCells({ ...about, cut, ending: { cause: 'worn', after: 'scrapped' } });
    expect(cells.thread_length).toBe('15/16 in');
    expect(readCutRow(reader(cells))).toMatchObject({
      entryId: 'entry-0001',
      cutOnDay: '2026-02-10',
      ends: 5,
      goodEnds: 3,
      dry: true,
      rework: false,
      by: 'Ash',
      reversed: true,
      threadLength: { typed: '15/16', unit: 'in', lengthMm: 23.8125 },
      rejects: [{ cause: 'length', count: 2 }],
      ending: { cause: 'worn', after: 'scrapped' },
    });
    const bare = cutCells({
      ...about,
      cut: { ...cut, threadLengthTyped: '', threadLengthMm: 12.7 },
      ending: null,
    });
    expect([bare.thread_length, bare.thread_length_unit, bare.edge_ended]).toEqual(['12.7', 'mm', '']);
  });

  it('for a line of a job, also of a size that the shop has no row for', () => {
    const line = {
      ...{ lineNo: 2, connectionId: '1-high', materialId: 'Ti-2', heat: '', ends: 6 },
      ...{
        operations: ['thread', 'assemble'],
        startOnDay: '2026-04-06',
        dueOnDay: '2026-04-17',
        value: 'precious',
      },
    } as Parameters<typeof jobCells>[1];
    const cells = jobCells({ id: 'J-1', title: 'T', status: 'done' }, line, {
      odNum: 1,
      odDen: 1,
      service: 'high',
    });
    expect(readJobRow(reader(cells))).toMatchObject({
      job: 'J-1',
      title: 'T',
      line: 2,
      size: { num: 1, den: 1 },
      service: 'high',
      material: 'Ti-2',
      ends: 6,
      operations: ['thread', 'assemble'],
      value: 'precious',
      status: 'done',
    });
  });
});
