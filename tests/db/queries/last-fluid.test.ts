import { expect, it } from 'vitest';
import { lastFluidUsed } from '@/db/queries/last-fluid';
import { DIE, FLUID, must, receive, sentence, testShop } from '../../support/db';
import { row, sender } from '../../support/send';

// source: hand. Robin logs; the bottle of his last standing row is the one that stands on the bench.
it('the bottle of a row is kept with it and found again', () => {
  const db = testShop();
  const send = sender(db);
  receive(db, 'D-56-01', DIE);
  receive(db, 'F-01', FLUID, { levelMl: 500 });
  receive(db, 'F-02', FLUID, { levelMl: 500 });
  expect(lastFluidUsed(db, { personId: 'robin', toolId: 'D-56-01' })).toBeNull();
  must(send.cut('D-56-01', 4, { fluidId: 'F-01' }));
  const last = must(send.cut('D-56-01', 4, { fluidId: 'f-o2' }));
  expect(row(db, 'cut', 'entry_id', last.id)).toMatchObject({ fluid_id: 'F-02' });
  expect(lastFluidUsed(db, { personId: 'robin', toolId: 'D-56-09' })).toBe('F-02');
  must(send.reverse(last.id));
  expect(lastFluidUsed(db, { personId: undefined, toolId: 'D-56-01' })).toBe('F-01');
  expect(sentence(send.cut('D-56-01', 1, { fluidId: 'D-56-01' }))).toMatch(/is not a fluid/);
});
