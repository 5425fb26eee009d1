import { writeSync } from 'node:fs';
import { logCut } from '@/db/commands/log-cut';
import { openDb } from '@/db/open';
import { LogCutInput } from '@/lib/shop/command-input';
import { HIGH, may, must } from '../../support/db';

/** Logs row after row and says each ID once it is acknowledged, until it is killed. */
const [file = '', round = ''] = process.argv.slice(2);
const db = openDb(file);

for (let no = 0; ; no += 1) {
  const entryId = `row-${round}-${String(no).padStart(6, '0')}`;
  const row = { toolId: no % 2 === 0 ? 'D-56-01' : 'D-56-02', connectionId: HIGH.id, materialId: '316' };
  const nowMs = Date.now();
  const input = LogCutInput.parse({ ...row, entryId, deviceAtMs: nowMs, ends: 1 + (no % 7), goodEnds: 1 });
  must(logCut(db, may('log-cut'), input, { nowMs }));
  writeSync(1, `${entryId}\n`);
}
