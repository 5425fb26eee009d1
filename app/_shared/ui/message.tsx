/**
 * <FormMessage tone="refusal">One sentence: what is wrong and where.</FormMessage>   role=alert
 * <FormMessage tone="done">24 ends logged on D-38-11.</FormMessage>                  role=status
 * Renders nothing without children, so it can stand in the form for good. A refusal is ink with a bar, not red: red is
 * kept for the one alarm of the screen.
 */
import type { ReactNode } from 'react';
import styles from './message.module.css';

export function FormMessage({
  tone,
  children,
}: {
  readonly tone: 'refusal' | 'done';
  readonly children?: ReactNode;
}) {
  if (!children) return null;
  return (
    <div className={styles.message} data-tone={tone} role={tone === 'refusal' ? 'alert' : 'status'}>
      <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true" focusable="false">
        {tone === 'refusal' ? (
          <path d="M2 2h16v16H2Zm3 6.2v3.6h10V8.2Z" fill="currentColor" fillRule="evenodd" />
        ) : (
          <path d="M2.5 10.5l5 5 10-11" fill="none" stroke="currentColor" strokeWidth="2.5" />
        )}
      </svg>
      <div>{children}</div>
    </div>
  );
}
