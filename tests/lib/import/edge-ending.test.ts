import { describe, expect, it } from 'vitest';
import { edgeEndingText, readEdgeEnding } from '@/lib/import/edge-ending';
import { END_CAUSES } from '@/lib/shop/vocabulary';

describe('readEdgeEnding', () => {
  it.each([
    ['worn', { cause: 'worn', after: 'scrapped' }],
    ['Dropped', { cause: 'dropped', after: 'scrapped' }],
    ['chipped early', { cause: 'chipped-early', after: 'scrapped' }],
    ['reground', { cause: null, after: 'reground' }],
    ['worn, reground', { cause: 'worn', after: 'reground' }],
    ['reground; worn', { cause: 'worn', after: 'reground' }],
    ['dropped then quarantined', { cause: 'dropped', after: 'quarantined' }],
    ['worn + regrind', { cause: 'worn', after: 'regrind' }],
    ['taken out while still good', { cause: 'retired-good', after: 'quarantined' }],
    ['worn: cuts rough, or GO will not run on', { cause: 'worn', after: 'scrapped' }],
  ] as const)('reads %s', (text, ending) => {
    expect(readEdgeEnding(text)).toEqual({ ok: true, value: ending });
  });

  it.each(['yes', 'quarantined', 'worn, dropped', 'worn, reground, scrapped', ',', 'sold'])(
    'refuses %s',
    (text) => {
      expect(readEdgeEnding(text).ok).toBe(false);
    },
  );
});

it('edgeEndingText is read back as the same ending', () => {
  const endings = END_CAUSES.flatMap(({ code }) =>
    (['scrapped', 'quarantined', 'regrind', 'reground'] as const).map((after) => ({ cause: code, after })),
  );
  for (const ending of [...endings, { cause: null, after: 'reground' } as const])
    expect(readEdgeEnding(edgeEndingText(ending))).toEqual({ ok: true, value: ending });
});
