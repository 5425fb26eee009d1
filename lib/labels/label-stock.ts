import { invariant } from '../invariant';

/** A sheet of labels, or a single label that is a page of its own. Lengths in mm. */
export interface LabelStock {
  readonly id: string;
  readonly name: string;
  readonly pageWidthMm: number;
  readonly pageHeightMm: number;
  readonly columns: number;
  readonly rows: number;
  readonly labelWidthMm: number;
  readonly labelHeightMm: number;
  readonly leftMm: number;
  readonly topMm: number;
  readonly gapAcrossMm: number;
  readonly gapUprightMm: number;
}

const A4 = { pageWidthMm: 210, pageHeightMm: 297 };
const LETTER = { pageWidthMm: 215.9, pageHeightMm: 279.4 };

function single(id: string, name: string, labelWidthMm: number, labelHeightMm: number): LabelStock {
  const page = { pageWidthMm: labelWidthMm, pageHeightMm: labelHeightMm };
  const none = { leftMm: 0, topMm: 0, gapAcrossMm: 0, gapUprightMm: 0 };
  return { id, name, ...page, columns: 1, rows: 1, labelWidthMm, labelHeightMm, ...none };
}

/**
 * Sheets and single labels that can be printed on. Page sizes: ISO 216 and the US letter; how sheets are divided: common practice, no
 * source.
 */
export const LABEL_STOCKS: readonly LabelStock[] = [
  single('tag-25x10', 'Die tag, 25 × 10 mm', 25, 10),
  single('tag-40x20', 'Tag, 40 × 20 mm', 40, 20),
  single('tag-50x30', 'Bin or bottle label, 50 × 30 mm', 50, 30),
  {
    ...{ id: 'a4-3x8', name: 'A4 sheet, 3 × 8, 70 × 37 mm', ...A4, columns: 3, rows: 8 },
    ...{ labelWidthMm: 70, labelHeightMm: 37, leftMm: 0, topMm: 0.5, gapAcrossMm: 0, gapUprightMm: 0 },
  },
  {
    ...{ id: 'a4-5x13', name: 'A4 sheet, 5 × 13, 38 × 21 mm', ...A4, columns: 5, rows: 13 },
    ...{ labelWidthMm: 38, labelHeightMm: 21, leftMm: 5, topMm: 12, gapAcrossMm: 2.5, gapUprightMm: 0 },
  },
  {
    ...{ id: 'letter-3x10', name: 'Letter sheet, 3 × 10, 2⅝ × 1 in', ...LETTER, columns: 3, rows: 10 },
    ...{ labelWidthMm: 66.675, labelHeightMm: 25.4, leftMm: 4.7625, topMm: 12.7 },
    ...{ gapAcrossMm: 3.175, gapUprightMm: 0 },
  },
];

/** The stock of that name, or undefined. */
export function findStock(id: string): LabelStock | undefined {
  return LABEL_STOCKS.find((stock) => stock.id === id);
}

/** How many labels one page holds. */
export function labelsPerPage({ columns, rows }: LabelStock): number {
  return columns * rows;
}

/** Where one label stands: its page, counted from 0, and its top left corner on it. */
export interface LabelPlace {
  readonly page: number;
  readonly xMm: number;
  readonly yMm: number;
}

/**
 * Places of so many labels, row by row; a sheet begun before starts at its first free place (1: a fresh sheet). Domain: whole
 * numbers, first free place 1 to the labels of a page. Source: formula.
 * @example labelPlaces(LABEL_STOCKS[0], { count: 2, firstPlace: 1 })[1] // => { page: 1, xMm: 0, yMm: 0 }
 */
export function labelPlaces(
  stock: LabelStock,
  { count, firstPlace }: { readonly count: number; readonly firstPlace: number },
): LabelPlace[] {
  const perPage = labelsPerPage(stock);
  invariant(Number.isInteger(count) && count >= 0, 'labelPlaces requires a count of 0 or more');
  invariant(firstPlace >= 1 && firstPlace <= perPage, 'labelPlaces requires a place on the page');
  return Array.from({ length: count }, (_, at) => {
    const place = at + firstPlace - 1;
    const onPage = place % perPage;
    const column = onPage % stock.columns;
    const row = Math.floor(onPage / stock.columns);
    return {
      page: Math.floor(place / perPage),
      xMm: stock.leftMm + column * (stock.labelWidthMm + stock.gapAcrossMm),
      yMm: stock.topMm + row * (stock.labelHeightMm + stock.gapUprightMm),
    };
  });
}
