/**
 * <ZoneDrawing limits={…} threadClass="2A" />: where the tolerance zones lie below the basic sizes, drawn to scale in thousandths of an
 * inch. A gap between the basic line and a zone is the allowance: the clearance that class leaves for the collar.
 */
import type { ExternalLimits } from '@/lib/thread/limits';
import { tableInches } from '../format';
import styles from './thread.module.css';

const WIDTH = 340;
const LEFT = 14;
const RIGHT = 14;
const BAR = 30;
const ROW = 84;
const TOP = 40;

interface Zone {
  readonly name: string;
  readonly basic: number;
  readonly max: number;
  readonly min: number;
}

export function ZoneDrawing({ limits, title }: { readonly limits: ExternalLimits; readonly title: string }) {
  const zones: Zone[] = [
    { name: 'Major diameter', basic: limits.basicMajorIn, max: limits.majorMaxIn, min: limits.majorMinIn },
    { name: 'Pitch diameter', basic: limits.basicPitchIn, max: limits.pitchMaxIn, min: limits.pitchMinIn },
  ];
  const deepest = Math.max(...zones.map(({ basic, min }) => basic - min));
  const height = TOP + zones.length * ROW + 22;
  // Smaller lies to the left: the basic size is the right-hand end.
  const x = (below: number) => WIDTH - RIGHT - (below / deepest) * (WIDTH - LEFT - RIGHT);
  return (
    <svg className={styles.zones} viewBox={`0 0 ${WIDTH} ${height}`} width={WIDTH} height={height} role="img">
      <title>{title}</title>
      <text className={styles.quiet} x={x(0)} y={16} textAnchor="end">
        basic size
      </text>
      <path className={styles.basic} d={`M${x(0)} 22V${height - 22}`} />
      {zones.map((zone, at) => (
        <ZoneBar key={zone.name} zone={zone} y={TOP + at * ROW} x={x} />
      ))}
      <ScaleBar x={x} y={height - 8} deepest={deepest} />
    </svg>
  );
}

function ZoneBar({
  zone,
  y,
  x,
}: {
  readonly zone: Zone;
  readonly y: number;
  readonly x: (below: number) => number;
}) {
  const [from, to] = [x(zone.basic - zone.min), x(zone.basic - zone.max)];
  const top = y + 16;
  return (
    <g>
      <text className={styles.label} x={LEFT} y={y + 8}>
        {zone.name}
      </text>
      <rect className={styles.zone} x={from} y={top} width={to - from} height={BAR} />
      {zone.max < zone.basic ? (
        <path className={styles.allowance} d={`M${to} ${top + BAR / 2}H${x(0)}`} />
      ) : null}
      <text className={styles.figure} x={from} y={top + BAR + 17}>
        {tableInches(zone.min)}
      </text>
      <text className={styles.figure} x={to} y={top + BAR + 17} textAnchor="end">
        {tableInches(zone.max)}
      </text>
    </g>
  );
}

/** A thousandth of an inch, or five where one would be too short to see. */
function ScaleBar({ x, y, deepest }: { x: (below: number) => number; y: number; deepest: number }) {
  const length = deepest > 0.012 ? 0.005 : 0.001;
  const width = x(0) - x(length);
  return (
    <g>
      <path className={styles.scale} d={`M${LEFT} ${y - 9}v8m0-4h${width}m0-4v8`} />
      <text className={styles.quiet} x={LEFT + width + 8} y={y}>
        {`${length.toFixed(3)} in, to scale`}
      </text>
    </g>
  );
}
