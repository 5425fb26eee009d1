import { expect, it } from 'vitest';
import { choosePart } from '@/lib/orders/choose-part';
import { setParts, shopRecord, toolFacts } from '../../support/shop-record';

const die = setParts().find(({ role }) => role === 'die');
if (die === undefined) throw new Error('the set has a die');
const cheap = { ...die, id: 'die-cheap', priceMinor: 1 };
const wanted = { connectionId: '3-8-medium', hand: 'LH' as const };

it('takes what the shop has most of, then the cheapest, never another hand or size', () => {
  const parts = [die, cheap];
  expect(choosePart('die', wanted, shopRecord({ parts }))?.id).toBe('die-cheap');
  const tools = [toolFacts({ id: 'D-38-01', role: 'die' })];
  expect(choosePart('die', wanted, shopRecord({ parts, tools }))?.id).toBe(die.id);
  const scrapped = ['D-38-02', 'D-38-03'].map((id) => toolFacts({ id, role: 'die', state: 'scrapped' }));
  expect(choosePart('die', wanted, shopRecord({ parts, tools: scrapped }))?.id).toBe('die-cheap');
  expect(choosePart('die', { ...wanted, hand: 'RH' }, shopRecord({ parts }))).toBeUndefined();
  expect(choosePart('die', { ...wanted, connectionId: '1-high' }, shopRecord({ parts }))).toBeUndefined();
});
