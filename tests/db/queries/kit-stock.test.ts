import { beforeEach, expect, it } from 'vitest';
import { setGaugeInterval } from '@/db/commands/keep-gauge';
import { setFluidLot } from '@/db/commands/set-fluid-lot';
import { listFluidLots } from '@/db/queries/fluids';
import { findKitStock, listBottles, listKitStock } from '@/db/queries/kit-stock';
import { SetFluidLotInput } from '@/lib/shop/fluid-input';
import { SetGaugeIntervalInput } from '@/lib/shop/gauge-input';
import { acceptSender, acceptShop } from '../../support/accept-shop';
import { BLADE, DIE, ENV, entered, FLUID, may, must, receive, sentence, testShop } from '../../support/db';
import { kitSender } from '../../support/kit-shop';
import { sender } from '../../support/send';

let db: ReturnType<typeof testShop>;
let send: ReturnType<typeof sender>;

beforeEach(() => {
  db = testShop();
  send = sender(db);
  receive(db, 'D-56-01', DIE);
  receive(db, 'B-56-01', BLADE);
  receive(db, 'F-L04', FLUID, { lot: 'L04', levelMl: 400 });
  receive(db, 'F-L05', FLUID, { lot: 'L05', levelMl: 900, openedOnDay: '2026-01-05' });
});

const lot = (over: object) => {
  const facts = { partId: FLUID.id, lot: 'L04', shelfLife: 'fixed', chlorinated: 'yes', ...over };
  return setFluidLot(db, may('keep-fluid'), SetFluidLotInput.parse({ ...entered(), lot: facts }), ENV);
};

// source: hand. What is gone makes no kit, but a scan of it still has to be answered.
it('lists what is not gone, and finds every tool by its mark, in the order asked', () => {
  must(send.end('B-56-01', 'dropped', 'scrapped'));
  expect(listKitStock(db).map(({ tool }) => tool.id)).toEqual(['D-56-01', 'F-L04', 'F-L05']);
  const found = findKitStock(db, ['f-l05', 'X-9', 'B-56-01', 'd-56-o1']);
  expect(found.map((stock) => stock?.tool.id)).toEqual(['F-L05', undefined, 'B-56-01', 'D-56-01']);
  expect(found.map((stock) => stock?.part.id)).toEqual([FLUID.id, undefined, BLADE.id, DIE.id]);
  expect(found[2]?.tool).toMatchObject({ edgeEnded: true, state: 'scrapped' });
  expect(found[3]?.tool.edgeEnded).toBe(false);
});

// source: hand. The answer belongs to the lot: the other bottle of the same product keeps what is said of the product.
it('carries the answer for the lot of a bottle, and none where nobody wrote it down', () => {
  must(lot({}));
  expect(listFluidLots(db)).toHaveLength(1);
  expect(findKitStock(db, ['F-L04', 'F-L05', 'D-56-01']).map((stock) => stock?.tool.lotChlorinated)).toEqual([
    ...['yes', null, null],
  ]);
  expect(listBottles(db)).toMatchObject([
    { toolId: 'F-L04', chlorinated: 'yes', levelMl: 400, openedOnDay: null },
    { toolId: 'F-L05', chlorinated: FLUID.chlorinated, levelMl: 900, openedOnDay: '2026-01-05' },
  ]);
});

// source: hand. Five ends gauged on a calibration that is good for five: what acceptance refuses does not go out for it.
it('Q13: a gauge whose ends are used up stops the kit, the day on its sticker notwithstanding', () => {
  const shop = acceptShop();
  const interval = { intervalDays: null, intervalEnds: 5, method: 'in-use', reason: 'a busy ring' };
  const input = SetGaugeIntervalInput.parse({ ...entered(), toolId: 'G-56-GO-1', ...interval });
  must(setGaugeInterval(shop, may('set-gauge-interval'), input, ENV));
  const { accept } = acceptSender(shop);
  must(accept(4));
  expect(findKitStock(shop, ['G-56-GO-1'])[0]?.tool.endsUsedUp).toBe(false);
  must(accept(1));
  expect(findKitStock(shop, ['G-56-GO-1'])[0]?.tool.endsUsedUp).toBe(true);
  const { issueKit } = kitSender(shop);
  expect(sentence(issueKit(['G-56-GO-1'], { jobLineId: 'J-1.1' }))).toContain('has gauged as many ends');
  expect(sentence(accept(1))).toContain('has gauged as many ends');
  must(issueKit(['G-56-GO-2'], { jobLineId: 'J-1.1' }));
});
