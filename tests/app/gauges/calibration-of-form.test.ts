import { expect, it } from 'vitest';
import { figuresOfForm, OUTCOME, outcomeOf } from '@/app/gauges/[id]/_parts/calibration-of-form';
import { CalibrationSchema, FeatureSchema } from '@/lib/shop/calibration';

function formOf(fields: Record<string, string>): FormData {
  const form = new FormData();
  for (const [name, value] of Object.entries(fields)) form.set(name, value);
  return form;
}

it('each answer says how it was found and how it was left', () => {
  const base = { onDay: '2026-03-02', dueOnDay: '2027-03-01', certificate: '' };
  for (const [name, said] of Object.entries(OUTCOME)) {
    expect(outcomeOf(name)).toBe(name);
    expect(CalibrationSchema.parse({ ...base, ...said })).toMatchObject({
      result: said.result,
      asFound: said.asFound,
    });
  }
  expect(outcomeOf('perhaps')).toBeUndefined();
});

it('figures are optional as a whole, and each of them', () => {
  expect(figuresOfForm(formOf({ feature: 'pitch diameter', unit: 'um', coverageFactor: '2' }))).toBeNull();
  expect(
    figuresOfForm(formOf({ feature: 'angle', unit: 'um', lowerLimit: '-6', upperLimit: '6' })),
  ).toBeNull();
  const some = figuresOfForm(
    formOf({ feature: 'pitch diameter', unit: 'um', asFoundError: '-1.5', upperLimit: '4' }),
  );
  expect(FeatureSchema.parse(some)).toEqual({
    ...{ feature: 'pitch diameter', unit: 'um', asFoundError: -1.5, asLeftError: null },
    ...{ lowerLimit: null, upperLimit: 4, expandedUncertainty: null, coverageFactor: 2 },
  });
});

it('what is no number is refused and not left out', () => {
  const figures = figuresOfForm(formOf({ feature: 'angle', unit: 'deg', asFoundError: '1,5' }));
  expect(FeatureSchema.safeParse(figures).success).toBe(false);
});
