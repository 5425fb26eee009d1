import { dayOfMs } from '../calendar/day';
import { bottleOfTool } from '../fluid/bottle-of-tool';
import { type BottleUse, measuredUses } from '../fluid/measured-use';
import { type FluidWork, fluidObjection, fluidWorkOf } from '../fluid/permit-fluid';
import type { Bottle } from '../fluid/pick-first';
import { bottleUseBy } from '../fluid/use-by';
import { DROPS_PER_ML_DEFAULT, WASTE_FACTOR_DEFAULT } from '../fluid/use-per-end';
import { learnUseRatio, type UseRatio } from '../fluid/use-ratio';
import type { Duty } from '../shop/duty';
import { type Chlorinated, type FluidLot, fluidLotId } from '../shop/fluid-lot';
import type { Part } from '../shop/part';
import type { ShopFacts, ToolFacts } from './shop-facts';

/** A bottle of the shop with its product and what is known of its lot. */
export interface ShopBottle extends Bottle {
  readonly part: Part;
  readonly lot: string;
  readonly lotFacts: FluidLot | undefined;
  /** Drops to the millilitre: counted with its own dropper, else as said of the product, else the usual 40. */
  readonly dropsPerMl: number;
}

/** What is known of the lot that a bottle belongs to; undefined where nobody has written anything down. */
export function lotOf(facts: ShopFacts, tool: Pick<ToolFacts, 'partId' | 'lot'>): FluidLot | undefined {
  const id = fluidLotId({ partId: tool.partId, lot: tool.lot ?? '' });
  return facts.fluidLots?.find((lot) => fluidLotId(lot) === id);
}

/** Whether a bottle holds chlorinated paraffins: the answer for its lot, else what is said of the product. */
export function chlorinatedOf(
  facts: ShopFacts,
  tool: Pick<ToolFacts, 'partId' | 'lot'>,
  part: Part,
): Chlorinated {
  return lotOf(facts, tool)?.chlorinated ?? part.chlorinated;
}

/** Every bottle that is not scrapped or lost. */
export function shopBottles(facts: ShopFacts): ShopBottle[] {
  return facts.tools.flatMap((tool) =>
    tool.state === 'scrapped' || tool.state === 'lost' ? [] : bottleOf(facts, tool),
  );
}

/** A tool as a bottle; none where it is no fluid. */
export function bottleOf(facts: ShopFacts, tool: ToolFacts): ShopBottle[] {
  const part = facts.parts.find(({ id }) => id === tool.partId);
  if (part === undefined || part.role !== 'fluid') return [];
  const lotFacts = lotOf(facts, tool);
  const dropsPerMl = tool.dropsPerMl ?? part.dropsPerMl ?? DROPS_PER_ML_DEFAULT;
  const bottle = bottleOfTool({ ...tool, lotChlorinated: lotFacts?.chlorinated ?? null }, part);
  return [{ ...bottle, part, lot: tool.lot ?? '', lotFacts, dropsPerMl }];
}

/** The work as the fluids see it. */
export function fluidWork(
  facts: ShopFacts,
  work: { materialId: string; duty?: Duty | undefined },
): FluidWork {
  return fluidWorkOf(
    work,
    facts.materials.find(({ id }) => id === work.materialId),
  );
}

/** What the shop's levels and log teach about its use of fluid. */
export interface LearntUse {
  /** Measured ÷ planned use of the whole shop. */
  readonly ratio: UseRatio;
  readonly factor: number;
  readonly uses: readonly BottleUse[];
  /** Drops to the millilitre of the bottle to be used first; the usual 40 where nothing is known. */
  readonly dropsPerMl: number;
}

const learnt = new WeakMap<ShopFacts, LearntUse>();

/** Measured ÷ planned use learnt from the levels read, drawn towards the shop's own factor. Worked out once for one record. */
export function learntUse(facts: ShopFacts): LearntUse {
  const known = learnt.get(facts);
  if (known !== undefined) return known;
  const factor = facts.shop?.fluidWasteFactor ?? WASTE_FACTOR_DEFAULT;
  const uses = facts.fluidLog === undefined ? [] : measuredUses(facts.fluidLog, pastBottles(facts));
  const found = { factor, uses, ratio: learnUseRatio(factor, uses), dropsPerMl: usualDropsPerMl(facts) };
  learnt.set(facts, found);
  return found;
}

/** The ratio of one bottle: its own levels, drawn towards what the whole shop's teach. */
export function bottleRatio(facts: ShopFacts, toolId: string): UseRatio {
  const { ratio, uses } = learntUse(facts);
  return learnUseRatio(
    ratio.mean,
    uses.filter((use) => use.toolId === toolId),
  );
}

function pastBottles(facts: ShopFacts) {
  return facts.tools.flatMap((tool) =>
    bottleOf(facts, tool).map((bottle) => ({
      ...bottle,
      endedOnDay:
        tool.state === 'scrapped' || tool.state === 'lost'
          ? tool.stateSinceMs === undefined
            ? facts.today
            : dayOfMs(tool.stateSinceMs)
          : null,
      permits: (materialId: string) => fluidObjection(bottle, fluidWork(facts, { materialId })) === null,
    })),
  );
}

function usualDropsPerMl(facts: ShopFacts): number {
  const open = shopBottles(facts)
    .filter(({ openedOnDay }) => openedOnDay !== null)
    .sort((a, b) => ((bottleUseBy(a).onDay ?? '9999') < (bottleUseBy(b).onDay ?? '9999') ? -1 : 1));
  const counted = open.find(({ toolId }) =>
    facts.tools.some((tool) => tool.id === toolId && tool.dropsPerMl),
  );
  const stated = facts.parts.find((part) => part.role === 'fluid' && part.dropsPerMl !== null)?.dropsPerMl;
  return counted?.dropsPerMl ?? stated ?? DROPS_PER_ML_DEFAULT;
}
