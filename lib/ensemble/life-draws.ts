import type { EdgeKind } from '../shop/vocabulary';

/**
 * The one set of futures that every screen counts over. Draw k is one consistent future: its material factors, the
 * residual life of every tool and the lives of tools not yet bought all belong together.
 * Residual and new lives are in reference exposure: forward cutting turns (die) or mm³ removed (blade) in the shop's
 * reference material, annealed or cold-worked as the shop's material table says (factor 1).
 */
export interface LifeDraws {
  /** K, the number of draws. */
  readonly drawCount: number;
  /** Factor by which an end in this material wears this kind of edge, per draw. Unknown material: undefined. */
  materialFactor(kind: EdgeKind, materialId: string): Float64Array | undefined;
  /** Remaining life of a tool in service or in the crib, per draw. Unknown tool: undefined. */
  residualLife(toolId: string): Float64Array | undefined;
  /** Life of the index-th new tool of a part (index 0, 1, 2 …), per draw. Unknown part: undefined. */
  newLife(partId: string, index: number): Float64Array | undefined;
  /** Life of the edge that a blade has after so many regrinds, none of it used, per draw. Unknown part: undefined. */
  regroundLife?(partId: string, blade: { toolId: string; regrinds: number }): Float64Array | undefined;
}
