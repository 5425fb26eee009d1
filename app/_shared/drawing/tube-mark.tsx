/** The small view of a tube end: elevation, then the end view, on one axis. */
import styles from './tube.module.css';
import { markLines, stations, type TubeEndShape } from './tube-geometry';

const PAD_PX = 2;
const GAP_IN = 0.14;
/** One rule for all sizes of a scale, set by the finest thread, so that coarse stays coarser than fine. */
const FINEST_TPI = 28;
const MIN_CREST_PX = 2.6;
/** Box that every size up to 1 in fits into, noses in line. */
const FRAME = { elevationIn: 1.42, heightIn: 1.02 };

interface Props {
  readonly shape: TubeEndShape;
  readonly pxPerIn: number;
  readonly framed: boolean;
  readonly title: string | undefined;
}

export function TubeMark({ shape, pxPerIn, framed, title }: Props) {
  const { threadStart, threadEnd, nose } = stations(shape);
  const boxHeightIn = framed ? Math.max(FRAME.heightIn, shape.odIn) : shape.odIn;
  const elevationIn = framed ? Math.max(FRAME.elevationIn, nose) : nose;
  const endViewIn = framed ? boxHeightIn : shape.odIn;
  const width = (elevationIn + GAP_IN + endViewIn) * pxPerIn + 2 * PAD_PX;
  const height = boxHeightIn * pxPerIn + 2 * PAD_PX;
  const px = (x: number) => PAD_PX + (elevationIn - nose + x) * pxPerIn;
  const axis = height / 2;
  const py = (y: number) => axis + y * pxPerIn;
  const r = shape.odIn / 2;
  const lean = Math.min(shape.odIn * 0.26, 4 / pxPerIn + 0.05);
  const lines = markLines(shape, Math.max(1, Math.ceil((MIN_CREST_PX * FINEST_TPI) / pxPerIn)), lean);
  const cx = PAD_PX + (elevationIn + GAP_IN + endViewIn / 2) * pxPerIn;
  const outline = `M${px(0)} ${py(-r)}H${px(threadEnd)}L${px(nose)} ${py(-shape.noseIn / 2)}V${py(shape.noseIn / 2)}L${px(threadEnd)} ${py(r)}H${px(0)}`;
  return (
    // biome-ignore lint/a11y/noSvgWithoutTitle: without a title it is aria-hidden
    <svg
      className={styles.mark}
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      role={title ? 'img' : undefined}
      aria-hidden={title ? undefined : true}
      focusable="false"
    >
      {title ? <title>{title}</title> : null}
      <path className={styles.metal} d={`${outline}Z`} />
      <rect
        className={styles.threaded}
        x={px(threadStart)}
        y={py(-r)}
        width={px(threadEnd) - px(threadStart)}
        height={shape.odIn * pxPerIn}
      />
      {lines.map((line) => (
        <line
          key={line.x1}
          className={styles.crest}
          x1={px(line.x1)}
          y1={py(line.y1)}
          x2={px(line.x2)}
          y2={py(line.y2)}
        />
      ))}
      <path className={styles.fine} d={`M${px(threadEnd)} ${py(-r)}V${py(r)}`} />
      <path className={styles.outline} d={outline} />
      <circle className={styles.metalRound} cx={cx} cy={axis} r={r * pxPerIn} />
      <circle className={styles.nose} cx={cx} cy={axis} r={(shape.noseIn / 2) * pxPerIn} />
    </svg>
  );
}
