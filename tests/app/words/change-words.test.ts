import { expect, it } from 'vitest';
import { changeHref, changeWords } from '@/app/_shared/words/change-words';
import { CHANGE_KINDS } from '@/lib/what-if/change';
import { readChange } from '@/lib/what-if/change-text';
import { whatIfFacts } from '../../support/what-if-shop';

const facts = whatIfFacts();
const TEXTS = [
  'add-line~3-8-medium~2507~200~2026-03-09~2026-03-30~precious',
  'change-dates~J-1.1~2026-03-16~2026-03-20',
  'change-material~J-1.1~2507',
  'change-ends~J-1.1~30',
  'drop-line~J-1.1',
  'slip-order~PO-1~21',
  'add-order~die-3-8~2~2026-04-01',
  'lose-tool~DIE-1',
  'add-tool~die-3-8~1',
  'free-tool~DIE-1',
  'calibrate-tool~GO-RING-1~2027-03-02',
  'regrind-tool~BLADE-1~2026-03-20',
  'add-bench~1',
];

// source: hand.
it('every kind of change has its sentence and the page where it is really entered', () => {
  const said = TEXTS.map((text) => {
    const change = readChange(text);
    if (!change.ok) throw new Error(change.refusal.sentence);
    const { href, label } = changeHref(change.value, facts);
    return [change.value.kind, changeWords(change.value, facts), href, label];
  });
  expect(said.map(([kind]) => kind).sort()).toEqual([...CHANGE_KINDS].sort());
  const byKind = new Map(said.map(([kind, words, href]) => [kind, [words, href]]));
  expect(byKind.get('slip-order')).toEqual(['Order PO-1 comes 21 days later', '/plan/orders#PO-1']);
  expect(byKind.get('lose-tool')).toEqual(['DIE-1 is lost or broken', '/tools/DIE-1']);
  expect(byKind.get('drop-line')).toEqual(['Line J-1.1 is cancelled', '/plan/jobs/J-1']);
  expect(byKind.get('add-bench')?.[0]).toBe('1 bench more: one of each shared body and stock');
  expect(byKind.get('add-line')?.[1]).toBe(
    '/plan/jobs/new?size=3-8-medium&material=2507&ends=200&start=2026-03-09&due=2026-03-30&value=precious',
  );
  for (const [, words] of said) expect(words).not.toMatch(/undefined|NaN|~/);
});
