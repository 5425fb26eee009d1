import type { Day } from '../calendar/day';
import { addDays } from '../calendar/day';
import { endsLeft } from '../ensemble/forecast';
import type { Bottle } from '../fluid/pick-first';
import { type ConditionNeed, dueBeforeDone, judgeCondition } from '../kit/judge-condition';
import { type FitNeed, judgeFit } from '../kit/judge-fit';
import type { KitStock } from '../kit/propose-kit';
import { fluidWork, shopBottles } from '../outlook/fluid-facts';
import type { Outlook } from '../outlook/outlook';
import { endsLeftFor, requiredProbability } from '../outlook/plan-facts';
import type { LineFacts } from '../outlook/shop-facts';
import type { Connection } from '../shop/noun';
import type { CutOperation, EdgeKind, Role } from '../shop/vocabulary';
import { CALIBRATED_ROLES } from '../shop/vocabulary';
import { exposureOfEnd } from '../wear/connection-exposure';
import { thinnedEnds } from './finish-chance';

/** A blade or die that is out with a line, with everything a bench needs to answer for it without the server. */
export interface BenchEdge {
  readonly toolId: string;
  readonly kind: EdgeKind;
  readonly operation: CutOperation;
  /** Whose hands it is in, and where. */
  readonly holderName: string | null;
  /** Ends left of this very work, in futures that count alike; empty where nobody can say. */
  readonly left: readonly number[];
  /** Ends of the line that it is still to cut. */
  readonly endsToCut: number;
  /** Why it must not cut, in a sentence; null where nothing is in the way. */
  readonly stop: string | null;
  readonly adjustments: number;
}

/** A gauge or a bottle that is out with a line. */
export interface BenchAid {
  readonly toolId: string;
  readonly role: Role;
  readonly stop: string | null;
  readonly mind: string | null;
}

/** One line of the plan as a bench works it. */
export interface BenchLine {
  readonly id: string;
  readonly jobId: string;
  readonly connection: Connection;
  readonly materialId: string;
  readonly materialName: string;
  readonly heat: string;
  readonly ends: number;
  readonly coneEndsLeft: number;
  readonly threadEndsLeft: number;
  readonly dueOnDay: Day;
  readonly isPrecious: boolean;
  /** The chance that the shop wants before it starts. */
  readonly requiredProbability: number;
  readonly turnsPerEnd: number;
  readonly edges: readonly BenchEdge[];
  readonly gauges: readonly BenchAid[];
  readonly fluids: readonly BenchAid[];
}

export interface BenchSnapshot {
  readonly shop: string;
  /** The moment of the record that everything here rests on. */
  readonly asOfMs: number;
  readonly lines: readonly BenchLine[];
}

/** Lines that start within so many days are worth having at a bench even before their kit is out. */
const AHEAD_DAYS = 3;

/**
 * The lines that benches work at, with the tools that are out for them: what a bench screen keeps on the device, so that it
 * opens and answers without network. Figures are counts over the shop's one ensemble.
 */
export function benchLines(outlook: Outlook, stock: readonly KitStock[]): BenchLine[] {
  const { facts } = outlook;
  const out = new Map<string, KitStock[]>();
  for (const item of stock) {
    if (item.tool.state !== 'issued' || item.tool.jobLineId === null) continue;
    out.set(item.tool.jobLineId, [...(out.get(item.tool.jobLineId) ?? []), item]);
  }
  const until = addDays(facts.today, AHEAD_DAYS);
  const bottles = shopBottles(facts);
  return facts.lines.flatMap((line) => {
    const connection = facts.connections.find(({ id }) => id === line.connectionId);
    const issued = out.get(line.id) ?? [];
    if (connection === undefined || (issued.length === 0 && line.startOnDay > until)) return [];
    return [benchLine(outlook, line, connection, issued, bottles)];
  });
}

function benchLine(
  outlook: Outlook,
  line: LineFacts,
  connection: Connection,
  out: readonly KitStock[],
  bottles: readonly Bottle[],
): BenchLine {
  const { facts } = outlook;
  const material = facts.materials.find(({ id }) => id === line.materialId);
  // With its condition: annealed and cold-worked tube must not be mixed up at the vise.
  const materialName =
    material === undefined ? line.materialId : `${material.name} ${material.condition}`.trim();
  const need: BenchNeed = {
    ...{ today: facts.today, dueOnDay: line.dueOnDay, connection, connections: facts.connections },
    ...{ fluidWork: fluidWork(facts, line), bottles },
  };
  const aids = out.filter(({ tool }) => tool.role !== 'blade' && tool.role !== 'die');
  const aid = (item: KitStock): BenchAid => ({
    toolId: item.tool.id,
    role: item.tool.role,
    ...judged(item, need),
  });
  return {
    ...{ id: line.id, jobId: line.jobId, connection, materialId: line.materialId, materialName },
    ...{ heat: line.heat ?? '', ends: line.ends, dueOnDay: line.dueOnDay },
    coneEndsLeft: endsLeftFor(line, 'cone'),
    threadEndsLeft: endsLeftFor(line, 'thread'),
    isPrecious: line.value === 'precious',
    requiredProbability: requiredProbability(facts.shop, line.value),
    turnsPerEnd: exposureOfEnd({ operation: 'thread', connection }),
    edges: out.flatMap((item) => benchEdge(outlook, line, connection, item, need)),
    gauges: aids.filter(({ tool }) => CALIBRATED_ROLES.includes(tool.role)).map(aid),
    fluids: aids.filter(({ tool }) => tool.role === 'fluid').map(aid),
  };
}

function benchEdge(
  { ensemble }: Outlook,
  line: LineFacts,
  connection: Connection,
  item: KitStock,
  need: BenchNeed,
): BenchEdge[] {
  const { tool } = item;
  if (tool.role !== 'blade' && tool.role !== 'die') return [];
  const operation = tool.role === 'blade' ? 'cone' : 'thread';
  const exposurePerEnd = exposureOfEnd({ operation, connection });
  const left = endsLeft(ensemble, tool.id, {
    ...{ exposurePerEnd, materialId: line.materialId, dry: false, rework: false },
  });
  return [
    {
      ...{ toolId: tool.id, kind: tool.role, operation, holderName: tool.holderName },
      left: left === undefined ? [] : thinnedEnds(left.sortedEnds),
      endsToCut: endsLeftFor(line, operation),
      stop: judged(item, need).stop,
      adjustments: tool.adjustments,
    },
  ];
}

/** What a tool that is out with a line is judged against: the same judgement as at the counter, where it stands left aside. */
type BenchNeed = FitNeed & ConditionNeed & { readonly dueOnDay: Day };

function judged({ tool, part }: KitStock, need: BenchNeed): { stop: string | null; mind: string | null } {
  const [, sentence] = judgeFit(tool, part, need) ?? judgeCondition(tool, part, need) ?? [];
  if (sentence !== undefined) return { stop: sentence, mind: null };
  const owed = tool.firstOffOwed ? 'Gauge its first-off before the next end: GO and NOT GO.' : null;
  return { stop: owed, mind: dueBeforeDone(tool, need.dueOnDay) };
}
