import { expect, it } from 'vitest';
import {
  fluidDisposed,
  fluidDropsCounted,
  fluidExtended,
  fluidLevelRead,
  fluidOpened,
} from '@/lib/ledger/tool-step/fluid';
import { must, sentence } from '../../../support/db';
import { entry, move, toolAfter } from '../../../support/entry';

const opened = { onDay: '2026-03-02' };
const opening = entry('fluid-opened', 'T-1', opened);
const level = { levelMl: 120, onDay: '2026-03-02' };
const reading = entry('fluid-level-read', 'T-1', level);

it('is opened once and read as often as one likes', () => {
  const open = must(fluidOpened(toolAfter('fluid'), opened, opening));
  expect(must(fluidLevelRead(open, level, reading))).toMatchObject({
    openedOnDay: '2026-03-02',
    levelMl: 120,
  });
  expect(sentence(fluidOpened(open, opened, opening))).toBe('T-1 was already opened on 2 Mar 2026.');
});

it('a die is no fluid, and a lost bottle cannot be read', () => {
  expect(sentence(fluidLevelRead(toolAfter('die'), level, reading))).toBe('T-1 is not a fluid.');
  expect(sentence(fluidOpened(toolAfter('fluid', move('lost')), opened, opening))).toBe(
    'T-1 is lost; nothing can be read or opened.',
  );
});

// source: hand. 100 drops in 2.5 mL are 40 to the mL; 10 drops in 10 mL are one, which no dropper gives.
it('keeps the count of its drops, and refuses a slip', () => {
  const count = (drops: number, volumeMl: number) => {
    const payload = { drops, volumeMl, onDay: '2026-03-02' };
    return fluidDropsCounted(toolAfter('fluid'), payload, entry('fluid-drops-counted', 'T-1', payload));
  };
  expect(must(count(100, 2.5)).dropsPerMl).toBe(40);
  expect(sentence(count(10, 10))).toContain('Count again');
});

// source: hand. After an inspection, by a year at most, and only where there is a day to go past.
it('is extended after an inspection, by a year at most', () => {
  const open = toolAfter('fluid', opening);
  const extend = (untilDay: string, tool = open) => {
    const payload = { onDay: '2026-03-02', untilDay, inspection: 'clear', shelfLife: 'extendable' as const };
    return fluidExtended(tool, payload, entry('fluid-extended', 'T-1', payload));
  };
  expect(must(extend('2026-09-01')).extendedUntilDay).toBe('2026-09-01');
  expect(sentence(extend('2026-03-02'))).toContain('after the day of the inspection');
  expect(sentence(extend('2027-04-01'))).toContain('a year at most');
  expect(sentence(extend('2026-09-01', toolAfter('fluid')))).toContain('no day on record');
});

// source: hand. Controlled waste goes with a note; a bottle ends once; one scrapped before may still get its note.
it('ends once, with its transfer note', () => {
  const dispose = (transferNote: string, tool = toolAfter('fluid')) => {
    const payload = { onDay: '2026-03-02', how: 'waste-carrier' as const, transferNote, volumeMl: 120 };
    return fluidDisposed(tool, payload, entry('fluid-disposed', 'T-1', payload));
  };
  const gone = must(dispose('N-1'));
  expect(gone).toMatchObject({
    state: 'scrapped',
    levelMl: 0,
    disposal: { transferNote: 'N-1', volumeMl: 120 },
  });
  expect(sentence(dispose(''))).toContain('transfer note');
  expect(sentence(dispose('N-2', gone))).toContain('already disposed of on 2026-03-02');
  expect(must(dispose('N-1', toolAfter('fluid', move('scrapped')))).disposal?.transferNote).toBe('N-1');
  expect(sentence(dispose('N-1', toolAfter('die')))).toBe('T-1 is not a fluid.');
  expect(sentence(dispose('N-1', toolAfter('fluid', move('lost'))))).toContain('lost');
});
