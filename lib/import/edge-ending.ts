import { ok, type Result, refuse } from '../result';
import type { EndCause } from '../shop/vocabulary';
import { quoteCell } from './cell-value';
import { foldWord } from './column';
import { END_CAUSE_WORDS, readWord } from './word-list';

/** Where a tool went when its edge was taken out: `reground` means out for regrind and back with a new edge. */
export type AfterEnd = 'scrapped' | 'quarantined' | 'regrind' | 'reground';

/** How an edge's service ended after a row; no cause where the file only says that the blade was reground. */
export interface EdgeEnding {
  readonly cause: EndCause | null;
  readonly after: AfterEnd;
}

const AFTER_WORDS: ReadonlyMap<string, AfterEnd> = new Map([
  ['scrapped', 'scrapped'],
  ['scrap', 'scrapped'],
  ['quarantined', 'quarantined'],
  ['quarantine', 'quarantined'],
  ['regrind', 'regrind'],
  ['outforregrind', 'regrind'],
  ['reground', 'reground'],
  ['resharpened', 'reground'],
  ['sharpened', 'reground'],
]);

/**
 * Reads an edge's ending: a cause ("worn", "dropped"), "reground", or a cause with where the tool went: "worn, reground",
 * "chipped early, quarantined". Where the file does not say: scrapped; quarantined for one taken out while still good.
 */
export function readEdgeEnding(text: string): Result<EdgeEnding> {
  const whole = readWord(END_CAUSE_WORDS, text);
  if (whole !== undefined) return ok({ cause: whole, after: usualAfter(whole) });
  let cause: EndCause | null = null;
  let after: AfterEnd | null = null;
  for (const token of text.split(/[,;+/|]|\bthen\b|\band\b/)) {
    const asCause = readWord(END_CAUSE_WORDS, token);
    const asAfter = AFTER_WORDS.get(foldWord(token));
    if (asCause !== undefined && cause === null) cause = asCause;
    else if (asAfter !== undefined && after === null) after = asAfter;
    else return unread(text);
  }
  if (cause === null && after !== 'reground') return unread(text);
  return ok({ cause, after: after ?? usualAfter(cause) });
}

/**
 * The words that `readEdgeEnding` reads back as this ending.
 * @example edgeEndingText({ cause: 'worn', after: 'reground' }) // => "worn, reground"
 */
export function edgeEndingText({ cause, after }: EdgeEnding): string {
  if (cause === null) return after;
  return after === usualAfter(cause) ? cause : `${cause}, ${after}`;
}

function usualAfter(cause: EndCause | null): AfterEnd {
  return cause === 'retired-good' ? 'quarantined' : 'scrapped';
}

function unread(text: string) {
  return refuse(
    'edge-ended',
    `${quoteCell(text)} is not read here. Write a cause such as worn, dropped or chipped early, with reground behind it for a blade that came back.`,
  );
}
