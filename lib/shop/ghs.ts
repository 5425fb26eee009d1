/**
 * The nine hazard pictograms of the GHS with their codes and names. Source: UN GHS (Rev. 7), Annex 3, titles from memory:
 * a black symbol on white in a red frame set on its point.
 */
export const GHS_PICTOGRAMS = [
  { code: 'GHS01', name: 'exploding bomb' },
  { code: 'GHS02', name: 'flame' },
  { code: 'GHS03', name: 'flame over circle' },
  { code: 'GHS04', name: 'gas cylinder' },
  { code: 'GHS05', name: 'corrosion' },
  { code: 'GHS06', name: 'skull and crossbones' },
  { code: 'GHS07', name: 'exclamation mark' },
  { code: 'GHS08', name: 'health hazard' },
  { code: 'GHS09', name: 'environment' },
] as const;
export type GhsCode = (typeof GHS_PICTOGRAMS)[number]['code'];
export const GHS_CODES = GHS_PICTOGRAMS.map(({ code }) => code);

/** The signal word of a GHS label. The SDS may also say that there is none. */
export const GHS_SIGNALS = ['danger', 'warning', 'none'] as const;
export type GhsSignal = (typeof GHS_SIGNALS)[number];
