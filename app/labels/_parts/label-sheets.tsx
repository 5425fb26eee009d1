/** <LabelSheets stock codeKind firstPlace labels />: the pages as they are printed, one drawing each, every length in true millimetres. */
import { codeSymbol } from '@/app/_shared/codes/code-symbol';
import type { CodeKind } from '@/lib/labels/code-kind';
import { modulePath } from '@/lib/labels/code-modules';
import { layOutLabel } from '@/lib/labels/label-layout';
import { type LabelPlace, type LabelStock, labelPlaces } from '@/lib/labels/label-stock';
import { fittingFontMm } from '@/lib/labels/text-width';

/** What one label says. */
export interface Label {
  readonly id: string;
  readonly lines: readonly string[];
}

interface SheetsProps {
  readonly stock: LabelStock;
  readonly codeKind: CodeKind;
  readonly firstPlace: number;
  readonly labels: readonly Label[];
}

export function LabelSheets({ stock, codeKind, firstPlace, labels }: SheetsProps) {
  const places = labelPlaces(stock, { count: labels.length, firstPlace });
  const pages = (places.at(-1)?.page ?? 0) + 1;
  const { pageWidthMm, pageHeightMm } = stock;
  return Array.from({ length: pages }, (_, page) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: pages have nothing but their number
    <div key={page} className="label-page" data-stock={stock.id}>
      <svg
        width={`${pageWidthMm}mm`}
        height={`${pageHeightMm}mm`}
        viewBox={`0 0 ${pageWidthMm} ${pageHeightMm}`}
        role="img"
      >
        <title>{pageTitle(labels, places, page)}</title>
        <rect className="label-paper" width={pageWidthMm} height={pageHeightMm} />
        {labels.map((label, at) => {
          const place = places[at];
          return place?.page === page ? (
            <OneLabel key={label.id} label={label} place={place} stock={stock} codeKind={codeKind} />
          ) : null;
        })}
      </svg>
    </div>
  ));
}

function OneLabel({
  label,
  place,
  stock,
  codeKind,
}: {
  readonly label: Label;
  readonly place: LabelPlace;
  readonly stock: LabelStock;
  readonly codeKind: CodeKind;
}) {
  const symbol = codeSymbol(codeKind, label.id);
  const { labelWidthMm: widthMm, labelHeightMm: heightMm } = stock;
  const { code, id, lines } = layOutLabel({
    ...{ widthMm, heightMm, codeKind, idLength: label.id.length },
    ...{ codeAcross: symbol.across, codeUpright: symbol.upright },
  });
  const textWidthMm = widthMm - id.xMm - 0.9;
  return (
    <g transform={`translate(${place.xMm} ${place.yMm})`}>
      <rect className="label-edge" width={widthMm} height={heightMm} />
      <path
        className="label-ink"
        shapeRendering="crispEdges"
        d={modulePath(symbol)}
        transform={`translate(${code.xMm} ${code.yMm}) scale(${code.widthMm / symbol.across} ${code.heightMm / symbol.upright})`}
      />
      <text className="label-ink label-id" x={id.xMm} y={id.baselineMm} fontSize={id.fontMm}>
        {label.id}
      </text>
      {lines.baselinesMm.map((baselineMm, at) => {
        const line = label.lines[at];
        const room = { widthMm: textWidthMm, mostMm: lines.fontMm };
        const fontMm = line === undefined ? undefined : fittingFontMm(line, room);
        return fontMm === undefined ? null : (
          <text key={line} className="label-ink" x={id.xMm} y={baselineMm} fontSize={fontMm}>
            {line}
          </text>
        );
      })}
    </g>
  );
}

function pageTitle(labels: readonly Label[], places: readonly LabelPlace[], page: number): string {
  const on = labels.filter((_, at) => places[at]?.page === page).map(({ id }) => id);
  return `Page ${page + 1} of labels: ${on.join(', ')}`;
}
