'use client';
/**
 * <ChartFrame title summary up="Share still cutting" along="threads" keys={[{ mark: 'band', words }]} figures={<Table … />}>
 *   <ComposedChart accessibilityLayer={false}>…</ComposedChart>
 * </ChartFrame>
 * What every chart has around its plot: what it says in words, its axes named, its key, and its figures behind a fold. The plot
 * itself is hidden from who cannot see it. AXIS, GRID and BAND are the pens that all of them draw with.
 */
import type { ReactElement, ReactNode } from 'react';
import { ResponsiveContainer } from 'recharts';
import styles from './chart.module.css';

export const AXIS = { stroke: 'var(--ink-3)', fontSize: 13, tickLine: false } as const;
export const GRID = { stroke: 'var(--line)', strokeWidth: 0.75 } as const;
/** How well something is known: four times in five within. */
export const BAND = {
  stroke: 'var(--line-strong)',
  strokeWidth: 0.75,
  fill: 'var(--steel-pale)',
  fillOpacity: 1,
  isAnimationActive: false,
} as const;
export const DASHED = { strokeDasharray: '7 4' } as const;

interface ChartKey {
  readonly mark: 'solid' | 'dashed' | 'band' | 'mark';
  readonly words: ReactNode;
}

interface ChartFrameProps {
  readonly title: string;
  readonly summary: string;
  /** What the upright axis counts, above the plot. */
  readonly up?: string;
  /** What the lower axis counts, below it. */
  readonly along?: string;
  readonly keys: readonly ChartKey[];
  readonly figures?: ReactNode;
  readonly shape?: 'wide' | 'square' | { readonly heightPx: number };
  /** The chart, and nothing beside it. */
  readonly children: ReactElement;
}

const KEY_CLASS = {
  solid: styles.keySolid,
  dashed: styles.keyDashed,
  band: styles.keyBand,
  mark: styles.keyMark,
};

export function ChartFrame(props: ChartFrameProps) {
  const { title, summary, up, along, keys, figures, shape = 'wide', children } = props;
  const isSquare = shape === 'square';
  const plot =
    typeof shape === 'object'
      ? { style: { height: shape.heightPx } }
      : { className: isSquare ? `${styles.plot} ${styles.square}` : styles.plot };
  return (
    <figure className={isSquare ? `${styles.chart} ${styles.narrow}` : styles.chart}>
      <figcaption>
        <strong>{title}</strong>
        <span className={styles.summary}>{summary}</span>
      </figcaption>
      {up === undefined ? null : <p className={styles.axis}>{up}</p>}
      <div {...plot} aria-hidden="true">
        <ResponsiveContainer width="100%" height="100%">
          {children}
        </ResponsiveContainer>
      </div>
      {along === undefined ? null : <p className={styles.axisAlong}>{along}</p>}
      <p className={styles.key}>
        {keys.map(({ mark, words }) => (
          <span key={mark}>
            <span className={KEY_CLASS[mark]} aria-hidden="true" /> {words}
          </span>
        ))}
      </p>
      {figures === undefined ? null : (
        <details className={`${styles.figures} no-print`}>
          <summary>Figures</summary>
          {figures}
        </details>
      )}
    </figure>
  );
}
