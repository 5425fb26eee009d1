import { invariant } from '../invariant';
import { type CodeKind, QUIET_MODULES } from './code-kind';

/** What has to fit on a label: its size, the code's modules, and how many letters its ID has. Lengths in mm. */
export interface LabelToLayOut {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly codeKind: CodeKind;
  readonly codeAcross: number;
  readonly codeUpright: number;
  readonly idLength: number;
}

interface Box {
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Where things stand on a label, from its top left corner, mm. */
export interface LabelLayout {
  /** The code itself, quiet margin not counted. */
  readonly code: Box;
  /** Side of one square, or width of the narrowest bar. */
  readonly moduleMm: number;
  /** Where the ID's letters begin, their baseline, and the size of the type. */
  readonly id: { readonly xMm: number; readonly baselineMm: number; readonly fontMm: number };
  /** The lines under it: baselines, and the size of the type; empty where the label is too low for one. */
  readonly lines: { readonly baselinesMm: readonly number[]; readonly fontMm: number };
  /** Whether an ordinary printer and scanner can be relied on for squares or bars so small. */
  readonly isCoarseEnough: boolean;
}

/** Printers leave the edge of a label white, and labels are cut with some play, mm. Common practice, no source. */
const EDGE_MM = 0.9;
/** Width of a letter of the ID's type, and height of its capitals, as shares of the type's size. Generous for a bold sans. */
const LETTER = 0.68;
const CAPITAL = 0.73;
const LINE = 1.22;
/** Finest square and finest bar that a shop's printer and scanner are good for, mm. Common practice, no source. */
const LEAST_MODULE_MM: Record<CodeKind, number> = { 'data-matrix': 0.25, qr: 0.33, 'code-128': 0.17 };
const MOST_MODULE_MM: Record<CodeKind, number> = { 'data-matrix': 1.2, qr: 1, 'code-128': 0.4 };
const LINES_MOST = 3;
const LEAST_LINE_MM = 1.6;

/**
 * Lays a label out: a square code at the left and the text beside it; bars along the foot and the text above. The ID is as large as
 * the room allows; lines of small type follow while there is room for letters of 1.6 mm. Domain: a label of at least 12 × 6 mm.
 */
export function layOutLabel(label: LabelToLayOut): LabelLayout {
  const { widthMm, heightMm, codeAcross, codeUpright, idLength } = label;
  invariant(widthMm >= 12 && heightMm >= 6, 'a label is at least 12 × 6 mm');
  invariant(codeAcross > 0 && codeUpright > 0 && idLength > 0, 'a label carries a code and an ID');
  return label.codeKind === 'code-128' ? withBars(label) : withSquare(label);
}

function withSquare({
  widthMm,
  heightMm,
  codeKind,
  codeAcross,
  codeUpright,
  idLength,
}: LabelToLayOut): LabelLayout {
  const quiet = QUIET_MODULES[codeKind];
  const across = codeAcross + 2 * quiet.across;
  const upright = codeUpright + 2 * quiet.upright;
  const roomMm = Math.min(heightMm - 2 * EDGE_MM, (widthMm - 2 * EDGE_MM) * 0.45);
  const moduleMm = Math.min(roomMm / Math.max(across, upright), MOST_MODULE_MM[codeKind]);
  const blockMm = { width: across * moduleMm, height: upright * moduleMm };
  const textXMm = EDGE_MM + blockMm.width + Math.max(EDGE_MM - quiet.across * moduleMm, 0.3);
  const code = {
    xMm: EDGE_MM + quiet.across * moduleMm,
    yMm: (heightMm - blockMm.height) / 2 + quiet.upright * moduleMm,
    widthMm: codeAcross * moduleMm,
    heightMm: codeUpright * moduleMm,
  };
  const text = {
    xMm: textXMm,
    yMm: EDGE_MM,
    widthMm: widthMm - EDGE_MM - textXMm,
    heightMm: heightMm - 2 * EDGE_MM,
  };
  return { code, moduleMm, ...textIn(text, idLength), isCoarseEnough: moduleMm >= LEAST_MODULE_MM[codeKind] };
}

function withBars({ widthMm, heightMm, codeKind, codeAcross, idLength }: LabelToLayOut): LabelLayout {
  const quiet = QUIET_MODULES[codeKind];
  const across = codeAcross + 2 * quiet.across;
  const moduleMm = Math.min((widthMm - 2 * EDGE_MM) / across, MOST_MODULE_MM[codeKind]);
  const barsMm = Math.min(Math.max((heightMm - 2 * EDGE_MM) * 0.45, 4), heightMm / 2);
  const code = {
    xMm: (widthMm - codeAcross * moduleMm) / 2,
    yMm: heightMm - EDGE_MM - barsMm,
    widthMm: codeAcross * moduleMm,
    heightMm: barsMm,
  };
  const text = {
    xMm: EDGE_MM + 0.3,
    yMm: EDGE_MM,
    widthMm: widthMm - 2 * EDGE_MM - 0.6,
    heightMm: heightMm - 2.5 * EDGE_MM - barsMm,
  };
  return { code, moduleMm, ...textIn(text, idLength), isCoarseEnough: moduleMm >= LEAST_MODULE_MM[codeKind] };
}

/** The ID as large as the box allows, then as many small lines as still fit. */
function textIn(box: Box, idLength: number): Pick<LabelLayout, 'id' | 'lines'> {
  const byWidth = box.widthMm / (idLength * LETTER);
  const fontMm = Math.min(byWidth, (box.heightMm * 0.6) / CAPITAL);
  const restMm = box.heightMm - fontMm * CAPITAL;
  const lineMm = Math.min(fontMm * 0.55, Math.max(restMm / (LINES_MOST * LINE), LEAST_LINE_MM));
  const fits = Math.max(0, Math.min(LINES_MOST, Math.floor(restMm / (lineMm * LINE))));
  const usedMm = fontMm * CAPITAL + fits * lineMm * LINE;
  const baselineMm = box.yMm + (box.heightMm - usedMm) / 2 + fontMm * CAPITAL;
  const baselinesMm = Array.from({ length: fits }, (_, at) => baselineMm + (at + 1) * lineMm * LINE);
  return { id: { xMm: box.xMm, baselineMm, fontMm }, lines: { baselinesMm, fontMm: lineMm } };
}
