import { expect, it } from 'vitest';
import { issued, moved, returned } from '@/lib/ledger/tool-step/custody';
import { TOOL_STATES } from '@/lib/shop/vocabulary';
import { must, sentence } from '../../../support/db';
import { end, ISSUE, move, toolAfter } from '../../../support/entry';

const out = { toPersonId: 'ash', jobLineId: null, bench: '4' };

it('only from the crib can a tool go out to a person', () => {
  expect(must(issued(toolAfter('die'), out, ISSUE))).toMatchObject({
    state: 'issued',
    holderId: 'ash',
    bench: '4',
  });
  for (const tool of [
    toolAfter('die', ISSUE),
    toolAfter('die', move('quarantined')),
    toolAfter('die', move('lost')),
  ])
    expect(sentence(issued(tool, out, ISSUE))).toMatch(/; only a tool in the crib can be issued\.$/);
});

it('only an issued tool can come back', () => {
  expect(must(returned(toolAfter('die', ISSUE), { condition: 'ok' }, ISSUE)).holderId).toBeNull();
  expect(sentence(returned(toolAfter('die'), { condition: 'ok' }, ISSUE))).toBe(
    'T-1 is in the crib; only an issued tool can come back.',
  );
});

it('scrapped is final', () => {
  const scrapped = toolAfter('die', move('scrapped'));
  for (const to of TOOL_STATES)
    expect(sentence(moved(scrapped, { to, backOnDay: null }, move(to)))).toBe(
      'T-1 is scrapped; reverse that entry if it was a mistake.',
    );
});

it('a tool without an edge left never reaches the crib', () => {
  const ended = toolAfter('die', end('worn', 'quarantined'));
  expect(sentence(moved(ended, { to: 'in-crib', backOnDay: null }, move('in-crib')))).toBe(
    'T-1 has no edge left in service; it cannot go back to the crib.',
  );
});

it('moving ends whoever held it, and leaves the record it is given alone', () => {
  const held = Object.freeze(toolAfter('die', ISSUE));
  expect(must(moved(held, { to: 'lost', backOnDay: null }, move('lost')))).toMatchObject({
    holderId: null,
    bench: '',
  });
  expect(held.holderId).toBe('ash');
});
