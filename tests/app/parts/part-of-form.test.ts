import { describe, expect, it } from 'vitest';
import { partOfForm } from '@/app/parts/_parts/part-of-form';
import { completeSetParts } from '@/lib/shipped/complete-set-parts';
import { SHIPPED_CONNECTIONS } from '@/lib/shipped/connections';
import { PartSchema } from '@/lib/shop/part';

const [first] = SHIPPED_CONNECTIONS;
if (first === undefined) throw new Error('there are shipped connections');
const KNOWN = completeSetParts(first);

function form(fields: Readonly<Record<string, string | readonly string[]>>): FormData {
  const data = new FormData();
  for (const [name, values] of Object.entries(fields))
    for (const value of typeof values === 'string' ? [values] : values) data.append(name, value);
  return data;
}

// source: hand.
describe('partOfForm', () => {
  it('takes a new part’s key from its kind and name, and money in hundredths', () => {
    const part = partOfForm(
      form({ role: 'die', name: '5/16 die', hand: 'LH', price: '120.50', fits: ['1-4-high'] }),
      [],
    );
    if (!part.ok) throw new Error(part.refusal.sentence);
    expect(part.value).toMatchObject({
      id: 'die-5-16-die',
      role: 'die',
      priceMinor: 12_050,
      permittedMaterialIds: 'all',
    });
    expect(PartSchema.safeParse(part.value).success).toBe(true);
  });

  it('keeps the kind and the key of a part that the shop has, whatever the form says', () => {
    const part = partOfForm(form({ id: 'die-1-4', role: 'fluid', name: 'Quarter die' }), KNOWN);
    if (!part.ok) throw new Error(part.refusal.sentence);
    expect(part.value).toMatchObject({ id: 'die-1-4', role: 'die', name: 'Quarter die' });
  });

  it('reads what a fluid is permitted on: all, or those ticked', () => {
    const named = { role: 'fluid', name: 'Clear oil', permits: ['ti-2', '625'], containerMl: '500' };
    const some = partOfForm(form(named), []);
    const all = partOfForm(form({ ...named, permitsAll: 'on' }), []);
    expect(some).toMatchObject({ value: { permittedMaterialIds: ['ti-2', '625'], containerMl: 500 } });
    expect(all).toMatchObject({ value: { permittedMaterialIds: 'all' } });
  });

  it('refuses a second part of one kind and name', () => {
    const once = partOfForm(form({ role: 'brush', name: 'Stiff' }), []);
    if (!once.ok) throw new Error(once.refusal.sentence);
    const part = PartSchema.parse(once.value);
    expect(partOfForm(form({ role: 'brush', name: 'stiff' }), [part]).ok).toBe(false);
  });
});
