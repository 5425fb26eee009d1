import { expect, it } from 'vitest';
import { heldTools, shopTasks } from '@/lib/issue-order/shop-tasks';
import { issueShop } from '../../support/issue-shop';
import { lineFacts } from '../../support/shop-record';

// source: hand. 24 ends of which 4 are threaded: 20 to go, 10.5 turns each, with three dies to choose from; ended and scrapped ones
// do not count.
it('turns a line into what it asks of a die', () => {
  const { facts, ensemble } = issueShop({ lines: [lineFacts({ goodThreads: 4 })] });
  const [task] = shopTasks(facts, ensemble, 'die');
  expect(task).toMatchObject({ ends: 20, required: 0.9, spareIds: ['D-31', 'D-32', 'D-33'] });
  const factor = ensemble.materialFactor('die', '316-cw') ?? new Float64Array();
  const miss = task?.perEnd.map((each, k) => Math.abs(each / (10.5 * (factor[k] as number)) - 1)) ?? [1];
  expect(Math.max(...miss)).toBeLessThan(1e-12);
});

// source: hand. A quarantined die is not to be had; one out with the line is the only one asked for.
it('knows which tools can be had', () => {
  const { facts } = issueShop();
  const tools = facts.tools.map((tool) => {
    if (tool.id === 'D-31') return { ...tool, state: 'quarantined' as const };
    return tool.id === 'D-32' ? { ...tool, state: 'issued' as const, jobLineId: 'J-1.1' } : tool;
  });
  const shop = issueShop({ tools });
  const [task] = shopTasks(shop.facts, shop.ensemble, 'die');
  expect(task?.toolIds).toEqual(['D-32']);
  expect(task?.spareIds).toEqual(['D-32', 'D-33']);
  expect([...heldTools(shop.facts, 'die')]).toEqual([['D-32', 'J-1.1']]);
});
