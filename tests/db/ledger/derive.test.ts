import { copyFileSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import SqliteDatabase from 'better-sqlite3';
import { expect, it } from 'vitest';
import { deriveAnew } from '@/db/ledger/derive';
import { migrate, migrationsFolder } from '@/db/migrate';
import { openDb } from '@/db/open';
import { DIE, dump, HIGH, MATERIALS, must, NOW_MS, PEOPLE, RING, receive, testShop } from '../../support/db';
import { replayedEqualsKept } from '../../support/replayed';
import { sender } from '../../support/send';

/** A database as the version with two migrations left it, with entries as that version wrote them. */
function oldDatabase(folder: string): string {
  const steps = join(folder, 'migrations');
  mkdirSync(steps);
  for (const name of ['0001_foundation.sql', '0002_readings_and_beliefs.sql'])
    copyFileSync(join(migrationsFolder(), name), join(steps, name));
  const file = join(folder, 'old.sqlite');
  const client = new SqliteDatabase(file);
  migrate(client, steps);
  const put =
    client.prepare(`INSERT INTO entry (id, kind, subject_kind, subject_id, actor_id, device_at_ms, server_at_ms,
    reason, payload) VALUES (?, ?, ?, ?, 'robin', ${NOW_MS}, ${NOW_MS}, '', ?)`);
  const entry = (kind: string, subject: string, id: string, payload: object) =>
    put.run(`old-${kind}-${id}`, kind, subject, id, JSON.stringify(payload));
  for (const person of PEOPLE) entry('person-set', 'person', person.id, person);
  entry('connection-set', 'connection', HIGH.id, HIGH);
  for (const material of MATERIALS) entry('material-set', 'material', material.id, material);
  const ring = { ...RING, fitsConnectionIds: [HIGH.id] };
  entry('part-set', 'part', ring.id, ring);
  const blank = { expiresOnDay: null, openedOnDay: null, levelMl: null, orderId: null };
  entry('tool-received', 'tool', 'G-56-GO-1', {
    ...{ partId: ring.id, role: 'go-ring', hand: 'LH', lot: '', receivedOnDay: '2026-01-05' },
    ...{ opening: { known: 'new' }, dueOnDay: '2026-06-30', ...blank },
  });
  entry('gauge-calibrated', 'tool', 'G-56-GO-1', {
    ...{ onDay: '2026-02-02', result: 'pass', dueOnDay: '2027-02-01', certificate: 'C-1' },
  });
  entry('job-set', 'job', 'J-1', {
    id: 'J-1',
    title: '',
    lines: [
      {
        ...{ lineNo: 1, connectionId: HIGH.id, materialId: '316', heat: '', ends: 4, operations: ['thread'] },
        ...{ startOnDay: '2026-03-09', dueOnDay: '2026-03-13', value: 'ordinary' },
      },
    ],
  });
  client.close();
  return file;
}

// source: hand. One calibration is one piece of evidence; a line without a duty is ordinary.
it('a database of an earlier version is brought up to date, and what newer tables hold is told from its old entries', () => {
  const folder = mkdtempSync(join(tmpdir(), 'edgekeep-upgrade-'));
  try {
    const db = openDb(oldDatabase(folder));
    expect(dump(db).gauge_evidence).toHaveLength(1);
    expect(dump(db).tool).toMatchObject([{ id: 'G-56-GO-1', due_on_day: '2027-02-01', pieces: 'none' }]);
    expect(dump(db).job_line).toMatchObject([{ id: 'J-1.1', duty: 'ordinary' }]);
    replayedEqualsKept(db);
    db.$client.close();
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

// source: identity. Deriving anew what is right changes nothing.
it('deriving anew what is right changes nothing', () => {
  const db = testShop();
  receive(db, 'D-56-01', DIE);
  receive(db, 'G-56-GO-1', RING);
  const send = sender(db);
  must(send.cut('D-56-01', 12));
  must(send.reverse(must(send.cut('D-56-01', 3)).id));
  must(send.issue('D-56-01'));
  const before = dump(db);
  db.$client.transaction(() => deriveAnew(db.$client)).immediate();
  expect(dump(db)).toEqual(before);
});
