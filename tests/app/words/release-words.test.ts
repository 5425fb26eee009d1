import { expect, it } from 'vitest';
import { releaseWords } from '@/app/_shared/words/release-words';

// source: hand. Never a word that says that an end is fit for its use.
it('releaseWords names what a release waits for', () => {
  expect(releaseWords([])).toBe('the record is complete');
  expect(releaseWords([{ kind: 'ends-to-accept', ends: 1 }, { kind: 'cleaning-record' }])).toBe(
    'waits for 1 made end to be accepted and the cleaning record for oxygen',
  );
  expect(releaseWords([{ kind: 'pieces-owed', toolIds: ['D-38-03'] }])).toBe(
    'waits for the missing pieces of D-38-03 to be found',
  );
});
