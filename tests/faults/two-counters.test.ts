import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { returnTool } from '@/db/commands/issue-tool';
import type { Recorded } from '@/db/ledger/ledger';
import { openDb } from '@/db/open';
import { listKits } from '@/db/queries/kits';
import type { Result } from '@/lib/result';
import { type Child, startChild } from '../support/child';
import { DIE, ENV, entered, may, must, RING, receive, testShop } from '../support/db';
import { THREADS_JOB } from '../support/kit-shop';
import { row, sender } from '../support/send';

const folder = mkdtempSync(join(tmpdir(), 'edgekeep-kit-race-'));
const counters: Child[] = [];
const ROUNDS = 25;

afterAll(async () => {
  for (const counter of counters) await counter.kill();
  rmSync(folder, { recursive: true, force: true });
});

// source: hand. All of a kit or none of it: the ring that only the loser scanned must still lie in the crib.
it('of two counters issuing a kit with the last die at one moment, one gets all of it, the other none', async () => {
  const file = join(folder, 'shop.sqlite');
  const db = testShop(openDb(file));
  receive(db, 'D-56-01', DIE);
  const rings = { robin: 'G-56-GO-1', lee: 'G-56-GO-2' } as const;
  for (const ring of Object.values(rings)) receive(db, ring, RING);
  must(sender(db).plan(THREADS_JOB));
  for (const who of ['robin', 'lee'] as const) {
    const args = [file, who, rings[who], 'D-56-01'];
    const counter = startChild('tests/faults/_child/issue-kit-at.ts', args);
    counters.push(counter);
    expect(await counter.nextLine()).toBe('ready');
  }
  for (let round = 0; round < ROUNDS; round += 1) {
    const atMs = Date.now() + 15;
    for (const counter of counters) counter.say(JSON.stringify({ round, atMs }));
    const lines = await Promise.all(counters.map((counter) => counter.nextLine()));
    const [robin, lee] = lines.map((line) => JSON.parse(line) as Result<Recorded>);
    expect([robin?.ok, lee?.ok].filter(Boolean)).toHaveLength(1);
    const [won, lost] = robin?.ok ? (['robin', 'lee'] as const) : (['lee', 'robin'] as const);
    const refused = robin?.ok ? lee : robin;
    const holder = won === 'robin' ? 'Robin Vale' : 'Ash Moor';
    expect(refused).toMatchObject({ ok: false, refusal: { sentence: expect.stringContaining(holder) } });
    expect(row(db, 'tool', 'id', rings[won])).toMatchObject({ state: 'issued' });
    expect(row(db, 'tool', 'id', rings[lost])).toMatchObject({ state: 'in-crib' });
    for (const toolId of [rings[won], 'D-56-01'])
      must(returnTool(db, may('return-tool'), { ...entered(), toolId, condition: 'ok' }, ENV));
  }
  expect(listKits(db)).toHaveLength(ROUNDS);
  db.$client.close();
}, 120_000);
