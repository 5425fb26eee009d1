import { Field, NumberField, type Option, Select } from '@/app/_shared/ui';
import { addDays } from '@/lib/calendar';
import type { ShopFacts } from '@/lib/outlook/shop-facts';

interface ChosenProps {
  readonly id: string;
  readonly name: string;
  readonly label: string;
  readonly value: string;
}

export function SelectField({
  value,
  options,
  label,
  ...rest
}: ChosenProps & { readonly options: readonly Option[] }) {
  return (
    <Select
      {...rest}
      label={label}
      options={options}
      placeholder={`Choose: ${label.toLowerCase()}`}
      defaultValue={value}
      required
    />
  );
}

export function WholeField({ value, ...rest }: ChosenProps & { readonly unit: string }) {
  return <NumberField {...rest} defaultValue={value} required />;
}

interface DateFieldsProps {
  readonly id: string;
  readonly facts: ShopFacts;
  /** The line whose days are shown to be changed; none: a fortnight from today. */
  readonly lineId: string;
  readonly typed: (name: string) => string;
  /** One day only: the one that a supplier promises. */
  readonly promised?: boolean;
}

export function DateFields({ id, facts, lineId, typed, promised = false }: DateFieldsProps) {
  const line = facts.lines.find((known) => known.id === lineId);
  const day = (name: string, label: string, value: string) => (
    <Field
      id={`${id}-${name}`}
      name={name}
      label={label}
      type="date"
      required
      defaultValue={typed(name) || value}
    />
  );
  if (promised) return day('promisedOnDay', 'Promised for', addDays(facts.today, 28));
  return (
    <>
      {day('startOnDay', 'Start', line?.startOnDay ?? facts.today)}
      {day('dueOnDay', 'Due', line?.dueOnDay ?? addDays(facts.today, 14))}
    </>
  );
}

interface NewLineProps {
  readonly facts: ShopFacts;
  readonly connections: readonly Option[];
  readonly materials: readonly Option[];
  readonly typed: (name: string) => string;
}

export function NewLineFields({ facts, connections, materials, typed }: NewLineProps) {
  return (
    <>
      <SelectField
        id="add-line-size"
        name="connectionId"
        label="Size"
        options={connections}
        value={typed('connectionId')}
      />
      <SelectField
        id="add-line-material"
        name="materialId"
        label="Material"
        options={materials}
        value={typed('materialId')}
      />
      <WholeField id="add-line-ends" name="ends" label="Ends" unit="ends" value={typed('ends')} />
      <DateFields id="add-line" facts={facts} lineId="" typed={typed} />
      <SelectField
        id="add-line-value"
        name="value"
        label="Value"
        options={[
          { value: 'ordinary', label: 'can be remade' },
          { value: 'precious', label: 'cannot be remade' },
        ]}
        value={typed('value') || 'ordinary'}
      />
    </>
  );
}
