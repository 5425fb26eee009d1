import { expect, it } from 'vitest';
import { draftsOfForm } from '@/app/plan/orders/_parts/drafts-of-form';
import { computeOutlook } from '@/lib/outlook/outlook';
import { lineFacts, shopRecord } from '../../support/shop-record';

const facts = shopRecord({ lines: [lineFacts()] });
const outlook = computeOutlook(facts);

function formOf(picks: Record<string, string>): FormData {
  const form = new FormData();
  for (const [partId, quantity] of Object.entries(picks)) {
    form.append('pick', partId);
    form.set(`quantity:${partId}`, quantity);
  }
  return form;
}

// source: hand. An empty crib: die and ring are to be ordered. What was asked is read from the form alone, in its order, so that it
// is the same at a second press; the drafts follow it, numbered on from the orders that there are.
it('drafts what is ticked and still to be ordered, and says what was asked whatever became of it', () => {
  const [ring, die] = ['go-ring', 'die'].map(
    (role) => facts.parts.find((part) => part.role === role)?.id ?? '',
  );
  const form = formOf({ [ring as string]: '1', gone: '3', [die as string]: '4' });
  const { asked, drafts } = draftsOfForm(form, outlook, ['PO-7']);
  expect(asked).toEqual([
    { partId: ring, quantity: 1 },
    { partId: 'gone', quantity: 3 },
    { partId: die, quantity: 4 },
  ]);
  expect(drafts).toMatchObject([
    { partId: ring, quantity: 1, draftedOnDay: facts.today },
    { partId: die, quantity: 4 },
  ]);
  expect(new Set(drafts.map(({ id }) => id)).size).toBe(2);
  expect(drafts.every(({ id }) => /^PO-\d+$/.test(id) && id !== 'PO-7')).toBe(true);
  const after = computeOutlook({ ...facts, lines: [] });
  expect(draftsOfForm(form, after, ['PO-7', 'PO-8'])).toEqual({ asked, drafts: [] });
});
