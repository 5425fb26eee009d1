/**
 * Works figures out for the server, in a process of its own: it is asked for the outlook of a shop at one version of its
 * record, reads the record, and answers over the channel it was started with. Reads only; ends when the server does.
 */
import { computeOutlook } from '../lib/outlook/outlook';
import { packOutlook } from '../lib/outlook/outlook-data';
import { type ShopFutures, shopFutures } from '../lib/outlook/shop-futures';
import type { FiguresAnswer, FiguresAsk } from './figures-channel';
import { readShopFacts } from './queries/shop-facts';
import { openSnapshot } from './queries/snapshot';

/** What was drawn last, and for which shop. */
let last: { path: string; futures: ShopFutures } | undefined;

function answer({ id, path, version, today }: FiguresAsk): FiguresAnswer {
  const record = openSnapshot(path);
  try {
    if (record.version !== version) return { id, moved: true };
    const facts = readShopFacts(record.db, { today });
    const futures = shopFutures(facts, last?.path === path ? last.futures : undefined);
    last = { path, futures };
    return { id, moved: false, data: packOutlook(computeOutlook(facts, futures.ensemble)) };
  } finally {
    record.close();
  }
}

process.on('message', (ask: FiguresAsk) => {
  process.send?.(answer(ask));
});
process.on('disconnect', () => process.exit(0));
// The terminal's Ctrl-C reaches every process of its group: the server answers what is under way first, and then ends this one.
process.on('SIGINT', () => undefined);
