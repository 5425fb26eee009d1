/** Widths of letters in a plain sans serif, as shares of the type's size, a little generous. Common practice, no source. */
const NARROW = /[iljtfrI.,;:'’·\s()|-]/u;
const NARROW_EM = 0.36;
const WIDE = /[A-HJ-ZmwMW]/u;
const WIDE_EM = 0.74;
const USUAL_EM = 0.6;
/** A figure of a true fraction is set small. */
const FRACTION = /\d+⁄\d+/gu;
const FRACTION_FIGURE_EM = 0.42;

/**
 * About how wide a line of text is, in sizes of its type: what decides how small it must be set to fit. A guess on the safe side; the
 * letters' own widths are the font's. Source: common practice, no source.
 */
export function textWidthEm(line: string): number {
  const fractions = line.match(FRACTION) ?? [];
  const inFractions = fractions.reduce((sum, text) => sum + text.length * FRACTION_FIGURE_EM, 0);
  const rest = [...line.replace(FRACTION, '')];
  return rest.reduce((sum, letter) => sum + widthOf(letter), inFractions);
}

function widthOf(letter: string): number {
  if (NARROW.test(letter)) return NARROW_EM;
  return WIDE.test(letter) ? WIDE_EM : USUAL_EM;
}

/** Smallest type that is worth printing, mm. Common practice, no source. */
const LEAST_FONT_MM = 1.3;

/** The size in which a line fits into so much room, at most `mostMm`; undefined where it would be too small to read. */
export function fittingFontMm(
  line: string,
  room: { readonly widthMm: number; readonly mostMm: number },
): number | undefined {
  const fontMm = Math.min(room.mostMm, room.widthMm / Math.max(textWidthEm(line), 1e-9));
  return fontMm >= LEAST_FONT_MM ? fontMm : undefined;
}
