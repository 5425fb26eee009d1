/** Dimension lines after drafting convention: extension lines, slim arrowheads, the figure beside the line. */
import styles from './tube.module.css';

const HEAD = 7;

function arrow(x: number, y: number, dx: number, dy: number): string {
  const [wx, wy] = [-dy * 0.28, dx * 0.28];
  return `M${x} ${y}l${(-dx + wx) * HEAD} ${(-dy + wy) * HEAD}l${-2 * wx * HEAD} ${-2 * wy * HEAD}Z`;
}

interface Dimension {
  readonly from: number;
  readonly to: number;
  /** Where the extension lines start: the edge of the part. */
  readonly reach: number;
  readonly text: string;
}

/** A vertical dimension at `x`. Arrows point inward from outside when the gap is too small for them. */
export function DimensionAcross({ x, from, to, reach, text }: Dimension & { readonly x: number }) {
  const side = Math.sign(x - reach);
  const tight = to - from < 4 * HEAD;
  const ext = (y: number) => `M${reach + side * 3} ${y}H${x + side * 5}`;
  const line = tight ? `M${x} ${from}v-16M${x} ${to}v16` : `M${x} ${from}V${to}`;
  return (
    <g>
      <path className={styles.dimension} d={`${ext(from)}${ext(to)}${line}`} />
      <path
        className={styles.arrow}
        d={tight ? arrow(x, from, 0, 1) + arrow(x, to, 0, -1) : arrow(x, from, 0, -1) + arrow(x, to, 0, 1)}
      />
      <text
        className={styles.label}
        x={x + side * 8}
        y={(from + to) / 2 + 4.5}
        textAnchor={side < 0 ? 'end' : 'start'}
      >
        {text}
      </text>
    </g>
  );
}

/** A horizontal dimension at `y`, figure above the line. */
export function DimensionAlong({ y, from, to, reach, text }: Dimension & { readonly y: number }) {
  const ext = (x: number) => `M${x} ${reach - 3}V${y - 5}`;
  return (
    <g>
      <path className={styles.dimension} d={`${ext(from)}${ext(to)}M${from} ${y}H${to}`} />
      <path className={styles.arrow} d={arrow(from, y, -1, 0) + arrow(to, y, 1, 0)} />
      <text className={styles.label} x={(from + to) / 2} y={y - 7} textAnchor="middle">
        {text}
      </text>
    </g>
  );
}
