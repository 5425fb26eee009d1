'use client';

import { useRef } from 'react';
import { Button } from '@/app/_shared/ui';
import styles from './accept.module.css';

interface StepperProps {
  readonly name: string;
  readonly label: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  readonly value: string;
  readonly onChange: (value: string) => void;
}

/** One of a row of values, by two large buttons or by the list between them; the list alone works without script. */
export function Stepper({ name, label, options, value, onChange }: StepperProps) {
  const list = useRef<HTMLSelectElement>(null);
  const at = options.findIndex((option) => option.value === value);
  const step = (by: number) => {
    const next = options[Math.min(options.length - 1, Math.max(0, at + by))];
    if (next !== undefined) onChange(next.value);
    list.current?.focus();
  };
  return (
    <div className="stack-tight">
      <label htmlFor={`f-${name}`}>{label}</label>
      <div className={styles.stepper}>
        <Button onClick={() => step(-1)} aria-label={`${label}: less`}>
          −
        </Button>
        <select
          ref={list}
          id={`f-${name}`}
          name={name}
          value={value}
          onChange={(event) => onChange(event.target.value)}
        >
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.label}
            </option>
          ))}
        </select>
        <Button onClick={() => step(1)} aria-label={`${label}: more`}>
          +
        </Button>
      </div>
    </div>
  );
}
