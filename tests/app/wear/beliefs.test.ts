import { expect, it } from 'vitest';
import { beliefRows } from '@/app/wear/_parts/belief-rows';
import { beliefOfForm } from '@/app/wear/belief-of-form';
import { setNouns } from '@/db/commands/set-noun';
import { readShopFacts } from '@/db/queries/shop-facts';
import { kindWear } from '@/lib/outlook/kind-wear';
import { defaultBelief } from '@/lib/outlook/life-beliefs';
import { shopEnsemble } from '@/lib/outlook/shop-ensemble';
import { SetBeliefInput } from '@/lib/shop/set-up-input';
import { DIE, ENV, entered, envelope, may, must, receive, testShop } from '../../support/db';

/** The form as the screen fills it, with some fields typed over. */
function sent(kind: 'die' | 'blade', typed: Readonly<Record<string, string>> = {}): FormData {
  const form = new FormData();
  form.set('kind', kind);
  const rows = beliefRows(defaultBelief(kind));
  for (const { name, value, giveOrTake } of rows) {
    form.set(giveOrTake === undefined ? name : `${name}.typical`, value);
    if (giveOrTake !== undefined) form.set(`${name}.giveOrTake`, giveOrTake);
  }
  if (kind === 'die') {
    form.set('regrind.typical', '0.85');
    form.set('regrind.giveOrTake', '1.3');
  }
  for (const [name, value] of Object.entries(typed)) form.set(name, value);
  return form;
}

const parse = (form: FormData) => SetBeliefInput.safeParse({ ...entered(), belief: beliefOfForm(form) });

// source: hand. The defaults as METHODS states them: shape 2, regrind 0.85, dry 1.5, recut 1.2, one accident in 20 dies' or 10
// blades' lives; what the form shows is read back within its own rounding.
it('the form shows the defaults and reads them back', () => {
  for (const kind of ['die', 'blade'] as const) {
    const { belief } = SetBeliefInput.parse({ ...entered(), belief: beliefOfForm(sent(kind)) });
    expect(belief).toMatchObject({ kind, shape: { typical: 2 }, regrind: { typical: 0.85 } });
    expect(belief).toMatchObject({ dry: { typical: 1.5 }, rework: { typical: 1.2 } });
    expect(belief.livesPerIncident).toBe(kind === 'die' ? 20 : 10);
    expect(belief.longTailPercent).toBe(25);
  }
});

// source: hand. Dies are not reground, so nobody is asked about it.
it('asks of a regrind only where there is one', () => {
  const names = (kind: 'die' | 'blade') => beliefRows(defaultBelief(kind)).map(({ name }) => name);
  expect(names('blade')).toContain('regrind');
  expect(names('die')).not.toContain('regrind');
});

// source: hand. A shape of none, and a give or take below 1, are refused at their own field.
it.each([
  ['shape.typical', ''],
  ['shape.typical', 'ten'],
  ['dry.giveOrTake', '0.5'],
  ['livesPerIncident', '0'],
  ['longTailPercent', '96'],
])('refuses %s of "%s" and names the field', (name, value) => {
  const result = parse(sent('blade', { [name]: value }));
  expect(result.success ? '' : result.error.issues[0]?.path.join('.')).toBe(`belief.${name}`);
});

// source: hand. Nothing is logged, so the figures are what is believed: 2, then 4 after it was said.
it('once saved, the figures of every screen move', () => {
  const db = testShop();
  receive(db, 'D-56-01', DIE);
  const shapeNow = () => {
    const facts = readShopFacts(db, { today: '2026-03-02' });
    return kindWear({ facts, ensemble: shopEnsemble(facts) }, 'die')?.shape.median ?? 0;
  };
  expect(shapeNow()).toBeCloseTo(2, 1);
  const { belief } = SetBeliefInput.parse({
    ...entered(),
    belief: beliefOfForm(sent('die', { 'shape.typical': '4', 'shape.giveOrTake': '1.2' })),
  });
  const nouns = [{ noun: 'belief', value: belief } as const];
  must(setNouns(db, may('set-up-shop'), { envelope: envelope(), nouns }, ENV));
  expect(shapeNow()).toBeCloseTo(4, 1);
});
