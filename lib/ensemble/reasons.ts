import type { EdgeCounts, LifeWarning } from '../life/life-fit';
import type { EdgeKind } from '../shop/vocabulary';
import type { Ensemble } from './build-ensemble';

/** A figure as known: middle and 10–90 % band over the draws. */
export interface Band {
  readonly low: number;
  readonly median: number;
  readonly high: number;
}

/** What an estimate rests on, as data; the screen puts it into words. */
export interface EstimateReasons {
  readonly kind: EdgeKind;
  readonly partId: string;
  /**
   * The best evidence there is: worn edges of this part; of other parts of the kind; a first guess typed for this part; one
   * typed for others; or the product's own default, which a screen must name as such.
   */
  readonly restsOn:
    | 'worn-of-part'
    | 'worn-of-kind'
    | 'first-guess-of-part'
    | 'first-guess-of-kind'
    | 'default';
  readonly partCounts: EdgeCounts;
  readonly kindCounts: EdgeCounts;
  /** Wear factor of the material asked for; undefined for the reference material or an unknown one. */
  readonly materialFactor: Band | undefined;
  /** Typical (median) life of a new edge of this part in reference exposure: how well it is known, not how lives scatter. */
  readonly typicalLife: Band;
  readonly warnings: readonly LifeWarning[];
}

const NONE: EdgeCounts = { worn: 0, incident: 0, removedWorking: 0, inService: 0 };

/** The reasons behind a tool's estimate. Undefined for an unknown tool, or a kind without a fit. */
export function reasonsFor(
  ensemble: Ensemble,
  toolId: string,
  materialId?: string,
): EstimateReasons | undefined {
  const tool = ensemble.tool(toolId);
  const fit = tool && ensemble.fit(tool.kind);
  const typicalLife = tool && ensemble.medianLife(tool.kind, { ...tool, regrinds: 0 });
  if (tool === undefined || fit === undefined || typicalLife === undefined) return undefined;
  const partCounts = fit.countsByPart[tool.partId] ?? NONE;
  const differs = materialId !== undefined && materialId !== fit.priors.referenceMaterialId;
  const factor = differs ? ensemble.materialFactor(tool.kind, materialId) : undefined;
  const guessed = fit.guesses.some((guess) => guess.partId === tool.partId);
  return {
    kind: tool.kind,
    partId: tool.partId,
    restsOn: restsOn(partCounts.worn, fit.counts.worn, guessed, fit.guesses.length > 0),
    partCounts,
    kindCounts: fit.counts,
    materialFactor: factor && bandOf(factor),
    typicalLife: bandOf(typicalLife),
    warnings: fit.warnings,
  };
}

function restsOn(
  wornOfPart: number,
  wornOfKind: number,
  guessed: boolean,
  anyGuess: boolean,
): EstimateReasons['restsOn'] {
  if (wornOfPart > 0) return 'worn-of-part';
  if (wornOfKind > 0) return 'worn-of-kind';
  if (guessed) return 'first-guess-of-part';
  return anyGuess ? 'first-guess-of-kind' : 'default';
}

/** Middle and 10–90 % band of draws, by counting. */
export function bandOf(draws: Float64Array): Band {
  const sorted = Float64Array.from(draws).sort();
  const at = (share: number): number =>
    sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] as number;
  return { low: at(0.1), median: at(0.5), high: at(0.9) };
}
