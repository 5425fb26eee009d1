import { expect, it } from 'vitest';
import { wayWords } from '@/app/_shared/words/priced-way-words';
import { offersOf } from '@/lib/orders/part-offers';
import { whatIfFacts } from '../../support/what-if-shop';

const [part] = whatIfFacts().parts.filter(({ role }) => role === 'die');
if (part === undefined) throw new Error('no die');
const [offer] = offersOf(part);
if (offer === undefined) throw new Error('no offer');
const TODAY = '2026-03-02';

// source: hand.
it('wayWords says what to do, by when, and what no list holds', () => {
  const order = {
    kind: 'order',
    part,
    offer,
    quantity: 2,
    orderByDay: '2026-03-20',
    thereOnDay: '2026-04-01',
  } as const;
  expect(wayWords({ actions: [order] }, TODAY)).toBe(`Order 2 × ${part.name} from Ninefold by Fri 20 Mar`);
  expect(wayWords({ actions: [{ ...order, orderByDay: '2026-02-20' }] }, TODAY)).toBe(
    `Order 2 × ${part.name} from Ninefold today, sure enough there by Wed 1 Apr`,
  );
  expect(wayWords({ actions: [{ ...order, orderByDay: null, thereOnDay: null }] }, TODAY)).toContain(
    'no lead time',
  );
  expect(
    wayWords(
      {
        actions: [
          { kind: 'calibrate', toolId: 'G-1' },
          { kind: 'find-part', role: 'go-ring' },
        ],
      },
      TODAY,
    ),
  ).toBe('Send G-1 for calibration now and find a supplier for GO ring: not in the list of parts');
  expect(wayWords({ actions: [{ kind: 'split', endsNow: 7, endsLater: 33 }] }, TODAY)).toBe(
    'Make 7 ends now, the other 33 when there are more edges',
  );
});
