import type { CutRow } from '@/lib/import/read-cut-row';
import type { JobRow } from '@/lib/import/read-job-row';
import type { ToolRow } from '@/lib/import/read-tool-row';

/** A tools row that claims nothing but its mark. */
export function toolRow(change: Partial<ToolRow> = {}): ToolRow {
  return {
    ...{ rowNo: 2, toolId: 'T-01', role: null, partId: '', size: null, service: null, hand: null, lot: '' },
    ...{ receivedOnDay: null, opening: null, openingService: null, openingMaterial: '', dueOnDay: null },
    ...{ expiresOnDay: null, openedOnDay: null, levelMl: null, state: null, note: '' },
    ...change,
  };
}

/** Ten good ends of 9/16 high pressure in 316. */
export function cutRow(change: Partial<CutRow> = {}): CutRow {
  return {
    ...{
      rowNo: 2,
      entryId: null,
      toolId: 'D-01',
      cutOnDay: '2026-02-10',
      size: { num: 9, den: 16 },
      service: 'high',
    },
    ...{
      material: '316',
      heat: '',
      ends: 10,
      goodEnds: 10,
      threadLength: null,
      dry: false,
      rework: false,
      fluid: '',
      job: '',
    },
    ...{ by: '', rejects: [], ending: null, reversed: false },
    ...change,
  };
}

/** Twenty-four ends of 9/16 high pressure in 316, coned and threaded. */
export function jobRow(change: Partial<JobRow> = {}): JobRow {
  return {
    ...{
      rowNo: 2,
      job: 'J-1',
      title: '',
      line: null,
      size: { num: 9, den: 16 },
      service: 'high',
      material: '316',
    },
    ...{
      heat: '',
      ends: 24,
      operations: ['cone', 'thread'],
      startOnDay: '2026-04-06',
      dueOnDay: '2026-04-17',
    },
    ...{ value: 'ordinary', status: 'open' },
    ...change,
  };
}
