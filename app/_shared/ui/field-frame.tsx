/** Label above, control, then hint, then error: the frame of every form part, and the wiring that belongs to it. */
import type { ReactNode } from 'react';
import styles from './field.module.css';

interface FrameProps {
  readonly id: string;
  readonly label: ReactNode;
  readonly hint?: ReactNode;
  readonly error?: string | undefined;
  readonly optional?: boolean | undefined;
  readonly children: ReactNode;
}

export function FieldFrame({ id, label, hint, error, optional, children }: FrameProps) {
  return (
    <div className={styles.field} data-error={error ? '' : undefined}>
      <label className={styles.label} htmlFor={id}>
        {label}
        {optional ? <span className={styles.optional}> if you like</span> : null}
      </label>
      {hint ? (
        <span className={styles.hint} id={`${id}-hint`}>
          {hint}
        </span>
      ) : null}
      {children}
      <FieldError id={id} error={error} />
    </div>
  );
}

export function FieldError({ id, error }: { readonly id: string; readonly error: string | undefined }) {
  if (!error) return null;
  return (
    <span className={styles.error} id={`${id}-error`}>
      <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true" focusable="false">
        <path d="M1 15V1l14 14Z" fill="currentColor" />
      </svg>
      {error}
    </span>
  );
}

/** The attributes that tie a control to its frame. */
export function wiring(id: string, hint: ReactNode, error: string | undefined) {
  const described = [error ? `${id}-error` : '', hint ? `${id}-hint` : ''].filter(Boolean).join(' ');
  return {
    id,
    'aria-describedby': described || undefined,
    'aria-invalid': error ? (true as const) : undefined,
  };
}
