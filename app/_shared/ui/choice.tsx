'use client';

/**
 * <Choice>: a few answers as large tiles instead of a drop-down. Radio buttons underneath, so it works without script. Inside
 * an EntryForm it gives back what was chosen and shows its own error, as the parts of field.tsx do.
 */
import type { ReactNode } from 'react';
import { useGivenBack } from '../form/given-back';
import styles from './choice.module.css';
import { FieldError } from './field-frame';

export interface ChoiceOption {
  readonly value: string;
  readonly label: ReactNode;
  readonly note?: ReactNode;
  /** A small drawing, such as <TubeEnd decorative />. */
  readonly mark?: ReactNode;
  readonly disabled?: boolean;
}

interface ChoiceProps {
  readonly name: string;
  readonly legend: ReactNode;
  readonly options: readonly ChoiceOption[];
  readonly defaultValue?: string | undefined;
  readonly hint?: ReactNode;
  readonly answers?: string | readonly string[] | undefined;
  readonly error?: string | undefined;
  readonly id?: string;
  readonly required?: boolean;
}

export function Choice({
  name,
  legend,
  options,
  defaultValue,
  hint,
  answers,
  error: told,
  id = `f-${name}`,
  required,
}: ChoiceProps) {
  const given = useGivenBack({ name, start: defaultValue, answers });
  const error = told ?? given.error;
  const described = [error ? `${id}-error` : '', hint ? `${id}-hint` : ''].filter(Boolean).join(' ');
  return (
    <fieldset className={styles.choice} id={id} aria-describedby={described || undefined}>
      <legend>{legend}</legend>
      {hint ? (
        <span className={styles.hint} id={`${id}-hint`}>
          {hint}
        </span>
      ) : null}
      <div className={styles.tiles}>
        {options.map((option) => (
          <label key={option.value} className={styles.tile}>
            <input
              type="radio"
              name={name}
              value={option.value}
              defaultChecked={option.value === given.start}
              disabled={option.disabled}
              required={required}
            />
            {option.mark}
            <span className={styles.words}>
              <span className={styles.label}>{option.label}</span>
              {option.note ? <span className={styles.note}>{option.note}</span> : null}
            </span>
          </label>
        ))}
      </div>
      <FieldError id={id} error={error} />
    </fieldset>
  );
}
