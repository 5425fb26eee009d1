import type { LifeDraws } from '@/lib/ensemble/life-draws';
import { normalCdf, normalQuantile } from '@/lib/numeric/normal';
import { stratifiedUniforms } from '@/lib/numeric/random-stream';

/** A life that a test states: exactly these figures in turn over the draws, or a normal life with some of it used. */
export type StatedLife = number | readonly number[] | { readonly mean: number; readonly used: number };

export interface StatedFutures {
  readonly drawCount?: number;
  /** Remaining lives by tool id. */
  readonly tools?: Readonly<Record<string, StatedLife>>;
  /** Lives of new pieces by part id. */
  readonly parts?: Readonly<Record<string, StatedLife>>;
  /** Factors by material id, for blade and die alike. */
  readonly factors?: Readonly<Record<string, number | readonly number[]>>;
}

/** Coefficient of variation of the trade's worked life figures. */
const CV = 0.3;

/**
 * Futures from stated distributions by plain inverse transform: for a normal life T with standard deviation 0.3 of its
 * mean, given that it has outlived what is used, T = mean + sd·Φ⁻¹(1 − u·(1 − Φ((used − mean)/sd))), u stratified.
 */
export function statedDraws(futures: StatedFutures): LifeDraws {
  const drawCount = futures.drawCount ?? 2048;
  const known = new Map<string, Float64Array>();
  const stated = Object.entries(futures.factors ?? {});
  const factors = new Map(stated.map(([materialId, factor]) => [materialId, spread(factor, drawCount)]));
  const lives = (key: string, life: StatedLife | undefined): Float64Array | undefined => {
    if (life === undefined) return undefined;
    const draws = known.get(key) ?? lifeDraws(key, life, drawCount);
    known.set(key, draws);
    return draws;
  };
  return {
    drawCount,
    materialFactor: (_kind, materialId) => factors.get(materialId),
    residualLife: (toolId) => lives(`tool ${toolId}`, futures.tools?.[toolId]),
    newLife: (partId, index) => lives(`part ${partId} ${index}`, futures.parts?.[partId]),
  };
}

function spread(figure: number | readonly number[], drawCount: number): Float64Array {
  const list = typeof figure === 'number' ? [figure] : figure;
  return Float64Array.from({ length: drawCount }, (_, k) => list[k % list.length] as number);
}

function lifeDraws(key: string, life: StatedLife, drawCount: number): Float64Array {
  if (typeof life === 'number' || 'length' in life) return spread(life, drawCount);
  const { mean, used } = life;
  const alive = 1 - normalCdf((used - mean) / (CV * mean));
  return stratifiedUniforms(key, drawCount).map((u) =>
    Math.max(0, mean + CV * mean * normalQuantile(1 - u * alive) - used),
  );
}
