import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { LABEL_STOCKS } from '@/lib/labels/label-stock';
import { root } from '../../support/server';

const css = readFileSync(`${root}app/labels/labels.css`, 'utf8');

/** The size of the page that a stock is printed on, by the style sheet, mm. */
function pageSize(stockId: string): number[] {
  const rules = [
    ...css.matchAll(/body:has\(\.label-page\[data-stock(\^?)="([^"]+)"\]\) \{\s*page: ([\w-]+);/g),
  ];
  const rule = rules.find(([, starts, id = '']) =>
    starts === '^' ? stockId.startsWith(id) : stockId === id,
  );
  const size = new RegExp(`@page ${rule?.[3]} \\{\\s*size: ([\\d.]+)mm ([\\d.]+)mm;\\s*margin: 0;`).exec(css);
  return [Number(size?.[1]), Number(size?.[2])];
}

// source: identity. What the printer is told is what the labels were laid out for.
it.each(LABEL_STOCKS.map((stock) => [stock.id, stock] as const))(
  '%s has its page in the style sheet',
  (id, stock) => {
    expect(pageSize(id)).toEqual([stock.pageWidthMm, stock.pageHeightMm]);
  },
);
