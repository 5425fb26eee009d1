import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it, vi } from 'vitest';
import type { StudyState } from '@/app/_server/study';
import { ReplayPanel } from '@/app/scorecard/_parts/replay-panel';
import { asksForDecision, ComparisonPanel } from '@/app/wear/_parts/comparison-panel';
import { KindPanel } from '@/app/wear/_parts/kind-panel';
import type { ShopComparisons } from '@/lib/outlook/compare-groups';
import { kindWear } from '@/lib/outlook/kind-wear';
import { partWears } from '@/lib/outlook/part-wear';
import { scoreSummary } from '@/lib/outlook/score-summary';
import type { ShopBacktest } from '@/lib/outlook/shop-backtest';
import type { Prediction } from '@/lib/score/prediction';
import { wearShop } from '../../support/wear-shop';

/** The router that refreshes the page: the only thing of the framework that is stood in for. */
vi.mock('next/navigation', () => ({ useRouter: () => ({ refresh: () => {} }) }));

const text = (node: React.ReactElement) =>
  renderToStaticMarkup(node)
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ');
const idle = { working: false, failed: false };

/** Tens of cases: said 0.8, of which `hits` came true; the fixed count said yes to all. */
function backtestOf(cases: number, hits: number): ShopBacktest {
  const predictions = Array.from({ length: cases }, (_, at): Prediction => {
    const outcome = at < hits;
    const reason = outcome ? 'cut-them' : 'wore-out-before';
    const settled = { outcome, reason, atMs: 0 } as const;
    return {
      id: `${at}`,
      madeAtMs: 0,
      kind: 'tool-finishes',
      probability: 0.8,
      what: {},
      fixedCount: 1,
      settled,
    };
  });
  return { rules: [], rows: cases, ...scoreSummary(predictions) };
}

// source: hand. 39 of 50 are 7.8 in 10; the fixed count said yes to all, so it was wrong of the 11 others.
it('the scorecard says in words what was said and what happened', () => {
  const said = text(<ReplayPanel state={{ ...idle, found: backtestOf(50, 39) }} />);
  expect(said).toContain('When it said 8 in 10, 7.8 in 10 finished.');
  expect(said).toContain(
    'Of 50 cases it called 11 wrong; changing at the fixed count would have called 11 wrong.',
  );
  expect(said).not.toContain('worked out');
});

// source: hand. Stated states: working, failed, too little.
it('the scorecard says plainly when there is nothing to see, and why', () => {
  const of = (state: StudyState<ShopBacktest>) => text(<ReplayPanel state={state} />);
  expect(of({ found: undefined, working: true, failed: false })).toContain(
    'It is being worked out. Look again in a minute',
  );
  expect(of({ found: backtestOf(50, 39), working: true, failed: false })).toContain(
    'figures below are from before',
  );
  expect(of({ found: undefined, working: false, failed: true })).toContain(
    'could not be worked out this time',
  );
  const few = of({ ...idle, found: backtestOf(12, 9) });
  expect(few).toContain('Only 12 cases settled: too little to judge it by.');
  expect(few).not.toContain('When it said');
});

const found: ShopComparisons = {
  judged: [
    {
      kind: 'die',
      flag: {
        ...{ groupedBy: 'lot', verdict: 'flagged' },
        effect: {
          ...{ groupId: 'L7', edges: 6, worn: 6, ends: 307, probabilityLower: 0.998 },
          lifeFactor: { low: 0.45, median: 0.52, high: 0.61 },
        },
        logRank: { chi2: 12, degreesOfFreedom: 1, p: 0.0004, groups: [] },
      },
    },
  ],
  tooLittle: 2,
  holds: [
    { lot: 'L9', looked: 4, early: 2, toolIds: ['D-1', 'D-2'], proposeHold: true, leftIds: ['D-3', 'D-4'] },
  ],
};

// source: hand. A flag stands with its evidence: factor, chance, test, edges, worn, ends. A hold names what is left.
it('a lot is flagged with its evidence, and one to hold names the tools that are left', () => {
  const said = text(<ComparisonPanel state={{ ...idle, found }} />);
  for (const part of [
    'lot L7: lasts less than the rest.',
    '0.52 of the rest (0.45 to 0.61)',
    'p under 0.001',
    '307',
  ])
    expect(said).toContain(part);
  expect(said).toMatch(/lot L9: hold it\? 2 of the first 4 died early.*D-3.*D-4/);
  expect(said).toContain('2 groups more had too little');
  expect(asksForDecision({ ...idle, found })).toBe(true);
});

// source: hand. Nothing stands out: said so, and nothing asks for a decision.
it('says so when nothing stands out', () => {
  const judged = found.judged.map(({ kind, flag }) => ({
    kind,
    flag: { ...flag, verdict: 'no-difference' as const },
  }));
  const calm: ShopComparisons = { judged, tooLittle: 3, holds: [] };
  const said = (of: ShopComparisons) => text(<ComparisonPanel state={{ ...idle, found: of }} />);
  expect(said(calm)).toContain(
    'No lot, supplier, heat or fluid stands out as dying early among 1 group looked at.',
  );
  expect(said({ ...calm, judged: [] })).toContain('Nothing can be compared yet');
  expect(asksForDecision({ ...idle, found: calm })).toBe(false);
  expect(asksForDecision({ found: undefined, working: true, failed: false })).toBe(false);
});

// source: hand. Eight worn, one dropped, one taken out good, one cutting; guessed 150, lasting about 100.
it('a part stands with its typical life beside the first guess', () => {
  const shop = wearShop();
  const wear = kindWear(shop, 'die');
  if (wear === undefined) throw new Error('no wear');
  const parts = partWears(shop).filter(({ kind }) => kind === 'die');
  const said = text(<KindPanel wear={wear} parts={parts} />);
  expect(said).toMatch(/about (9\d|1[01]0) \(\d+ to \d+\) threads/);
  expect(said).toContain('150 , shorter than first guessed');
  expect(said).toContain('1 die lost to accidents');
  expect(said).toContain('1 die already used when entered is left out.');
});
