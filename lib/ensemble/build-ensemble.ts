import type { LifeFit } from '../life/life-fit';
import type { ExposurePart } from '../life/observation';
import type { WornReading } from '../reading/reading';
import type { EdgeKind } from '../shop/vocabulary';
import {
  type CutCondition,
  exposureDraws,
  type KindDraws,
  kindDrawsOf,
  logMedianDraws,
  wearFactorDraws,
} from './kind-draws';
import type { LifeDraws } from './life-draws';
import { residualDraws } from './residual-draws';

/** A tool that can still cut: in service, in the crib or issued, with its present edge. */
export interface ToolInHand {
  readonly toolId: string;
  readonly kind: EdgeKind;
  readonly partId: string;
  readonly odIn: number;
  readonly regrinds: number;
  /** All that the present edge has cut so far. */
  readonly exposure: readonly ExposurePart[];
  /** What was seen of the present edge, in any order. */
  readonly readings?: readonly WornReading[];
}

/** A part of which new tools may be bought. */
export interface PartOnOffer {
  readonly partId: string;
  readonly kind: EdgeKind;
  readonly odIn: number;
}

export interface EnsembleInput {
  /** The fits by kind; a kind without one has no lives (its tools are unknown to the ensemble). */
  readonly kinds: { readonly blade?: LifeFit | undefined; readonly die?: LifeFit | undefined };
  readonly tools: readonly ToolInHand[];
  readonly parts: readonly PartOnOffer[];
  readonly drawCount?: number;
}

/** The one set of futures, with what the answers need beside it. */
export interface Ensemble extends LifeDraws {
  /** As materialFactor, times the factors of cutting dry and of recutting where they apply. */
  wearFactor(kind: EdgeKind, cut: CutCondition): Float64Array | undefined;
  /** Life of a new edge (median, chance left out) of this size and part, per draw: how well the typical life is known. */
  medianLife(
    kind: EdgeKind,
    edge: { partId: string; odIn: number; regrinds: number },
  ): Float64Array | undefined;
  tool(toolId: string): ToolInHand | undefined;
  fit(kind: EdgeKind): LifeFit | undefined;
  /** The draws of a kind behind all of it, its figures and factors. */
  draws(kind: EdgeKind): KindDraws | undefined;
  /** Every array worked out so far, by its key: what an ensemble of the same draws need not work out again. */
  readonly lives: ReadonlyMap<string, Float64Array>;
}

export const DEFAULT_DRAW_COUNT = 2048;

/**
 * Builds the ensemble of futures that every screen counts over. Each tool's chance is keyed by its id and each array is
 * worked out when first asked for, so neither the order of the inputs nor the order of the questions changes a digit, and
 * one more tool changes no other tool's. Errors: none; what is unknown is undefined.
 */
export function buildEnsemble({
  kinds,
  tools,
  parts,
  drawCount = DEFAULT_DRAW_COUNT,
}: EnsembleInput): Ensemble {
  const byKind = new Map<EdgeKind, KindDraws>();
  if (kinds.blade !== undefined) byKind.set('blade', kindDrawsOf(kinds.blade, drawCount));
  if (kinds.die !== undefined) byKind.set('die', kindDrawsOf(kinds.die, drawCount));
  return ensembleOver(byKind, { tools, parts, drawCount });
}

/** The same over futures of the kinds that have been drawn already: for asking about other tools without a new fit. */
export function ensembleOver(
  byKind: ReadonlyMap<EdgeKind, KindDraws>,
  { tools, parts, drawCount }: Pick<EnsembleInput, 'tools' | 'parts'> & { drawCount: number },
  known: ReadonlyMap<string, Float64Array> = new Map(),
): Ensemble {
  const toolById = new Map(tools.map((tool) => [tool.toolId, tool]));
  const partById = new Map(parts.map((part) => [part.partId, part]));
  const lives = new Map(known);
  const keep = keeper(lives);
  const wearFactor = (kind: EdgeKind, cut: CutCondition): Float64Array | undefined => {
    const draws = byKind.get(kind);
    return draws && wearFactorDraws(draws, cut);
  };
  const medianLog = (
    draws: KindDraws,
    edge: { partId: string; odIn: number; regrinds: number },
  ): Float64Array => keep(medianKey(draws.fit.kind, edge), () => logMedianDraws(draws, edge));
  return {
    drawCount,
    wearFactor,
    materialFactor: (kind, materialId) => wearFactor(kind, { materialId, dry: false, rework: false }),
    medianLife: (kind, edge) => {
      const draws = byKind.get(kind);
      return draws && medianLog(draws, edge).map(Math.exp);
    },
    residualLife: (toolId) => {
      const tool = toolById.get(toolId);
      const draws = tool && byKind.get(tool.kind);
      if (tool === undefined || draws === undefined) return undefined;
      return keep(residualKey(toolId), () =>
        residualDraws(draws, {
          key: `tool:${toolId}`,
          logMedian: medianLog(draws, tool),
          exposure: exposureDraws(draws, tool.exposure),
          readings: tool.readings,
        }),
      );
    },
    newLife: (partId, index) => {
      const part = partById.get(partId);
      const draws = part && byKind.get(part.kind);
      if (part === undefined || draws === undefined) return undefined;
      return keep(newKey(partId, index), () =>
        residualDraws(draws, {
          key: `new:${partId}:${index}`,
          logMedian: medianLog(draws, { ...part, regrinds: 0 }),
        }),
      );
    },
    regroundLife: (partId, { toolId, regrinds }) => {
      const part = partById.get(partId);
      const draws = part && byKind.get(part.kind);
      if (part === undefined || draws === undefined) return undefined;
      return keep(`again:${regrinds}:${toolId}`, () =>
        residualDraws(draws, {
          key: `again:${toolId}:${regrinds}`,
          logMedian: medianLog(draws, { ...part, regrinds }),
        }),
      );
    },
    tool: (toolId) => toolById.get(toolId),
    fit: (kind) => byKind.get(kind)?.fit,
    draws: (kind) => byKind.get(kind),
    lives,
  };
}

/** Names of the arrays that an ensemble keeps. */
function medianKey(kind: EdgeKind, edge: { partId: string; odIn: number; regrinds: number }): string {
  return `median:${kind}:${edge.regrinds}:${edge.odIn}:${edge.partId}`;
}

export function residualKey(toolId: string): string {
  return `residual:${toolId}`;
}

function newKey(partId: string, index: number): string {
  return `new:${index}:${partId}`;
}

/** Works each array out once and hands the same one out from then on. */
function keeper(kept: Map<string, Float64Array>): (key: string, make: () => Float64Array) => Float64Array {
  return (key, make) => {
    const held = kept.get(key) ?? make();
    kept.set(key, held);
    return held;
  };
}
