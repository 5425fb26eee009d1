import { beforeEach, describe, expect, it } from 'vitest';
import { setNoun } from '@/db/commands/set-noun';
import type { Db } from '@/db/open';
import { listEvidence, listGauges } from '@/db/queries/gauges';
import { gaugeSettingsInForce } from '@/db/queries/shop';
import { type GaugeSettings, GaugeSettingsSchema } from '@/lib/shop/gauge-settings';
import {
  DIE,
  dump,
  ENV,
  entered,
  envelope,
  may,
  must,
  RING,
  receive,
  sentence,
  testShop,
} from '../../support/db';
import { replayedEqualsKept } from '../../support/replayed';
import { row, sender } from '../../support/send';

let db: Db;
let send: ReturnType<typeof sender>;

beforeEach(() => {
  db = testShop();
  send = sender(db);
  receive(db, 'G-56-GO-1', RING);
});

it('passed and back from calibration, it is in the crib until its next due day', () => {
  must(send.move('G-56-GO-1', 'calibration'));
  must(send.calibrate('G-56-GO-1'));
  expect(row(db, 'tool', 'id', 'G-56-GO-1')).toMatchObject({ state: 'in-crib', due_on_day: '2027-03-01' });
});

it('passed where it stands, it stays there', () => {
  must(send.issue('G-56-GO-1'));
  must(send.calibrate('G-56-GO-1'));
  expect(row(db, 'tool', 'id', 'G-56-GO-1')).toMatchObject({ state: 'issued', holder_id: 'ash' });
});

it('failed, it is quarantined and has no due day', () => {
  must(send.issue('G-56-GO-1'));
  must(send.calibrate('G-56-GO-1', { result: 'fail', dueOnDay: null }));
  expect(row(db, 'tool', 'id', 'G-56-GO-1')).toMatchObject({
    ...{ state: 'quarantined', due_on_day: null, holder_id: null },
  });
});

it('refuses in a sentence, and changes nothing', () => {
  receive(db, 'D-56-01', DIE);
  receive(db, 'G-56-GO-2', RING);
  must(send.move('G-56-GO-2', 'lost'));
  const before = dump(db);
  expect([
    sentence(send.calibrate('D-56-01')),
    sentence(send.calibrate('G-56-GO-1', { dueOnDay: null })),
    sentence(send.calibrate('G-56-GO-1', { dueOnDay: '2026-03-02' })),
    sentence(send.calibrate('G-56-GO-2')),
  ]).toEqual([
    'D-56-01 is not kept under calibration.',
    'A gauge that passed needs its next due day.',
    'The next due day must lie after the day of calibration.',
    'G-56-GO-2 is lost; it cannot have been calibrated.',
  ]);
  expect(dump(db)).toEqual(before);
});

const RING_ID = 'G-56-GO-1';
const figures = {
  ...{ feature: 'Pitch diameter', unit: 'um', asFoundError: 1, asLeftError: 1 },
  ...{ lowerLimit: -5, upperLimit: 5, expandedUncertainty: 2, coverageFactor: 2 },
};
const rulesKept = () => listEvidence(db, RING_ID).map(({ calibration }) => calibration?.rule);
const setShopRule = (decisionRule: GaugeSettings['decisionRule']) => {
  const value = GaugeSettingsSchema.parse({ decisionRule, targetReliability: 0.9, why: 'a test' });
  must(setNoun(db, may('set-up-shop'), { noun: 'gauge-settings', value, envelope: envelope() }, ENV));
};

// source: hand. JCGM 106 and ISO 14253-1: the rule of decision is agreed beforehand and stated with the result.
describe('the rule of decision', () => {
  it('is the shop’s where none was chosen, and stays with the result when the shop changes its mind', () => {
    setShopRule('guarded');
    expect(gaugeSettingsInForce(db)).toEqual({
      decisionRule: 'guarded',
      targetReliability: 0.9,
      why: 'a test',
    });
    const first = { ...entered(), onDay: '2026-02-27', features: [figures] };
    must(send.calibrate(RING_ID, first));
    setShopRule('simple');
    expect(must(send.calibrate(RING_ID, first)).alreadyRecorded, 'sent again').toBe(true);
    must(send.calibrate(RING_ID, { onDay: '2026-02-28', features: [figures] }));
    must(send.calibrate(RING_ID, { onDay: '2026-03-01', features: [figures], rule: 'guarded-95' }));
    must(send.calibrate(RING_ID, { onDay: '2026-03-02' }));
    expect(rulesKept()).toEqual(['guarded', 'simple', 'guarded-95', undefined]);
    replayedEqualsKept(db);
  });
});

// source: hand. The newest certificate is of 2 March 2026 and good to 1 March 2027; the other is two years old.
it('an old certificate filed late changes neither the due day nor where the gauge is', () => {
  must(send.calibrate(RING_ID, { asFound: 'in' }));
  must(send.issue(RING_ID));
  const old = { onDay: '2024-03-04', certificate: 'PM-0' };
  must(send.calibrate(RING_ID, { ...old, result: 'fail', dueOnDay: null }));
  must(send.calibrate(RING_ID, { ...old, onDay: '2024-09-04', dueOnDay: '2025-09-03' }));
  expect(row(db, 'tool', 'id', RING_ID)).toMatchObject({ state: 'issued', due_on_day: '2027-03-01' });
  expect(listEvidence(db, RING_ID).map(({ onDay }) => onDay)).toEqual([
    '2024-03-04',
    '2024-09-04',
    '2026-03-02',
  ]);
  expect(listGauges(db).find(({ id }) => id === RING_ID)?.calibratedOnDay).toBe('2026-03-02');
  replayedEqualsKept(db);
});
