import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { returnTool } from '@/db/commands/issue-tool';
import type { Recorded } from '@/db/ledger/ledger';
import { openDb } from '@/db/open';
import type { Result } from '@/lib/result';
import { type Child, startChild } from '../support/child';
import { DIE, dump, ENV, entered, may, must, receive, testShop } from '../support/db';

const folder = mkdtempSync(join(tmpdir(), 'edgekeep-race-'));
const file = join(folder, 'shop.sqlite');
const tablets: Child[] = [];

afterAll(async () => {
  for (const tablet of tablets) await tablet.kill();
  rmSync(folder, { recursive: true, force: true });
});

it('of two tablets issuing the last die at one moment, one gets it and the other is told who has it', async () => {
  const db = testShop(openDb(file));
  receive(db, 'D-56-01', DIE);
  for (const who of ['robin', 'ash']) {
    const tablet = startChild('tests/faults/_child/issue-at.ts', [file, who]);
    tablets.push(tablet);
    expect(await tablet.nextLine()).toBe('ready');
  }
  const wins = { robin: 0, ash: 0 };
  for (let round = 0; round < 50; round += 1) {
    const winner = await race(round);
    wins[winner] += 1;
    const back = { ...entered(), toolId: 'D-56-01', condition: 'ok' } as const;
    must(returnTool(db, may('return-tool'), back, ENV));
  }
  expect(wins.robin + wins.ash).toBe(50);
  expect(dump(db).entry?.filter((row) => (row as { kind: string }).kind === 'tool-issued')).toHaveLength(50);
  db.$client.close();
}, 60_000);

async function race(round: number): Promise<'robin' | 'ash'> {
  const atMs = Date.now() + 12;
  for (const tablet of tablets) tablet.say(JSON.stringify({ round, atMs }));
  const [robin, ash] = (await Promise.all(tablets.map((tablet) => tablet.nextLine()))).map(
    (line) => JSON.parse(line) as Result<Recorded>,
  );
  const won = robin?.ok ? 'robin' : 'ash';
  const [first, second] = won === 'robin' ? [robin, ash] : [ash, robin];
  expect(first?.ok).toBe(true);
  const name = won === 'robin' ? 'Robin Vale' : 'Ash Moor';
  expect(second).toMatchObject({
    ok: false,
    refusal: { sentence: `D-56-01 is with ${name}; it must come back before it can be issued again.` },
  });
  return won;
}

it('two processes opening a new file at one moment both find it migrated', async () => {
  for (let round = 0; round < 3; round += 1) {
    const fresh = join(folder, `fresh-${round}.sqlite`);
    const pair = ['robin', 'ash'].map((who) => startChild('tests/faults/_child/issue-at.ts', [fresh, who]));
    tablets.push(...pair);
    expect(await Promise.all(pair.map((tablet) => tablet.nextLine()))).toEqual(['ready', 'ready']);
  }
}, 60_000);
