import { expect, it } from 'vitest';
import { evolveKit } from '@/lib/ledger/kit-history';
import { must, sentence } from '../../support/db';
import { entry } from '../../support/entry';

const issued = entry('kit-issued', 'kit-1', {
  ...{ jobLineId: 'J-7.1', toPersonId: 'ash', bench: '4' },
  items: [
    { toolId: 'D-1', role: 'die' },
    { toolId: 'G-1', role: 'go-ring' },
  ],
});
const closed = (lostToolIds: string[], how: 'complete' | 'lost-approved') =>
  entry('kit-closed', 'kit-1', { how, lostToolIds });

// source: hand. Issued once, closed once; complete if and only if nothing is lost.
it('is issued, searched for and closed, in that order', () => {
  const kit = must(evolveKit(undefined, issued));
  expect(kit).toMatchObject({ id: 'kit-1', status: 'out', missingToolIds: [], closedAtMs: null });
  const searched = must(
    evolveKit(kit, entry('kit-search-opened', 'kit-1', { toolIds: ['G-1'], lastSeen: 'bench 4' })),
  );
  expect(searched).toMatchObject({ missingToolIds: ['G-1'], lastSeen: 'bench 4' });
  const done = must(evolveKit(searched, closed(['G-1'], 'lost-approved')));
  expect(done).toMatchObject({ status: 'lost-approved', lostToolIds: ['G-1'], missingToolIds: [] });
  expect(sentence(evolveKit(done, closed([], 'complete')))).toBe('This kit was already put away.');
});

it('refuses what cannot be', () => {
  const kit = must(evolveKit(undefined, issued));
  expect(sentence(evolveKit(kit, issued))).toBe('This kit is already in the record.');
  expect(sentence(evolveKit(undefined, closed([], 'complete')))).toBe('This kit is not in the record.');
  expect(sentence(evolveKit(kit, closed(['G-1'], 'complete')))).toBe(
    'A kit is complete when nothing of it is lost, and only then.',
  );
  expect(sentence(evolveKit(kit, closed([], 'lost-approved')))).toBe(
    'A kit is complete when nothing of it is lost, and only then.',
  );
  expect(
    sentence(evolveKit(kit, entry('kit-search-opened', 'kit-1', { toolIds: ['X-9'], lastSeen: '' }))),
  ).toBe('X-9 is not of this kit.');
  expect(sentence(evolveKit(kit, entry('tool-freed', 'kit-1', {})))).toBe(
    'An entry "tool-freed" cannot be about a kit.',
  );
});
