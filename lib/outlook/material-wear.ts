import { type MaterialEffect, materialEffects } from '../compare/material-effects';
import type { Material } from '../shop/noun';
import { EDGE_KINDS, type EdgeKind } from '../shop/vocabulary';
import type { Outlook } from './outlook';

/** How fast a material wears edges, beside how many ends that rests on. */
export interface MaterialWear {
  readonly material: Material;
  readonly kinds: Readonly<Record<EdgeKind, KindMaterialWear>>;
}

export interface KindMaterialWear {
  /** Undefined for the reference material, which counts one, and for a kind without a fit. */
  readonly effect: MaterialEffect | undefined;
  /** Ends that edges of the kind have cut of it. */
  readonly ends: number;
}

/** Every material but the reference, those cut most first. For the page on wear. */
export function materialWears({ facts, ensemble }: Pick<Outlook, 'facts' | 'ensemble'>): MaterialWear[] {
  const effects = new Map(EDGE_KINDS.map((kind) => [kind, materialEffects(ensemble, kind) ?? []]));
  const roles = new Map(facts.tools.map(({ id, role }) => [id, role]));
  const ends = new Map<string, number>();
  for (const { toolId, use } of facts.edges) {
    for (const { materialId, ends: cut } of use) {
      const key = `${roles.get(toolId)} ${materialId}`;
      ends.set(key, (ends.get(key) ?? 0) + cut);
    }
  }
  const of = (kind: EdgeKind, { id }: Material): KindMaterialWear => ({
    effect: effects.get(kind)?.find(({ materialId }) => materialId === id),
    ends: ends.get(`${kind} ${id}`) ?? 0,
  });
  return facts.materials
    .filter(({ isReference }) => !isReference)
    .map((material) => ({ material, kinds: { die: of('die', material), blade: of('blade', material) } }))
    .sort((a, b) => totalEnds(b) - totalEnds(a));
}

function totalEnds({ kinds }: MaterialWear): number {
  return kinds.die.ends + kinds.blade.ends;
}
