import 'fake-indexeddb/auto';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { watchUndo } from '@/app/bench/_offline/across-pages';
import { benchDb, moveToOutbox, readBench } from '@/app/bench/_offline/bench-store';
import { sendFromElsewhere } from '@/app/bench/_offline/send-from-elsewhere';
import { syncBench } from '@/app/bench/_offline/sync';
import { cut, recorded, server } from '../../support/bench-server';
import { stubPageLocks } from '../../support/page-locks';

const line = { presses: [], lineId: 'J-1.1' };
beforeEach(async () => {
  const tx = (await benchDb()).transaction(['outbox', 'sent'], 'readwrite');
  await Promise.all([tx.objectStore('outbox').clear(), tx.objectStore('sent').clear()]);
});
afterEach(() => vi.unstubAllGlobals());

const idsLeft = async () => (await readBench()).outbox.map(({ entry }) => entry.entryId);
const soon = () => Date.now() + 10_000;
const sentIds = (batches: ReturnType<typeof server>) =>
  batches.flatMap(({ entries }) => entries.map(({ entryId }) => entryId));

// source: hand. The bench was left within its ten seconds: nobody can press Undo, so both go, the stop after the count.
it('sends at once what is held, when no bench is open in this browser', async () => {
  stubPageLocks();
  await moveToOutbox(line, [cut('entry-00001', soon()), cut('entry-00002', soon())]);
  const batches = server(recorded);
  expect(await sendFromElsewhere()).toMatchObject({ waiting: 0, sent: 2, reached: true });
  expect(sentIds(batches)).toEqual(['entry-00001', 'entry-00002']);
});

// source: hand. Another tab is at the bench, or nobody can know: held is held; what is due before it goes.
it.each([
  [
    'a bench is open in another tab',
    () => {
      stubPageLocks();
      watchUndo();
    },
  ],
  ['the browser cannot say', () => void vi.stubGlobal('navigator', {})],
])('keeps what is held while %s, and looks again soon', async (_name, arrange) => {
  arrange();
  await moveToOutbox(line, [cut('entry-00003'), cut('entry-00004', soon())]);
  const batches = server(recorded);
  const mail = await sendFromElsewhere();
  expect(mail).toMatchObject({ waiting: 1, sent: 1 });
  expect(mail.lookAgainMs).toBeLessThanOrEqual(1000);
  expect(sentIds(batches)).toEqual(['entry-00003']);
  expect(await idsLeft()).toEqual(['entry-00004']);
});

// source: hand. Every page of a shop asks this when it opens: with nothing due, no page may go to the server for it.
it('does not go to the server when nothing is due', async () => {
  vi.stubGlobal('navigator', {});
  const asked = vi.fn();
  vi.stubGlobal('fetch', asked);
  expect(await sendFromElsewhere()).toMatchObject({ waiting: 0, sent: 0 });
  await moveToOutbox(line, [cut('entry-00005', soon())]);
  expect(await sendFromElsewhere()).toMatchObject({ waiting: 1, sent: 0, reached: true });
  expect(asked).not.toHaveBeenCalled();
});

it('says that there is no network, and that a name is asked for; nothing is lost', async () => {
  stubPageLocks();
  await moveToOutbox(line, [cut('entry-00006')]);
  vi.stubGlobal('fetch', async () => {
    throw new TypeError('no network');
  });
  expect(await sendFromElsewhere()).toMatchObject({ waiting: 1, sent: 0, reached: false, needsName: false });
  server(() => ({ answers: [], refused: { code: 'who', sentence: 'Say who you are first.' } }));
  expect(await sendFromElsewhere()).toMatchObject({ waiting: 1, sent: 0, reached: true, needsName: true });
  expect(await idsLeft()).toEqual(['entry-00006']);
});

// source: hand. Two pages without locks send one entry side by side; 3 ends were cut, and 3 are known as sent, not 6.
it('knows as sent once what two pages sent side by side', async () => {
  vi.resetModules();
  const other = await import('@/app/bench/_offline/sync');
  expect(other.syncBench).not.toBe(syncBench);
  await moveToOutbox(line, [cut('entry-00007')]);
  let arrived = 0;
  let bothHere = () => {};
  const both = new Promise<void>((resolve) => {
    bothHere = resolve;
  });
  vi.stubGlobal('navigator', {});
  vi.stubGlobal('fetch', async (_address: string, init?: { body?: string }) => {
    if (init?.body === undefined) throw new TypeError('no figures');
    arrived += 1;
    if (arrived === 2) bothHere();
    await both;
    return Response.json(recorded(JSON.parse(init.body).entries));
  });
  await Promise.all([syncBench(), other.syncBench()]);
  expect(arrived).toBe(2);
  const { outbox, sent } = await readBench();
  expect([outbox.length, sent.map(({ ends }) => ends)]).toEqual([0, [3]]);
});
