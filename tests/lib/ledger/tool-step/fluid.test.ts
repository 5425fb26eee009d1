import { expect, it } from 'vitest';
import { fluidLevelRead, fluidOpened } from '@/lib/ledger/tool-step/fluid';
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
  expect(sentence(fluidOpened(open, opened, opening))).toBe('T-1 was already opened on 2026-03-02.');
});

it('a die is no fluid, and a lost bottle cannot be read', () => {
  expect(sentence(fluidLevelRead(toolAfter('die'), level, reading))).toBe('T-1 is not a fluid.');
  expect(sentence(fluidOpened(toolAfter('fluid', move('lost')), opened, opening))).toBe(
    'T-1 is lost; nothing can be read or opened.',
  );
});
