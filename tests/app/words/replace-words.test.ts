import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { bandText, beforeText, moreText, whenText } from '@/app/_shared/words/replace-words';
import type { ToolPlan } from '@/lib/replacement/tool-plan';

const plan: ToolPlan = {
  ...{
    toolId: 'D-1',
    partId: 'die',
    value: 'ordinary',
    moreEnds: 34,
    wearsOutFirst: 0.3,
    lineIds: [],
    startKnown: true,
  },
  ...{ lowDay: '2026-12-01', onDay: '2026-12-07', highDay: '2026-12-12' },
};
const today = '2026-11-25';

// source: hand. What is to be done, when, and how sure, in shop words.
it('says what an edge still has and when it is due', () => {
  expect(moreText(plan)).toBe('about 34 more');
  expect(moreText({ ...plan, moreEnds: 0 })).toBe('none: change it now');
  expect(moreText({ ...plan, moreEnds: null })).toBe('run to wear-out');
  expect(whenText(plan, today)).toBe('in 12 days, Mon 7 Dec');
  expect(bandText(plan, today)).toBe('Tue 1 Dec to Sat 12 Dec');
  expect(bandText({ ...plan, highDay: null }, today)).toBe('from Tue 1 Dec on');
  expect(whenText({ ...plan, onDay: null }, today)).toBe('not before Tue 1 Dec');
  expect(beforeText(plan)).toBe('about 3 in 10 that it wears out before');
  expect(beforeText({ ...plan, moreEnds: null })).toBe('');
});

// source: hand. A die that turns hard at 40 % of its life is stopped whatever the figures say, and the page says so first.
it('Q27: condition beats counts', () => {
  const page = readFileSync('app/plan/replace/page.tsx', 'utf8');
  expect(page.indexOf('What the edge looks like beats every count.')).toBeGreaterThan(0);
  expect(page.indexOf('What the edge looks like')).toBeLessThan(page.indexOf('<ToolPanels'));
  expect(page).toMatch(/Hard turning, chatter, a torn finish or a chip: stop and look/);
});
