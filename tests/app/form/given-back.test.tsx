import type { ReactNode } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import type { FormState } from '@/app/_shared/form/form-state';
import { LastSending } from '@/app/_shared/form/given-back';
import { Choice, Field, NumberField, Select, TextArea } from '@/app/_shared/ui';

const refused = (field: string | null, values: Record<string, string>): FormState => ({
  status: 'refused',
  sentence: 'Not so.',
  field,
  values,
});

const shown = (state: FormState, part: ReactNode) =>
  renderToStaticMarkup(<LastSending value={state}>{part}</LastSending>);

const OPTIONS = [
  { value: 'a', label: 'A' },
  { value: 'b', label: 'B' },
];

// source: hand. A refused form comes back as it was typed, and each refusal stands at the field it is about.
describe('a form part', () => {
  it('starts with its default before anything was sent, and once it was taken', () => {
    const field = <Field name="heat" label="Heat" defaultValue="H1" />;
    expect(shown({ status: 'fresh' }, field)).toContain('value="H1"');
    expect(shown({ status: 'done', sentence: 'Logged.' }, field)).toContain('value="H1"');
  });

  it('gives back what was typed, also where that was nothing', () => {
    const field = <Field name="heat" label="Heat" defaultValue="H1" />;
    expect(shown(refused(null, { heat: 'H2' }), field)).toContain('value="H2"');
    expect(shown(refused(null, { heat: '' }), field)).toContain('value=""');
    expect(shown(refused(null, { why: 'cut' }), <TextArea name="why" label="Why" />)).toContain(
      '>cut</textarea>',
    );
  });

  it('starts with its default where it was not in what was sent', () => {
    expect(
      shown(refused(null, { other: 'x' }), <Field name="heat" label="Heat" defaultValue="H1" />),
    ).toContain('value="H1"');
  });

  it('gives back what was chosen, in a list, among tiles and of a unit', () => {
    const sent = refused(null, { pick: 'b', unit: 'mm', length: '7' });
    expect(shown(sent, <Select name="pick" label="Pick" options={OPTIONS} defaultValue="a" />)).toContain(
      '<option value="b" selected="">',
    );
    const tiles = shown(sent, <Choice name="pick" legend="Pick" options={OPTIONS} defaultValue="a" />);
    expect(tiles.match(/checked/g)).toHaveLength(1);
    expect(tiles).toMatch(/checked=""[^>]*value="b"|value="b"[^>]*checked=""/);
    const units = ['in', 'mm'].map((value) => ({ value, label: value }));
    const length = shown(
      sent,
      <NumberField
        name="length"
        label="Length"
        units={{ name: 'unit', options: units, defaultValue: 'in' }}
      />,
    );
    expect(length).toContain('value="7"');
    expect(length).toContain('<option value="mm" selected="">');
  });

  it('leaves alone a value that the page holds itself', () => {
    const held = <Field name="heat" label="Heat" value="H3" onChange={() => {}} />;
    expect(shown(refused(null, { heat: 'H2' }), held)).toContain('value="H3"');
  });

  it('shows the refusal of its own name and of the names that it answers to, and no other', () => {
    const price = <NumberField name="price" label="Price" answers="part.priceMinor" />;
    expect(shown(refused('price', {}), price)).toContain('Not so.');
    expect(shown(refused('part.priceMinor', {}), price)).toContain('Not so.');
    expect(shown(refused('part.name', {}), price)).not.toContain('Not so.');
    expect(shown(refused('price', {}), price)).toContain('aria-invalid="true"');
  });
});
