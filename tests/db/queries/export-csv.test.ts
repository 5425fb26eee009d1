import { describe, expect, it } from 'vitest';
import { endEdge } from '@/db/commands/end-edge';
import { logCut } from '@/db/commands/log-cut';
import { moveTool } from '@/db/commands/move-tool';
import { planJob } from '@/db/commands/plan-job';
import { recordCalibration } from '@/db/commands/record-calibration';
import { correctCut } from '@/db/commands/reverse-entry';
import type { Db } from '@/db/open';
import { readEdgeEndings } from '@/db/queries/edge-endings';
import { exportCsv } from '@/db/queries/export-csv';
import { IMPORT_KINDS } from '@/lib/import/column';
import { LogCutInput } from '@/lib/shop/command-input';
import { importText } from '@/tests/support/csv-import';
import {
  BLADE,
  BODY,
  DIE,
  dump,
  ENV,
  entered,
  FLUID,
  may,
  must,
  RING,
  receive,
  testShop,
} from '@/tests/support/db';

/** A shop worked through the screens: nothing in it came from a file. */
function workedShop(): Db {
  const db = testShop();
  receive(db, 'D-01', DIE, { lot: '=1+1', ...entered({ reason: '@first' }) });
  receive(db, 'D-02', DIE, {
    opening: { known: 'counted', connectionId: '9-16-high', materialId: '2507', ends: 9 },
  });
  receive(db, 'B-01', BLADE, { opening: { known: 'unknown' } });
  receive(db, 'G-01', RING);
  receive(db, 'BDY-A', BODY);
  receive(db, 'F-01', FLUID, { expiresOnDay: '2027-01-01', levelMl: 250.5 });
  const cut = (toolId: string, over: object) =>
    must(
      logCut(
        db,
        may('log-cut'),
        LogCutInput.parse({
          ...entered(),
          toolId,
          connectionId: '9-16-high',
          materialId: '316',
          ends: 12,
          goodEnds: 11,
          ...over,
        }),
        ENV,
      ),
    );
  cut('D-01', {
    heat: '-LH',
    threadLength: { typed: '15/32', unit: 'in' },
    rejects: [{ cause: 'length', count: 1 }],
  });
  const wrong = cut('D-01', { ends: 40, goodEnds: 40, jobLineId: 'J-1.1' });
  must(
    correctCut(
      db,
      may('reverse-entry'),
      { ...entered({ reason: 'other die' }), targetId: wrong.id, rightToolId: 'D-02' },
      ENV,
    ),
  );
  cut('B-01', { dry: true, rework: true, cutAtMs: ENV.nowMs - 1 });
  must(endEdge(db, may('end-edge'), { ...entered(), toolId: 'D-02', cause: 'worn', to: 'quarantined' }, ENV));
  must(
    moveTool(
      db,
      may('move-tool'),
      { ...entered({ reason: 'looked for' }), toolId: 'BDY-A', to: 'lost', backOnDay: null },
      ENV,
    ),
  );
  must(
    recordCalibration(
      db,
      may('record-calibration'),
      {
        ...entered(),
        toolId: 'G-01',
        onDay: '2026-02-01',
        result: 'pass',
        dueOnDay: '2027-02-01',
        certificate: 'C1',
      },
      ENV,
    ),
  );
  const line = {
    lineNo: 3,
    connectionId: '1-high',
    materialId: 'Ti-2',
    heat: '',
    ends: 6,
    operations: ['assemble' as const, 'cone' as const],
    startOnDay: '2026-04-01',
    dueOnDay: '2026-04-02',
    value: 'precious' as const,
  };
  must(
    planJob(
      db,
      may('plan-job'),
      { ...entered(), job: { id: 'J-1', title: '+bench, "large"; \'new\'', lines: [line] } },
      ENV,
    ),
  );
  return db;
}

describe('exportCsv', () => {
  it.each(IMPORT_KINDS)('of %s is imported again without changing anything', (kind) => {
    const db = workedShop();
    const text = exportCsv(db, kind);
    const before = dump(db);
    const done = importText(db, kind, text);
    expect(done.ok || done.refusal).toBe(true);
    expect(must(done)).toMatchObject({ newRows: 0, errorCount: 0 });
    expect(must(done).alreadyThere + must(done).leftOut).toBe(must(done).rowsTotal);
    expect(must(done).rowsTotal).toBeGreaterThan(0);
    expect(dump(db)).toEqual(before);
    expect(exportCsv(db, kind)).toBe(text);
  });

  it('guards every cell that looks like a formula', () => {
    const db = workedShop();
    for (const kind of IMPORT_KINDS) {
      for (const line of exportCsv(db, kind).split('\r\n')) expect(line).not.toMatch(/(?:^|,)"?[=+\-@\t]/);
    }
    expect(exportCsv(db, 'tools')).toContain("'=1+1");
    expect(exportCsv(db, 'cuts')).toContain("'-LH");
    expect(exportCsv(db, 'jobs')).toContain('"\'+bench, ""large""; \'new\'"');
  });

  it('flags rows that were taken back', () => {
    const lines = exportCsv(workedShop(), 'cuts').trimEnd().split('\r\n');
    expect(lines.slice(1).map((line) => line.split(',').at(-1))).toEqual(['no', 'yes', 'no', 'no']);
  });

  it('carries jobs into another shop as they are', () => {
    const from = workedShop();
    const to = testShop();
    must(importText(to, 'jobs', exportCsv(from, 'jobs')));
    expect(dump(to).job_line).toEqual(dump(from).job_line);
    expect(exportCsv(to, 'jobs')).toBe(exportCsv(from, 'jobs'));
  });
});

it('readEdgeEndings finds the last row before an edge ended', () => {
  const db = workedShop();
  const last = db.$client
    .prepare("SELECT entry_id FROM cut WHERE tool_id = 'D-02' AND reversed = 0 ORDER BY seq DESC")
    .pluck()
    .get() as string;
  expect([...readEdgeEndings(db)]).toEqual([[last, { cause: 'worn', after: 'quarantined' }]]);
});
