/** The dimensioned view: elevation with the thread to scale, end view, dimension lines, scale bar, caution. */
import { inches, type LengthUnit, lengthText } from '../format';
import { DimensionAcross, DimensionAlong } from './dimension';
import styles from './tube.module.css';
import { type Line, silhouette, stations, type TubeEndShape, threadLines } from './tube-geometry';

const MARGIN = { left: 76, right: 10, top: 44, bottom: 64 };
const NOSE_GAP = 112;
/** About the width of a letter of a label. */
const LETTER_PX = 7.5;

interface Props {
  readonly shape: TubeEndShape;
  readonly boreIn: number | undefined;
  readonly pxPerIn: number;
  readonly unit: LengthUnit;
  readonly title: string | undefined;
  /** Whether the shop has checked the figures against the fitting maker's manual. */
  readonly confirmed: boolean;
}

export function TubeDrawing({ shape, boreIn, pxPerIn, unit, title, confirmed }: Props) {
  const at = stations(shape);
  const od = shape.odIn * pxPerIn;
  const rise = Math.max(od, 44);
  const px = (x: number) => MARGIN.left + x * pxPerIn;
  const axis = MARGIN.top + rise / 2;
  const py = (y: number) => axis + y * pxPerIn;
  const cx = px(at.nose) + NOSE_GAP + od / 2;
  const width = cx + od / 2 + MARGIN.right;
  const height = MARGIN.top + rise + MARGIN.bottom;
  const text = (value: number) => lengthText(value * 25.4, unit);
  const nose = shape.noseIn / 2;
  const thread = `${inches(shape.odIn)}-${shape.tpi} ${shape.hand}`;
  // The cone's label stands under the cone, or after the thread's label where the tube is too short for both.
  const coneLabelX = Math.max(px(at.nose) - 4, px(at.threadStart) + (thread.length + 2) * LETTER_PX);
  const draw = (line: Line) => ({ x1: px(line.x1), y1: py(line.y1), x2: px(line.x2), y2: py(line.y2) });
  return (
    <figure className={styles.figure}>
      {/* biome-ignore lint/a11y/noSvgWithoutTitle: without a title it is aria-hidden */}
      <svg
        className={styles.drawing}
        width={width}
        height={height}
        viewBox={`0 0 ${width} ${height}`}
        role={title ? 'img' : undefined}
        aria-hidden={title ? undefined : true}
      >
        {title ? <title>{title}</title> : null}
        <Elevation shape={shape} px={px} py={py} />
        {threadLines(shape, 0.5).map((line) => (
          <line key={`r${line.x1}`} className={styles.root} {...draw(line)} />
        ))}
        {threadLines(shape, 0).map((line) => (
          <line key={`c${line.x1}`} className={styles.crest} {...draw(line)} />
        ))}
        {boreIn ? (
          <path
            className={styles.hidden}
            d={`M${px(0)} ${py(-boreIn / 2)}H${px(at.nose)}M${px(0)} ${py(boreIn / 2)}H${px(at.nose)}`}
          />
        ) : null}
        <path className={styles.centre} d={`M${px(0) - 12} ${axis}H${px(at.nose) + 14}`} />
        <circle className={styles.metalRound} cx={cx} cy={axis} r={od / 2} />
        <circle className={styles.nose} cx={cx} cy={axis} r={nose * pxPerIn} />
        {boreIn ? <circle className={styles.bore} cx={cx} cy={axis} r={(boreIn / 2) * pxPerIn} /> : null}
        <path
          className={styles.centre}
          d={`M${cx - od / 2 - 8} ${axis}h${od + 16}M${cx} ${axis - od / 2 - 8}v${od + 16}`}
        />
        <DimensionAcross
          x={px(0) - 22}
          from={py(-shape.odIn / 2)}
          to={py(shape.odIn / 2)}
          reach={px(0)}
          text={`⌀ ${text(shape.odIn)}`}
        />
        <DimensionAcross
          x={px(at.nose) + 24}
          from={py(-nose)}
          to={py(nose)}
          reach={px(at.nose)}
          text={`⌀ ${text(shape.noseIn)}`}
        />
        <DimensionAlong
          y={axis - od / 2 - 20}
          from={px(at.threadStart)}
          to={px(at.threadEnd)}
          reach={axis - od / 2}
          text={text(shape.threadLengthIn)}
        />
        <text className={styles.label} x={px(at.threadStart)} y={axis + od / 2 + 22}>
          {thread}
        </text>
        <text className={styles.labelQuiet} x={coneLabelX} y={axis + od / 2 + 22}>
          {`${shape.coneAngleDeg}° cone`}
        </text>
        <ScaleBar x={px(0)} y={height - 16} pxPerIn={pxPerIn} unit={unit} />
      </svg>
      <figcaption className={styles.caption}>
        {confirmed
          ? 'Drawn to scale from the shop’s size table. The fitting maker’s manual rules.'
          : 'Drawn to scale from example dimensions. Confirm in the fitting maker’s manual.'}
      </figcaption>
    </figure>
  );
}

interface Plot {
  readonly shape: TubeEndShape;
  readonly px: (x: number) => number;
  readonly py: (y: number) => number;
}

function Elevation({ shape, px, py }: Plot) {
  const at = stations(shape);
  const r = shape.odIn / 2;
  const nose = shape.noseIn / 2;
  const path = (points: { x: number; y: number }[]) => points.map((p) => `L${px(p.x)} ${py(p.y)}`).join('');
  const left = px(0);
  const swing = Math.min(9, (r * (px(1) - left)) / 3);
  const breakLine = `C${left - swing} ${py(r * 0.6)} ${left - swing} ${py(r * 0.25)} ${left} ${py(0)}C${left + swing} ${py(-r * 0.25)} ${left + swing} ${py(-r * 0.6)} ${left} ${py(-r)}`;
  const outline = `M${left} ${py(-r)}H${px(at.threadStart)}${path(silhouette(shape, -1))}L${px(at.threadEnd)} ${py(-r)}L${px(at.nose)} ${py(-nose)}V${py(nose)}L${px(at.threadEnd)} ${py(r)}${path(silhouette(shape, 1).reverse())}L${px(at.threadStart)} ${py(r)}H${left}`;
  return (
    <>
      <path className={styles.metal} d={`${outline}${breakLine}Z`} />
      <path className={styles.fine} d={`M${px(at.threadEnd)} ${py(-r)}V${py(r)}`} />
      <path className={styles.outline} d={outline} />
      <path className={styles.fine} d={`M${left} ${py(r)}${breakLine}`} />
    </>
  );
}

function ScaleBar({ x, y, pxPerIn, unit }: { x: number; y: number; pxPerIn: number; unit: LengthUnit }) {
  const length = unit === 'in' ? pxPerIn / 2 : (pxPerIn * 10) / 25.4;
  return (
    <g>
      <path
        className={styles.scaleBar}
        d={`M${x} ${y - 4}v8m0-4h${length}m0-4v8M${x + length / 2} ${y - 2}v4`}
      />
      <text className={styles.labelQuiet} x={x + length + 10} y={y + 4}>
        {unit === 'in' ? `${inches(0.5)} in` : '10 mm'}
      </text>
    </g>
  );
}
