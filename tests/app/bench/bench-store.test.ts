import 'fake-indexeddb/auto';
import { expect, it } from 'vitest';
import {
  type BenchSession,
  keepSession,
  moveToOutbox,
  readBench,
  takeFromOutbox,
  type Waiting,
} from '@/app/bench/_offline/bench-store';

const session = (lineId: string, ends: number): BenchSession => ({
  lineId,
  presses: ends === 0 ? [] : [{ kind: 'ends', toolId: 'D-1', operation: 'thread', ends }],
});
const waiting = (entryId: string, heldUntilMs = 0): Waiting => ({
  entry: { kind: 'stop', entryId, deviceAtMs: 0, toolId: 'D-1', how: 'hard' },
  heldUntilMs,
});
const idsOf = async () => (await readBench()).outbox.map(({ entry }) => entry.entryId);

// source: hand. What is pressed is on the device until it is handed over; handed over and taken back, never both.
it('keeps presses, hands them over in order, and gives them back whole', async () => {
  await keepSession(session('J-1.1', 5));
  expect((await readBench()).sessions).toEqual([session('J-1.1', 5)]);
  await moveToOutbox(session('J-1.1', 0), [waiting('entry-00001'), waiting('entry-00002')]);
  expect((await readBench()).sessions).toEqual([]);
  expect(await idsOf()).toEqual(['entry-00001', 'entry-00002']);
  expect(await takeFromOutbox(['entry-00001', 'entry-00002'], session('J-1.1', 5))).toBe(true);
  expect(await idsOf()).toEqual([]);
  expect((await readBench()).sessions).toEqual([session('J-1.1', 5)]);
});

// source: hand. What was sent meanwhile cannot be undone on the device: nothing of it is given back.
it('takes nothing back once some of it is gone', async () => {
  await keepSession(session('J-2.1', 0));
  await moveToOutbox(session('J-2.1', 0), [waiting('entry-00003')]);
  expect(await takeFromOutbox(['entry-00003', 'entry-00009'], session('J-2.1', 3))).toBe(false);
  expect(await idsOf()).toEqual(['entry-00003']);
  expect((await readBench()).sessions.some(({ lineId }) => lineId === 'J-2.1')).toBe(false);
});
