import { expect, it } from 'vitest';
import { mended, mendOf } from '@/app/_server/mend';

function form(fields: Readonly<Record<string, string>>): FormData {
  const data = new FormData();
  for (const [name, value] of Object.entries(fields)) data.set(name, value);
  return data;
}

const SLIP = {
  code: 'unit-slip',
  sentence: '?',
  field: 'land',
  meant: { figure: '0.15', unit: 'mm' as const },
};

// source: hand. One press puts the figure and its unit in place of what was typed, and nothing else.
it('offers what was meant and sends it', () => {
  const typed = form({ land: '0.15 in', landUnit: 'in', reason: 'look' });
  const mend = mendOf(SLIP, typed);
  expect(mend).toEqual({ label: 'Yes, 0.15 mm', values: { land: '0.15', landUnit: 'mm' } });
  typed.set('mend', JSON.stringify(mend?.values));
  expect(Object.fromEntries(mended(typed))).toEqual({ land: '0.15', landUnit: 'mm', reason: 'look' });
});

// source: hand. Without a unit field, or with nothing meant, there is nothing to press; hostile values change nothing.
it('offers and takes nothing else', () => {
  expect(mendOf(SLIP, form({ land: '0.15' }))).toBeUndefined();
  expect(mendOf({ code: 'far', sentence: '?', field: 'land' }, form({ landUnit: 'in' }))).toBeUndefined();
  expect(mendOf({ ...SLIP, field: 'nose' }, form({ unit: 'in' }))?.values).toEqual({
    nose: '0.15',
    unit: 'mm',
  });
  for (const mend of ['{', 'null', '"x"', '{"stranger":"1","land":5}'])
    expect(Object.fromEntries(mended(form({ land: '1', mend })))).toEqual({ land: '1' });
});
