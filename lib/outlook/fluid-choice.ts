import type { ShopFacts } from './shop-facts';

/** A bottle that work may be logged with. */
export interface FluidChoice {
  readonly id: string;
  readonly name: string;
  readonly open: boolean;
  /** Materials that the shop permits it on. */
  readonly permitted: 'all' | readonly string[];
}

/** The bottles in the crib or out at a bench, open ones first. An empty or disposed one is no choice. */
export function fluidsToChoose({ tools, parts }: Pick<ShopFacts, 'tools' | 'parts'>): FluidChoice[] {
  const partOf = new Map(parts.map((part) => [part.id, part]));
  const choices = tools.flatMap(({ id, role, state, partId, levelMl, openedOnDay }): FluidChoice[] => {
    const part = partOf.get(partId);
    const here = state === 'in-crib' || state === 'issued';
    if (role !== 'fluid' || part === undefined || !here || levelMl === 0) return [];
    return [{ id, name: part.name, open: openedOnDay !== null, permitted: part.permittedMaterialIds }];
  });
  return choices.sort((a, b) => Number(b.open) - Number(a.open) || (a.id < b.id ? -1 : 1));
}

/**
 * The bottle that a row was most likely cut with: the one last used, while it is still here and permitted on the material; else
 * the only open one that is. Undefined where that is a guess. For filling in the log form; whoever logs can choose another.
 */
export function likelyFluid(
  choices: readonly FluidChoice[],
  { materialId, lastUsedId }: { materialId: string; lastUsedId: string | null },
): string | undefined {
  const permitted = choices.filter(({ permitted: on }) => on === 'all' || on.includes(materialId));
  const last = permitted.find(({ id }) => id === lastUsedId);
  const open = permitted.filter((choice) => choice.open);
  return last?.id ?? (open.length === 1 ? open[0]?.id : undefined);
}
