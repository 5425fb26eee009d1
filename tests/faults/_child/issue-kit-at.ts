import { createInterface } from 'node:readline';
import { issueKit } from '@/db/commands/issue-kit';
import { openDb } from '@/db/open';
import { permit } from '@/lib/access/permit';
import { IssueKitInput } from '@/lib/shop/kit-input';
import { must, ROBIN } from '../../support/db';
import { LEE } from '../../support/kit-shop';

/** One counter's side of the race: opens the file by itself, and issues its kit at the very moment it is told. */
const [file = '', who = '', ...toolIds] = process.argv.slice(2);
const actor = who === 'lee' ? LEE : ROBIN;
const db = openDb(file);
console.log('ready');

for await (const line of createInterface({ input: process.stdin })) {
  const { round, atMs } = JSON.parse(line) as { round: number; atMs: number };
  const input = IssueKitInput.parse({
    ...{ entryId: `kit-of-${who}-${round}`, deviceAtMs: atMs, jobLineId: 'J-7.1' },
    ...{ toPersonId: who === 'lee' ? 'ash' : 'robin', bench: '', toolIds },
  });
  while (Date.now() < atMs);
  console.log(JSON.stringify(issueKit(db, must(permit(actor, 'issue-tool')), input, { nowMs: Date.now() })));
}
