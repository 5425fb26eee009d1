import { expect, it } from 'vitest';
import type { Delivery } from '@/lib/lead-time/delivery';
import { LEAD_TIME_PRIOR } from '@/lib/lead-time/lead-time-belief';
import { supplierBelief, supplierRecords } from '@/lib/lead-time/supplier-record';

const came = (orderId: string, supplier: string, promised: number, received: number): Delivery => {
  const day = (offset: number) => `2026-03-${String(1 + offset).padStart(2, '0')}`;
  return {
    ...{ orderId, supplier, partId: 'die' },
    placedOnDay: day(0),
    promisedOnDay: day(promised),
    firstReceivedOnDay: day(received),
    receivedOnDay: day(received),
  };
};
const DELIVERIES = [
  came('1', 'Ninefold Dies', 10, 10),
  came('2', 'Ninefold Dies', 10, 16),
  came('3', 'Ninefold Dies', 20, 18),
  came('4', 'Marrowfen Fluids', 4, 5),
];

// source: hand. Late by 0, 6 and −2 days; quoted 10, 10, 20; achieved 10, 16, 18.
it('sets what was promised beside what was achieved', () => {
  const [first, second] = supplierRecords(DELIVERIES);
  expect(first).toMatchObject({
    supplier: 'Ninefold Dies',
    orders: 3,
    onTime: 2,
    lateDaysMedian: 0,
    lateDaysWorst: 6,
  });
  expect(first?.quotedDaysMean).toBeCloseTo(40 / 3, 12);
  expect(first?.achievedDaysMean).toBeCloseTo(44 / 3, 12);
  expect(second).toMatchObject({ supplier: 'Marrowfen Fluids', orders: 1, onTime: 0, lateDaysMedian: 1 });
});

it('learns of a supplier from its own orders only', () => {
  expect(supplierBelief(DELIVERIES, 'nobody')).toEqual(LEAD_TIME_PRIOR);
  expect(supplierBelief(DELIVERIES, 'Marrowfen Fluids').orders).toBe(1);
  expect(supplierRecords([])).toEqual([]);
});
