/**
 * <ConeDrawing shape={…} seated={…} unit="in" />: one side of a cone in its seat, the cone to scale, the gap between the two drawn
 * twenty times too wide so that it can be seen at all. Says so in the drawing.
 */

import type { ConeShape } from '@/lib/cone/geometry';
import { coneHeightMm } from '@/lib/cone/geometry';
import type { SeatedCone } from '@/lib/cone/seating';
import { degreesText, type LengthUnit, lengthText, measureText } from '../format';
import styles from './cone.module.css';

const GAP_TIMES = 20;
const WIDTH = 340;
/** The drawing is no higher than this between its margins. */
const RISE_MOST = 210;
const MARGIN = { left: 18, right: 104, top: 34, bottom: 46 };

interface Props {
  readonly shape: ConeShape;
  readonly seated: SeatedCone;
  readonly seatAngleDeg: number;
  readonly unit: LengthUnit;
  readonly title: string;
}

export function ConeDrawing({ shape, seated, seatAngleDeg, unit, title }: Props) {
  const lengthMm = coneHeightMm(shape);
  const tubeMm = shape.odMm * 0.3;
  const gapRoomMm = GAP_TIMES * Math.max(seated.gapAtLargeEndMm, seated.gapAtSmallEndMm);
  const scale = Math.min(
    (WIDTH - MARGIN.left - MARGIN.right) / (lengthMm + tubeMm),
    RISE_MOST / (shape.odMm / 2 + gapRoomMm),
  );
  const height = MARGIN.top + (shape.odMm / 2 + gapRoomMm) * scale + MARGIN.bottom;
  const axis = height - MARGIN.bottom;
  const px = (mm: number) => MARGIN.left + mm * scale;
  const py = (mm: number) => axis - mm * scale;
  const [large, small] = [tubeMm, tubeMm + lengthMm];
  const [r, n] = [shape.odMm / 2, shape.noseMm / 2];
  const seatAt = {
    large: r + GAP_TIMES * seated.gapAtLargeEndMm,
    small: n + GAP_TIMES * seated.gapAtSmallEndMm,
  };
  const atLarge = seated.contact === 'large-end';
  const touch = atLarge ? { x: px(large), y: py(r) } : { x: px(small), y: py(n) };
  return (
    <svg className={styles.cone} viewBox={`0 0 ${WIDTH} ${height}`} width={WIDTH} height={height} role="img">
      <title>{title}</title>
      <path
        className={styles.metal}
        d={`M${px(0)} ${axis}V${py(r)}H${px(large)}L${px(small)} ${py(n)}V${axis}Z`}
      />
      <path className={styles.outline} d={`M${px(0)} ${py(r)}H${px(large)}L${px(small)} ${py(n)}V${axis}`} />
      <path
        className={styles.seat}
        d={`M${px(large)} ${py(seatAt.large)}L${px(small)} ${py(seatAt.small)}`}
      />
      <path className={styles.centre} d={`M${px(0) - 10} ${axis}H${px(small) + 22}`} />
      <circle className={styles.touch} cx={touch.x} cy={touch.y} r={5} />
      <text
        className={styles.quiet}
        x={atLarge ? touch.x : touch.x + 10}
        y={atLarge ? touch.y - 14 : touch.y - 6}
        textAnchor={atLarge ? 'middle' : 'start'}
      >
        touches here
      </text>
      <text className={styles.label} x={px(small) + 9} y={(py(n) + axis) / 2 + 5}>
        {`⌀ ${lengthText(shape.noseMm, unit)}`}
      </text>
      <text className={styles.label} x={px(0) + 4} y={py(0) - 8}>
        {`${degreesText(shape.coneAngleDeg)} in ${degreesText(seatAngleDeg)}`}
      </text>
      <text className={styles.label} x={(px(large) + px(small)) / 2} y={axis + 20} textAnchor="middle">
        {`cone ${measureText(lengthMm, unit)}`}
      </text>
      <text className={styles.quiet} x={px(0)} y={height - 6}>
        {`cone to scale, gap drawn ×${GAP_TIMES}`}
      </text>
    </svg>
  );
}
