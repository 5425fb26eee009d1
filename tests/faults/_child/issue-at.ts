import { createInterface } from 'node:readline';
import { issueTool } from '@/db/commands/issue-tool';
import { openDb } from '@/db/open';
import { permit } from '@/lib/access/permit';
import { ASH, must, ROBIN } from '../../support/db';

/** One tablet's side of the race: opens the file by itself, and issues the die at the very moment it is told. */
const [file = '', who = ''] = process.argv.slice(2);
const actor = who === 'ash' ? ASH : ROBIN;
const db = openDb(file);
console.log('ready');

for await (const line of createInterface({ input: process.stdin })) {
  const { round, atMs } = JSON.parse(line) as { round: number; atMs: number };
  while (Date.now() < atMs);
  const input = {
    entryId: `issue-${who}-${round}`,
    deviceAtMs: Date.now(),
    reason: '',
    toolId: 'D-56-01',
    toPersonId: who,
    jobLineId: null,
    bench: '',
  };
  console.log(JSON.stringify(issueTool(db, must(permit(actor, 'issue-tool')), input, { nowMs: Date.now() })));
}
