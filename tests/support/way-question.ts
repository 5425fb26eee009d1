import type { LineFacts, ShopFacts } from '@/lib/outlook/shop-facts';
import { DEFAULT_COSTS } from '@/lib/shop/costs';
import type { WayQuestion } from '@/lib/what-if/ways/ask-way';
import { lineFacts } from './shop-record';
import { outlookOf, whatIfFacts } from './what-if-shop';

/** A line of the small shop that a way out is sought for. */
export function question(change: Partial<ShopFacts>, line: Partial<LineFacts> = {}): WayQuestion {
  const facts = whatIfFacts({ costs: DEFAULT_COSTS, lines: [lineFacts(line)], ...change });
  const outlook = outlookOf(facts);
  const [verdict] = outlook.lines;
  const [first] = facts.lines;
  if (verdict === undefined || first === undefined) throw new Error('one line was asked');
  return { facts, ensemble: outlook.ensemble, line: first, verdict };
}

/** The tools of the small shop without one. */
export const without = (id: string) => whatIfFacts().tools.filter((tool) => tool.id !== id);
/** The same with one of them otherwise. */
export const changed = (id: string, change: object) =>
  whatIfFacts().tools.map((tool) => (tool.id === id ? { ...tool, ...change } : tool));
/** Dates far enough ahead for anything to be ordered. */
export const FAR = { startOnDay: '2026-06-01', dueOnDay: '2026-06-05' };
