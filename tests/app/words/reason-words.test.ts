import { expect, it } from 'vitest';
import { reasonSentence } from '@/app/_shared/words/reason-words';
import type { EstimateReasons } from '@/lib/ensemble/reasons';
import type { Finding } from '@/lib/reading/reading';

const NONE = { worn: 0, incident: 0, removedWorking: 0, inService: 0 };

function sentence(change: Partial<EstimateReasons> = {}, lastLook?: Finding): string {
  const reasons: EstimateReasons = {
    kind: 'die',
    partId: 'die-56',
    restsOn: 'worn-of-part',
    partCounts: { worn: 17, incident: 0, removedWorking: 0, inService: 6 },
    kindCounts: { worn: 30, incident: 4, removedWorking: 2, inService: 11 },
    materialFactor: undefined,
    typicalLife: { low: 800, median: 1000, high: 1200 },
    warnings: [],
  };
  return reasonSentence({ ...reasons, ...change }, '2507', lastLook);
}

// source: hand. Each sentence says what the figure rests on, the best evidence there is and no more.
it('says how many wore out, and how many still cut', () => {
  expect(sentence()).toBe('17 dies of this part worn out, 6 still cutting.');
  const one = { worn: 1, incident: 0, removedWorking: 0, inService: 0 };
  expect(sentence({ kind: 'blade', partCounts: one })).toBe(
    '1 blade edge of this part worn out, 0 still cutting.',
  );
});

it('names accidents apart from wear, and what was taken out good', () => {
  expect(sentence({ restsOn: 'worn-of-kind' })).toBe(
    '30 dies of other parts worn out, 11 still cutting, 2 taken out while good, 4 lost to accidents (not counted as wear).',
  );
});

it('says so when it rests on a first guess or on nothing of the shop’s own', () => {
  for (const restsOn of ['first-guess-of-part', 'first-guess-of-kind'] as const)
    expect(sentence({ restsOn, partCounts: NONE, kindCounts: NONE })).toBe(
      'From the first guess typed for your shop, 0 of your dies worn out yet.',
    );
  expect(sentence({ restsOn: 'default', partCounts: NONE, kindCounts: NONE })).toBe(
    'From a rough default, 0 of your dies worn out yet.',
  );
});

it('says what the material counts, with its band', () => {
  const materialFactor = { low: 1.2, median: 1.94, high: 3.04 };
  expect(sentence({ materialFactor })).toBe(
    '17 dies of this part worn out, 6 still cutting; 2507 counts 1.9× (1.2× to 3.0×).',
  );
});

it('warns when few have worn out, once something has', () => {
  const few = 'few have worn out here yet, so the first guess still counts';
  expect(sentence({ warnings: ['few-worn-edges'] })).toBe(
    `17 dies of this part worn out, 6 still cutting; ${few}.`,
  );
  expect(
    sentence({ restsOn: 'default', kindCounts: NONE, warnings: ['default-life-used', 'no-worn-edges'] }),
  ).toBe('From a rough default, 0 of your dies worn out yet.');
});

it('names what was last seen of the edge', () => {
  expect(sentence({}, { method: 'grade', grade: 'light' })).toBe(
    '17 dies of this part worn out, 6 still cutting; last look: light wear.',
  );
});
