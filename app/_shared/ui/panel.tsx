/**
 * <Panel title="Gauges" aside={…}>…</Panel>   a sheet with a heading (h2; level={3} inside another panel)
 * <KeyValue items={[{ label, value }]} />     facts in two columns
 * <Figure value="about 37" unit="ends" note="safe" />   one big figure in words
 * <EmptyState title action>what to do next</EmptyState>
 * <Breadcrumb trail={[{ href, label }]} here="D-38-11" />
 * <ProgressBar label value max note? />       max omitted: at work, length unknown
 */
import type { Route } from 'next';
import Link from 'next/link';
import { type ReactNode, useId } from 'react';
import styles from './panel.module.css';

interface PanelProps {
  readonly title?: ReactNode;
  readonly level?: 2 | 3;
  readonly aside?: ReactNode;
  readonly id?: string;
  readonly children: ReactNode;
}

export function Panel({ title, level = 2, aside, id, children }: PanelProps) {
  const Heading = `h${level}` as const;
  const headingId = useId();
  return (
    <section className={styles.panel} id={id} aria-labelledby={title ? headingId : undefined}>
      {title ? (
        <div className={styles.head}>
          <Heading id={headingId}>{title}</Heading>
          {aside ? <div className={styles.aside}>{aside}</div> : null}
        </div>
      ) : null}
      {children}
    </section>
  );
}

export function KeyValue({ items }: { readonly items: readonly { label: string; value: ReactNode }[] }) {
  return (
    <dl className={styles.facts}>
      {items.map((item) => (
        <div key={item.label}>
          <dt>{item.label}</dt>
          <dd>{item.value}</dd>
        </div>
      ))}
    </dl>
  );
}

interface FigureProps {
  readonly value: ReactNode;
  readonly unit?: string;
  readonly note?: ReactNode;
}

export function Figure({ value, unit, note }: FigureProps) {
  return (
    <p className={styles.figure}>
      <span className={styles.figureValue}>{value}</span>
      {unit ? <span className={styles.figureUnit}> {unit}</span> : null}
      {note ? <span className={styles.figureNote}>{note}</span> : null}
    </p>
  );
}

interface EmptyStateProps {
  readonly title: string;
  readonly action?: ReactNode;
  readonly children: ReactNode;
}

export function EmptyState({ title, action, children }: EmptyStateProps) {
  return (
    <div className={styles.empty}>
      <p className={styles.emptyTitle}>{title}</p>
      <p>{children}</p>
      {action ? <div className="cluster no-print">{action}</div> : null}
    </div>
  );
}

interface BreadcrumbProps {
  readonly trail: readonly { href: string; label: string }[];
  readonly here: ReactNode;
}

export function Breadcrumb({ trail, here }: BreadcrumbProps) {
  return (
    <nav aria-label="Where you are" className={styles.crumbs}>
      <ol>
        {trail.map((step) => (
          <li key={step.href}>
            <Link href={step.href as Route}>{step.label}</Link>
          </li>
        ))}
        <li aria-current="page">{here}</li>
      </ol>
    </nav>
  );
}

interface ProgressBarProps {
  readonly label: string;
  readonly value?: number;
  readonly max?: number;
  readonly note?: ReactNode;
}

export function ProgressBar({ label, value, max, note }: ProgressBarProps) {
  const id = useId();
  return (
    <div className={styles.progress}>
      <label htmlFor={id}>{label}</label>
      <progress id={id} value={value} max={max} />
      {note ? <span className="fine num">{note}</span> : null}
    </div>
  );
}
