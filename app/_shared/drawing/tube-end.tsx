/**
 * <TubeEnd>: the mark of the house. Each size is its own tube end drawn to scale, so that a 3⁄8 is recognised before it
 * is read. Give every mark on a page the same `pxPerIn`; a 1 in tube is then four times as tall as a 1⁄4.
 *
 *   view="mark"     elevation and end view, no words. `framed` puts every size into the same box, noses in line.
 *                   The lean of the crests is exaggerated so that the hand can be read; small scales show every n-th.
 *   view="drawing"  thread profile, pitch and lean to scale, with dimension lines, a scale bar and the caution.
 *   decorative      when the size stands in words beside it: hidden from screen readers.
 */
import type { Hand, Service } from '@/lib/shop/vocabulary';
import { HAND_LABEL } from '@/lib/shop/vocabulary';
import { fractionSpoken, inchParts, type LengthUnit, sizeName } from '../format';
import { TubeDrawing } from './tube-drawing';
import type { TubeEndShape } from './tube-geometry';
import { TubeMark } from './tube-mark';

export interface TubeEndProps {
  readonly odIn: number;
  /** Small end of the cone. */
  readonly noseIn: number;
  /** Bore, where the shop knows it. */
  readonly boreIn?: number;
  readonly threadLengthIn: number;
  readonly tpi: number;
  readonly hand: Hand;
  readonly service: Service;
  readonly coneAngleDeg?: number;
  readonly pxPerIn?: number;
  readonly view?: 'mark' | 'drawing';
  readonly unit?: LengthUnit;
  readonly framed?: boolean;
  readonly decorative?: boolean;
  /** Whether the figures were checked against the fitting maker's manual; the drawing says so. */
  readonly confirmed?: boolean;
}

export function TubeEnd(props: TubeEndProps) {
  const { view = 'mark', coneAngleDeg = 59, decorative = false } = props;
  const shape: TubeEndShape = { ...props, coneAngleDeg, bodyIn: view === 'mark' ? 0.22 : 0.34 };
  const title = decorative ? undefined : tubeTitle(props);
  if (view === 'mark') {
    return (
      <TubeMark shape={shape} pxPerIn={props.pxPerIn ?? 44} framed={props.framed ?? false} title={title} />
    );
  }
  return (
    <TubeDrawing
      shape={shape}
      boreIn={props.boreIn}
      pxPerIn={props.pxPerIn ?? 112}
      unit={props.unit ?? 'in'}
      title={title}
      confirmed={props.confirmed ?? false}
    />
  );
}

function tubeTitle({ odIn, service, tpi, hand }: TubeEndProps): string {
  const parts = inchParts(odIn);
  const size =
    parts && parts.num > 0 && parts.whole === 0 ? fractionSpoken(parts.num, parts.den) : sizeName(odIn);
  return `Tube end drawn to scale: ${size} inch, ${service} pressure, ${HAND_LABEL[hand]} thread, ${tpi} threads per inch`;
}
