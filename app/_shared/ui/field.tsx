/**
 * Form parts. Each wires its label, hint and error to the control (aria-describedby, aria-invalid); none needs script.
 * After a refusal give the typed values back as `defaultValue`: React empties the fields of a form that was sent.
 *
 *   <Field name label hint? error? …input props />                text, date, search …
 *   <TextArea name label hint? error? rows? />
 *   <Select name label options={[{ value, label }]} placeholder? defaultValue? />
 *   <NumberField name label entry="whole|decimal|fraction" unit="ends" />
 *   <NumberField … units={{ name: 'lengthUnit', options: [{ value: 'in', label: 'in' }, …], defaultValue: 'in' }} />
 *   <Choice name legend options={[{ value, label, note?, mark?, disabled? }]} defaultValue? />     large radio tiles
 *
 * The id of a control is `id`, or f-<name>; give an id where the same name stands on a page twice.
 * NumberField is a text box with the right keypad: 15/16 and 0.5 can be typed; the action parses, zod judges.
 */
import type { ComponentProps, ReactNode } from 'react';
import styles from './field.module.css';
import { FieldFrame, wiring } from './field-frame';

interface Common {
  readonly name: string;
  readonly label: ReactNode;
  readonly hint?: ReactNode;
  readonly error?: string | undefined;
  readonly id?: string;
  readonly optional?: boolean;
}

type InputProps = Common & Omit<ComponentProps<'input'>, keyof Common | 'className'>;

export function Field({ name, label, hint, error, id = `f-${name}`, optional, ...rest }: InputProps) {
  return (
    <FieldFrame id={id} label={label} hint={hint} error={error} optional={optional}>
      <input {...rest} {...wiring(id, hint, error)} name={name} className={styles.control} />
    </FieldFrame>
  );
}

type AreaProps = Common & Omit<ComponentProps<'textarea'>, keyof Common | 'className'>;

export function TextArea({ name, label, hint, error, id = `f-${name}`, optional, ...rest }: AreaProps) {
  return (
    <FieldFrame id={id} label={label} hint={hint} error={error} optional={optional}>
      <textarea rows={3} {...rest} {...wiring(id, hint, error)} name={name} className={styles.control} />
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

export function Select({
  name,
  label,
  hint,
  error,
  id = `f-${name}`,
  optional,
  options,
  placeholder,
  ...rest
}: SelectProps) {
  return (
    <FieldFrame id={id} label={label} hint={hint} error={error} optional={optional}>
      <select
        // A select takes a new default only when it is made anew; after a refusal the default is what was chosen.
        key={String(rest.defaultValue ?? '')}
        {...rest}
        {...wiring(id, hint, error)}
        name={name}
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

interface NumberProps extends InputProps {
  readonly entry?: 'whole' | 'decimal' | 'fraction';
  /** A fixed unit, printed inside the field. */
  readonly unit?: string;
  /** Or a choice of units, sent under its own name. */
  readonly units?: {
    readonly name: string;
    readonly options: readonly Option[];
    readonly defaultValue?: string;
  };
}

const KEYPAD = { whole: 'numeric', decimal: 'decimal', fraction: 'text' } as const;

export function NumberField({
  name,
  label,
  hint,
  error,
  id = `f-${name}`,
  optional,
  entry = 'whole',
  unit,
  units,
  ...rest
}: NumberProps) {
  const wires = wiring(id, hint, error);
  const described = unit
    ? [`${id}-unit`, wires['aria-describedby']].filter(Boolean).join(' ')
    : wires['aria-describedby'];
  return (
    <FieldFrame id={id} label={label} hint={hint} error={error} optional={optional}>
      <span className={styles.measure}>
        <input
          type="text"
          inputMode={KEYPAD[entry]}
          autoComplete="off"
          {...rest}
          {...wires}
          aria-describedby={described}
          name={name}
          className={styles.number}
        />
        {unit ? (
          <span className={styles.unit} id={`${id}-unit`}>
            {unit}
          </span>
        ) : null}
        {units ? (
          <select
            // Made anew for a new default, as a Select is: after a refusal the unit that was chosen stays.
            key={units.defaultValue}
            name={units.name}
            defaultValue={units.defaultValue}
            aria-label={`Unit of ${labelText(label, name)}`}
            className={styles.unitChoice}
          >
            {units.options.map((option) => (
              <option key={option.value} value={option.value}>
                {option.label}
              </option>
            ))}
          </select>
        ) : null}
      </span>
    </FieldFrame>
  );
}

function labelText(label: ReactNode, name: string): string {
  return typeof label === 'string' ? label.toLowerCase() : name;
}
