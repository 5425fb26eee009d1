import fc from 'fast-check';
import { expect, it } from 'vitest';
import { replay } from '@/db/ledger/replay';
import { type Db, openDb } from '@/db/open';
import { acceptShop } from '../../support/accept-shop';
import { dump, NOW_MS, testDb } from '../../support/db';
import { type ShopSend, shopDeed, shopSend } from '../../support/shop-deeds';

const TIMEOUT = 120_000;
const MINUTE_MS = 60_000;
const history = fc.array(shopDeed, { minLength: 10, maxLength: 40, size: 'max' });
let template: Buffer | undefined;

function freshShop(): Db {
  template ??= acceptShop().$client.serialize();
  return openDb(Buffer.from(template));
}

/** Lives through a history. A refused command must leave the database as it was, to the byte. */
function play(acts: readonly Parameters<typeof shopSend>[1][], seen = new Map<string, number>()) {
  const db = freshShop();
  const accepted: ShopSend[] = [];
  acts.forEach((act, no) => {
    const send = shopSend(db, act, no);
    const before = db.$client.serialize();
    const result = send(db, { nowMs: NOW_MS + no * MINUTE_MS });
    const outcome = `${act.do} ${result.ok ? 'done' : result.refusal.code}`;
    seen.set(outcome, (seen.get(outcome) ?? 0) + 1);
    if (result.ok) accepted.push(send);
    else expect(db.$client.serialize().equals(before), outcome).toBe(true);
  });
  return { db, accepted, endMs: NOW_MS + acts.length * MINUTE_MS };
}

// source: identity. What is kept is what the ledger adds up to; an entry sent again, days later, changes nothing.
it('keeps what a replay gives, and counts what is sent again once, whatever happened', {
  timeout: TIMEOUT,
}, () => {
  fc.assert(
    fc.property(history, fc.nat(7 * 86_400_000), (acts, laterMs) => {
      const { db, accepted, endMs } = play(acts);
      const kept = dump(db);
      const again = testDb();
      replay(db, again);
      expect(dump(again)).toEqual(kept);
      expect(db.$client.pragma('foreign_key_check')).toEqual([]);
      for (const send of accepted) expect(send(db, { nowMs: endMs + laterMs })).toMatchObject({ ok: true });
      expect(dump(db)).toEqual(kept);
    }),
    { numRuns: 40 },
  );
});

it('the histories reach what they are meant to reach', { timeout: TIMEOUT }, () => {
  const seen = new Map<string, number>();
  for (const acts of fc.sample(history, { numRuns: 100, seed: 11 })) play(acts, seen);
  const done = ['plan', 'close-job', 'ship', 'clean', 'accept', 'recall', 'dispose', 'close-recall'];
  const more = ['kit', 'return', 'search', 'close-kit', 'count', 'draft', 'approve', 'place', 'chase', 'lot'];
  for (const deed of [...done, ...more, 'discard', 'bench', 'settle', 'reverse'])
    expect(
      seen.get(`${deed} done`) ?? 0,
      `${deed}: ${[...seen.keys()].filter((key) => key.startsWith(deed))}`,
    ).toBeGreaterThan(0);
  expect(seen.get('review nothing-new') ?? 0).toBeGreaterThan(0);
});
