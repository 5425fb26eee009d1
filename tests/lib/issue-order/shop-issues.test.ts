import { expect, it } from 'vitest';
import { shopIssues } from '@/lib/issue-order/shop-issues';
import { issueShop } from '../../support/issue-shop';

// source: identity. Worked out once: the same answer, not a like one; other facts are worked out anew, and agree.
it('works the plan of issues out once', () => {
  const { facts, ensemble } = issueShop();
  const first = shopIssues(facts, ensemble);
  expect(shopIssues(facts, ensemble)).toBe(first);
  const again = shopIssues({ ...facts }, ensemble);
  expect(again).not.toBe(first);
  expect(again.die.map(({ played }) => played.measure)).toEqual(
    first.die.map(({ played }) => played.measure),
  );
});
