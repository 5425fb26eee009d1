import { expect, it } from 'vitest';
import { readingRows } from '@/app/wear/_parts/reading-rows';
import { readingOfForm } from '@/app/wear/reading-of-form';
import { readEdge } from '@/db/commands/read-edge';
import { setNoun } from '@/db/commands/set-noun';
import { readShopFacts } from '@/db/queries/shop-facts';
import { toolsInHand } from '@/lib/outlook/tools-in-hand';
import { DEFAULT_READING_SETTINGS } from '@/lib/reading/reading-settings';
import { ReadEdgeInput } from '@/lib/shop/command-input';
import { SetReadingSettingsInput } from '@/lib/shop/reading-settings';
import { BLADE, ENV, entered, envelope, may, must, receive, testShop } from '../../support/db';
import { sender } from '../../support/send';

/** The form as the screen fills it, with some fields typed over. */
function sent(typed: Readonly<Record<string, string>> = {}): FormData {
  const form = new FormData();
  for (const { name, value } of readingRows(DEFAULT_READING_SETTINGS).flatMap(({ fields }) => fields))
    form.set(name, typed[name] ?? String(value));
  return form;
}
const parse = (form: FormData) =>
  SetReadingSettingsInput.safeParse({ ...entered(), settings: readingOfForm(form) });

// source: identity. What the form shows, it reads back: every figure of the settings has a field and comes home unchanged.
it('the form shows the defaults and reads them back', () => {
  const read = parse(sent());
  expect(read.success && read.data.settings).toEqual(DEFAULT_READING_SETTINGS);
});

// source: hand. A limit of nothing, a share above a whole life and an error of nothing are refused at their own field.
it.each([
  ['landLimitMm', ''],
  ['landLimitMm', '0'],
  ['grade.marked.worn', '130'],
  ['go.tight.sd', '0'],
  ['pitchDiameterSdMm.wires', 'thin'],
])('refuses %s of "%s" and names the field', (name, value) => {
  const result = parse(sent({ [name]: value }));
  expect(result.success ? '' : result.error.issues[0]?.path.join('.')).toBe(`settings.${name}`);
});

// source: hand. A land of 0.075 mm is a quarter of 0.3 mm and half of 0.15 mm: readings taken before count by the new limit too.
it('once saved, what was read counts by it', () => {
  const db = testShop();
  receive(db, 'B-56-01', BLADE);
  must(sender(db).cut('B-56-01', 10));
  const finding = { method: 'flank-land', landMm: 0.075 };
  const reading = ReadEdgeInput.parse({ ...entered(), toolId: 'B-56-01', onDay: '2026-03-02', finding });
  must(readEdge(db, may('read-edge'), reading, ENV));
  const worn = () => toolsInHand(readShopFacts(db, { today: '2026-03-02' }))[0]?.readings?.[0]?.worn;
  expect(worn()).toBeCloseTo(0.25, 12);
  const value = SetReadingSettingsInput.parse({
    ...entered(),
    settings: readingOfForm(sent({ landLimitMm: '0.15' })),
  }).settings;
  must(setNoun(db, may('set-up-shop'), { envelope: envelope(), noun: 'reading-settings', value }, ENV));
  expect(worn()).toBeCloseTo(0.5, 12);
});
