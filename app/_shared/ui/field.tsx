'use client';

/**
 * Form parts. Each wires its label, hint and error to the control (aria-describedby, aria-invalid); none needs script.
 * Inside an EntryForm each gives back what was typed when the form was refused, and shows its own error: `defaultValue` is
 * what it starts with, `answers` names the fields of a refusal that are answered here besides its own name.
 *
 *   <Field name label hint? defaultValue? answers? error? …input props />                text, date, search …
 *   <TextArea name label hint? defaultValue? answers? error? rows? />
 *   <Select name label options={[{ value, label }]} placeholder? defaultValue? />
 *   <NumberField name label entry="whole|decimal|fraction" unit="ends" />
 *   <NumberField … units={{ name: 'lengthUnit', options: [{ value: 'in', label: 'in' }, …], defaultValue: 'in' }} />
 *   <Choice name legend options={[{ value, label, note?, mark?, disabled? }]} defaultValue? />     large radio tiles
 *
 * The id of a control is `id`, or f-<name>; give an id where the same name stands on a page twice.
 * NumberField is a text box with the right keypad: 15/16 and 0.5 can be typed; the action parses, zod judges.
 */
import type { ComponentProps, ReactNode } from 'react';
import { useGivenBack } from '../form/given-back';
import styles from './field.module.css';
import { FieldFrame, wiring } from './field-frame';

interface Common {
  readonly name: string;
  readonly label: ReactNode;
  readonly hint?: ReactNode;
  readonly defaultValue?: string | number | undefined;
  readonly answers?: string | readonly string[] | undefined;
  readonly error?: string | undefined;
  readonly id?: string;
  readonly optional?: boolean;
}

/** The props of a form part, parted into those of its frame and those of its control, with what the last sending says of it. */
function useParts<P extends Common & { readonly value?: unknown }>(props: P) {
  const { name, label, hint, defaultValue, answers, error, id = `f-${name}`, optional, ...rest } = props;
  const given = useGivenBack({ name, start: defaultValue, answers });
  const shown = error ?? given.error;
  // A control whose value the page itself holds has no other to start with.
  const start = rest.value === undefined ? { defaultValue: given.start } : {};
  return {
    frame: { id, label, hint, error: shown, optional },
    control: { ...rest, ...start, ...wiring(id, hint, shown), name },
  };
}

type InputProps = Common & Omit<ComponentProps<'input'>, keyof Common | 'className'>;

export function Field(props: InputProps) {
  const { frame, control } = useParts(props);
  return (
    <FieldFrame {...frame}>
      <input {...control} className={styles.control} />
    </FieldFrame>
  );
}

type AreaProps = Common & Omit<ComponentProps<'textarea'>, keyof Common | 'className'>;

export function TextArea(props: AreaProps) {
  const { frame, control } = useParts(props);
  return (
    <FieldFrame {...frame}>
      <textarea rows={3} {...control} className={styles.control} />
    </FieldFrame>
  );
}

export interface Option {
  readonly value: string;
  readonly label: string;
  readonly disabled?: boolean;
}

interface SelectProps
  extends Common,
    Omit<ComponentProps<'select'>, keyof Common | 'className' | 'children'> {
  readonly options: readonly Option[];
  /** First, empty entry, such as "Choose a size". */
  readonly placeholder?: string;
}

export function Select({ options, placeholder, ...props }: SelectProps) {
  const { frame, control } = useParts(props);
  return (
    <FieldFrame {...frame}>
      <select
        // A select takes a new default only when it is made anew; after a refusal the default is what was chosen.
        key={String(control.defaultValue ?? '')}
        {...control}
        className={`${styles.control} ${styles.select}`}
      >
        {placeholder ? <option value="">{placeholder}</option> : null}
        {options.map((option) => (
          <option key={option.value} value={option.value} disabled={option.disabled}>
            {option.label}
          </option>
        ))}
      </select>
    </FieldFrame>
  );
}

interface Units {
  readonly name: string;
  readonly options: readonly Option[];
  readonly defaultValue?: string;
}

interface NumberProps extends InputProps {
  readonly entry?: 'whole' | 'decimal' | 'fraction';
  /** A fixed unit, printed inside the field. */
  readonly unit?: string;
  /** Or a choice of units, sent under its own name. */
  readonly units?: Units;
}

const KEYPAD = { whole: 'numeric', decimal: 'decimal', fraction: 'text' } as const;

export function NumberField({ entry = 'whole', unit, units, ...props }: NumberProps) {
  const { frame, control } = useParts(props);
  const described = unit
    ? [`${frame.id}-unit`, control['aria-describedby']].filter(Boolean).join(' ')
    : control['aria-describedby'];
  return (
    <FieldFrame {...frame}>
      <span className={styles.measure}>
        <input
          type="text"
          inputMode={KEYPAD[entry]}
          autoComplete="off"
          {...control}
          aria-describedby={described}
          className={styles.number}
        />
        {unit ? (
          <span className={styles.unit} id={`${frame.id}-unit`}>
            {unit}
          </span>
        ) : null}
        {units ? <UnitChoice {...units} of={labelText(props.label, props.name)} /> : null}
      </span>
    </FieldFrame>
  );
}

function UnitChoice({ name, options, defaultValue, of }: Units & { readonly of: string }) {
  const { start } = useGivenBack({ name, start: defaultValue });
  return (
    <select
      // Made anew for a new default, as a Select is: after a refusal the unit that was chosen stays.
      key={start}
      name={name}
      defaultValue={start}
      aria-label={`Unit of ${of}`}
      className={styles.unitChoice}
    >
      {options.map((option) => (
        <option key={option.value} value={option.value}>
          {option.label}
        </option>
      ))}
    </select>
  );
}

function labelText(label: ReactNode, name: string): string {
  return typeof label === 'string' ? label.toLowerCase() : name;
}
