import { describe, expect, it } from 'vitest';
import { checked, number, numberOrNull, stamp, text, textOrNull } from '@/app/_server/form-fields';
import { keyFromName } from '@/app/_shared/form/key-from-name';
import {
  countedParts,
  gaugeSettingsOf,
  guessRows,
  personOf,
  shopOf,
  tickedSizes,
} from '@/app/setup/form-readers';
import { GaugeSettingsSchema } from '@/lib/shop/gauge-settings';
import { ShopSchema } from '@/lib/shop/shop-settings';

function form(fields: Readonly<Record<string, string | readonly string[]>>): FormData {
  const data = new FormData();
  for (const [name, values] of Object.entries(fields))
    for (const value of typeof values === 'string' ? [values] : values) data.append(name, value);
  return data;
}

// source: hand. Each case is what somebody types, and what the door then gets.
describe('form fields', () => {
  it('what is left empty is nothing', () => {
    const empty = form({ a: '   ' });
    expect([text(empty, 'a'), text(empty, 'b')]).toEqual(['', '']);
    expect([textOrNull(empty, 'a'), numberOrNull(empty, 'a'), number(empty, 'b')]).toEqual([
      null,
      null,
      undefined,
    ]);
  });

  it('reads a number with spaces between its thousands; what is none stays for the door to refuse', () => {
    const typed = form({ a: ' 12 400 ', b: '12\u202f400', c: '0.5', d: 'ten', e: '1,5' });
    expect(['a', 'b', 'c'].map((name) => number(typed, name))).toEqual([12_400, 12_400, 0.5]);
    expect(number(typed, 'd')).toBeNaN();
    expect(number(typed, 'e')).toBeNaN();
  });

  it.each(['0x10', '1e3', '1e400', 'Infinity', '4 0', '1 2', '12 4000', '--1', '.', '+-1', '１２'])(
    'takes %s for no number: nobody in a shop means sixteen by it, or forty',
    (sign) => {
      expect(number(form({ a: sign }), 'a')).toBeNaN();
    },
  );

  it.each([
    ['1 234 567', 1_234_567],
    ['-3', -3],
    ['.5', 0.5],
    ['5.', 5],
    ['007', 7],
  ])('reads %s', (sign, value) => {
    expect(number(form({ a: sign }), 'a')).toBe(value);
  });

  it('reads a tick and the stamp of an entry', () => {
    const typed = form({ dry: 'on', entryId: 'entry-0001', deviceAtMs: '1772438400000' });
    expect([checked(typed, 'dry'), checked(typed, 'rework')]).toEqual([true, false]);
    expect(stamp(typed)).toEqual({ entryId: 'entry-0001', deviceAtMs: 1_772_438_400_000 });
    expect(stamp(form({}))).toEqual({ entryId: '', deviceAtMs: undefined });
  });
});

describe('the shop’s own settings', () => {
  it('takes per cent with or without its sign, and the defaults where nothing is typed', () => {
    const typed = shopOf(
      form({ shopName: ' A shop ', required: '90', requiredPrecious: '97.5 %', currency: 'eur' }),
    );
    expect(typed).toMatchObject({
      name: 'A shop',
      units: 'in',
      currency: 'EUR',
      requiredProbability: 0.9,
      requiredProbabilityPrecious: 0.975,
    });
    expect(ShopSchema.parse(shopOf(form({ shopName: 'A shop' })))).toMatchObject({
      requiredProbability: 0.9,
      requiredProbabilityPrecious: 0.95,
      fluidWasteFactor: 3,
      currency: 'USD',
    });
  });

  it('leaves nonsense for the door to refuse', () => {
    for (const required of ['ninety', '0.9', '100', '-90'])
      expect(ShopSchema.safeParse(shopOf(form({ shopName: 'A shop', required }))).success, required).toBe(
        false,
      );
  });
});

describe('people', () => {
  it.each([
    ['Tech 2', 'tech-2'],
    ['  Ana   Ruiz ', 'ana-ruiz'],
    ['Jörg Øst', 'jorg-st'],
    ['O’Neil (nights)', 'o-neil-nights'],
  ])('the key of "%s" is %s', (name, key) => {
    expect(keyFromName(name)).toBe(key);
  });

  it('a name in another script has a key of its own that the door accepts', () => {
    const keys = ['李', '王', '李王', '2'].map(keyFromName);
    expect(new Set(keys).size).toBe(4);
    for (const key of keys) expect(key).toMatch(/^[A-Za-z0-9][A-Za-z0-9_.-]{0,63}$/);
    expect(keyFromName('a'.repeat(200)).length).toBeLessThanOrEqual(64);
  });

  it('keeps the key of somebody who is known', () => {
    const typed = { personName: 'Robin Vale', personRole: 'lead' };
    expect(personOf(form(typed))).toEqual({ id: 'robin-vale', name: 'Robin Vale', role: 'lead' });
    expect(personOf(form({ ...typed, personId: 'robin' })).id).toBe('robin');
  });
});

describe('rows of a form', () => {
  it('takes the sizes that are ticked', () => {
    expect(tickedSizes(form({ connectionIds: ['3-8-medium', '9-16-high'] }))).toEqual([
      '3-8-medium',
      '9-16-high',
    ]);
    expect(tickedSizes(form({}))).toEqual([]);
  });

  it('takes the guesses that were typed, and leaves out rows left empty', () => {
    const typed = form({
      guessPartId: ['die-3-8', 'blade-3-8-medium'],
      'ends-die-3-8': '150',
      'giveOrTake-die-3-8': '2',
      'connection-die-3-8': '3-8-medium',
      'ends-blade-3-8-medium': ' ',
    });
    expect(guessRows(typed)).toEqual([
      { partId: 'die-3-8', connectionId: '3-8-medium', ends: 150, giveOrTake: 2 },
    ]);
  });

  it('takes the parts that were counted; a count that is no number stays for the door to refuse', () => {
    const typed = form({
      countPartId: ['a', 'b', 'c', 'd'],
      'count-a': '2',
      'count-b': '0',
      'count-c': '',
      'count-d': 'two',
    });
    expect(countedParts(typed)).toEqual(['a', 'd']);
  });
});

// source: hand. What somebody types, and what the door then gets or says.
describe('how gauges are judged', () => {
  const read = (targetReliability: string) =>
    GaugeSettingsSchema.safeParse(
      gaugeSettingsOf(form({ decisionRule: 'guarded', targetReliability, why: 'Instruction 12' })),
    );

  it('the target is typed in per cent', () => {
    expect(read('97.5').data).toEqual({
      decisionRule: 'guarded',
      targetReliability: 0.975,
      why: 'Instruction 12',
    });
    expect(read('92.9').data?.targetReliability).toBe(0.929);
  });

  it('says in per cent where it must lie', () => {
    for (const typed of ['', '0.95', '75', '100', 'sure'])
      expect(read(typed).error?.issues[0]?.message).toBe(
        'How sure an interval shall be lies between 80 and 99 %.',
      );
  });
});
