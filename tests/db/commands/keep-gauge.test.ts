import { beforeEach, describe, expect, it } from 'vitest';
import { checkGauge, dropGauge, setGaugeInterval } from '@/db/commands/keep-gauge';
import { setNoun } from '@/db/commands/set-noun';
import type { Db } from '@/db/open';
import { listEvidence, listGauges } from '@/db/queries/gauges';
import { CheckGaugeInput, DropGaugeInput, SetGaugeIntervalInput } from '@/lib/shop/gauge-input';
import {
  dump,
  ENV,
  entered,
  envelope,
  may,
  must,
  part,
  RING,
  receive,
  sentence,
  testShop,
} from '../../support/db';
import { row, sender } from '../../support/send';

const PLUG = part({ id: 'plug-56', role: 'setting-plug', name: '9/16 setting plug', hand: 'LH' });
let db: Db;
let send: ReturnType<typeof sender>;

const check = (over = {}) => {
  const fields = {
    toolId: 'G-56-GO-1',
    onDay: '2026-03-02',
    result: 'pass',
    qualifies: true,
    againstToolId: 'SP-56-1',
  };
  return checkGauge(db, may('check-gauge'), CheckGaugeInput.parse({ ...entered(), ...fields, ...over }), ENV);
};
const drop = (over = {}) => {
  const fields = { ...entered(), toolId: 'G-56-GO-1', onDay: '2026-03-02', ...over };
  return dropGauge(db, may('set-aside-gauge'), DropGaugeInput.parse(fields), ENV);
};
const interval = (over = {}) => {
  const fields = {
    toolId: 'G-56-GO-1',
    intervalDays: 270,
    intervalEnds: 600,
    method: 'in-use',
    reason: 'busy ring',
  };
  const input = SetGaugeIntervalInput.parse({ ...entered(), ...fields, ...over });
  return setGaugeInterval(db, may('set-gauge-interval'), input, ENV);
};

beforeEach(() => {
  db = testShop();
  send = sender(db);
  must(setNoun(db, may('set-up-shop'), { noun: 'part', value: PLUG, envelope: envelope() }, ENV));
  receive(db, 'G-56-GO-1', RING);
  receive(db, 'G-56-GO-2', RING);
  receive(db, 'SP-56-1', PLUG, { dueOnDay: '2028-03-01' });
});

describe('Q9: I dropped the GO ring', () => {
  it('one tap sets it aside, whoever holds it, and asks nothing', () => {
    must(send.issue('G-56-GO-1'));
    must(drop());
    expect(row(db, 'tool', 'id', 'G-56-GO-1')).toMatchObject({ state: 'quarantined', holder_id: null });
    expect(row(db, 'gauge', 'tool_id', 'G-56-GO-1')).toMatchObject({ dropped_on_day: '2026-03-02' });
    expect(sentence(drop())).toBe('G-56-GO-1 is set aside already.');
  });

  it('a check on the setting plug that passes brings it back, with the record', () => {
    must(drop());
    must(check());
    expect(row(db, 'tool', 'id', 'G-56-GO-1')).toMatchObject({ state: 'in-crib' });
    expect(row(db, 'gauge', 'tool_id', 'G-56-GO-1')).toBeUndefined();
    expect(listEvidence(db, 'G-56-GO-1')).toMatchObject([
      { kind: 'interim', asFound: 'in', againstToolId: 'SP-56-1' },
    ]);
  });

  it('one that fails leaves it set aside, and says so in its evidence', () => {
    must(drop());
    must(check({ result: 'fail' }));
    expect(row(db, 'tool', 'id', 'G-56-GO-1')).toMatchObject({ state: 'quarantined' });
    expect(listEvidence(db, 'G-56-GO-1').at(-1)).toMatchObject({ asFound: 'out', qualifies: true });
  });
});

it('a master that is set aside, out of date or not there proves nothing', () => {
  const before = dump(db);
  const said = [
    check({ againstToolId: 'SP-NOWHERE' }),
    check({ againstToolId: null }),
    check({ onDay: '2026-03-04' }),
  ];
  expect(said.map(sentence)).toEqual([
    'No tool SP-NOWHERE is in the record.',
    'Name the master it was checked on, or say that the check does not count.',
    'That day has not come yet.',
  ]);
  expect(dump(db)).toEqual(before);
  must(send.move('SP-56-1', 'quarantined'));
  expect(sentence(check())).toBe('SP-56-1 is quarantined; a check on it does not count.');
});

it('a smeared mark of the master finds it, and the mark as it is known is kept', () => {
  must(check({ againstToolId: 'sp-56-I' }));
  expect(listEvidence(db, 'G-56-GO-1').at(-1)?.againstToolId).toBe('SP-56-1');
});

it('sent twice counts once', () => {
  const once = entered();
  must(check(once));
  expect(must(check(once)).alreadyRecorded).toBe(true);
  expect(listEvidence(db, 'G-56-GO-1')).toHaveLength(1);
});

describe('Q36: can we stretch the ring interval', () => {
  it('a decision needs a reason, and stands in the register', () => {
    expect(
      SetGaugeIntervalInput.safeParse({
        ...entered(),
        toolId: 'G-1',
        intervalDays: 548,
        intervalEnds: null,
        method: 'staircase',
        reason: '',
      }).success,
    ).toBe(false);
    must(send.calibrate('G-56-GO-1', { dueOnDay: '2026-11-27' }));
    must(interval({ intervalDays: 548, method: 'staircase', reason: 'Two good results.' }));
    const ring = listGauges(db).find(({ id }) => id === 'G-56-GO-1');
    expect(ring).toMatchObject({ interval: { intervalDays: 548, intervalEnds: 600, method: 'staircase' } });
    expect(ring?.dueOnDay, 'the day on the sticker stays').toBe('2026-11-27');
  });

  it('a shorter one takes hold at once', () => {
    must(send.calibrate('G-56-GO-1', { dueOnDay: '2027-03-01' }));
    must(interval({ intervalDays: 100 }));
    expect(row(db, 'tool', 'id', 'G-56-GO-1')).toMatchObject({ due_on_day: '2026-06-10' });
  });

  it('neither days nor ends is no interval', () => {
    const none = {
      ...entered(),
      toolId: 'G-1',
      intervalDays: null,
      intervalEnds: null,
      method: 'shorter',
      reason: 'so',
    };
    expect(SetGaugeIntervalInput.safeParse({ ...none, reason: 'because' }).success).toBe(false);
  });
});
