import { expect, it } from 'vitest';
import { AcceptEndsInput, DisposeSuspectsInput, OpenRecallInput } from '@/lib/shop/acceptance-input';
import { lookAt } from '../../support/accept-shop';
import { entered } from '../../support/db';

// source: hand. What the door takes and what it sends back with a sentence.
it('a look without a surface, a count or an operation is sent back', () => {
  expect(AcceptEndsInput.safeParse(lookAt(3)).success).toBe(true);
  const said = (over: object) =>
    AcceptEndsInput.safeParse({ ...lookAt(3), ...over }).error?.issues[0]?.message;
  expect(said({ finish: '' })).toBe('Say whether a mark can be felt.');
  expect(said({ endCount: 0 })).toMatch(/at least 1/);
  expect(said({ operations: [] })).toBe('Say what was checked: cone, thread or both.');
  expect(said({ checkKind: 'sometimes' })).toMatch(/first-off/);
});

it('a recall says what was found, and a decision which ends it is about', () => {
  const open = {
    ...entered(),
    gaugeId: 'G-1',
    direction: 'large',
    found: 'worn',
    foundEntryId: null,
    foundOnDay: '2026-03-02',
  };
  expect(OpenRecallInput.safeParse(open).success).toBe(true);
  expect(OpenRecallInput.safeParse({ ...open, found: ' ' }).success).toBe(false);
  const decide = {
    ...entered(),
    recallId: 'G-1.R1',
    items: [],
    how: 'scrapped',
    gaugeId: null,
    evidence: 'x',
    onDay: '2026-03-02',
  };
  expect(DisposeSuspectsInput.safeParse(decide).error?.issues[0]?.message).toBe(
    'Choose the ends that this is about.',
  );
});
