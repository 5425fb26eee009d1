import type { DueKind } from '@/lib/due-dates/due-date';
import styles from './calendar.module.css';

/** A shape to each kind, so that a day can be taken in at a glance; the words beside it say what it is. */
const SHAPE: Record<DueKind, string> = {
  'job-start': 'M2 2 L10 6 L2 10 Z',
  'job-due': 'M2 2 H10 V10 H2 Z',
  replacement: 'M6 1 L11 6 L6 11 L1 6 Z',
  calibration: 'M6 1 A5 5 0 1 0 6.01 1 Z M6 3.4 A2.6 2.6 0 1 1 5.99 3.4 Z',
  'fluid-expiry': 'M6 1 C8.5 4.5 9.5 6 9.5 7.7 A3.5 3.5 0 0 1 2.5 7.7 C2.5 6 3.5 4.5 6 1 Z',
  'order-by': 'M6 1 L11 10 H1 Z',
  'order-arrival': 'M6 11 L1 5 H4 V1 H8 V5 H11 Z',
};

export function DueMark({ kind }: { readonly kind: DueKind }) {
  return (
    <svg className={styles.mark} viewBox="0 0 12 12" aria-hidden="true" focusable="false">
      <path d={SHAPE[kind]} fillRule="evenodd" />
    </svg>
  );
}
