import type { Ensemble } from '../ensemble/build-ensemble';
import {
  bandEnds,
  type EndsLeft,
  endsLeft,
  likelyEnds,
  probabilityFinishes,
  safeEnds,
} from '../ensemble/forecast';
import { type EstimateReasons, reasonsFor } from '../ensemble/reasons';
import type { Finding } from '../reading/reading';
import { exposureOfEnd } from '../wear/connection-exposure';
import { isEdgeKind, isUnknownStart } from './edge-histories';
import { requiredProbability } from './plan-facts';
import type { ShopFacts } from './shop-facts';

/** What is about to be cut, in shop words. */
export interface CutInHand {
  readonly connectionId: string;
  readonly materialId: string;
}

/** What a tool has left, in ends of what is about to be cut, and what that rests on. */
export interface ToolForecast {
  readonly toolId: string;
  readonly cut: CutInHand;
  /** Finished as surely as the shop asks of ordinary work. */
  readonly safeEnds: number;
  readonly likelyEnds: number;
  /** The 80 % band of whole ends. */
  readonly lowEnds: number;
  readonly highEnds: number;
  readonly reasons: EstimateReasons;
  /** What was last seen of the present edge; already counted in the figures. */
  readonly lastLook: Finding | undefined;
  /** False when nobody knows what this edge had cut before it was entered here: the band is then too hopeful. */
  readonly startKnown: boolean;
  /** The most whole ends that it finishes in at least this share of the futures. */
  safeEndsAt(confidence: number): number;
  /** Share of the futures in which it finishes so many ends. */
  probabilityFinishes(ends: number): number;
}

/** What one tool has left; out for regrind, what it will have when it is back. Undefined where it has no edge, or the connection or the material has no row. */
export function toolForecast(
  facts: ShopFacts,
  ensemble: Ensemble,
  { toolId, cut }: { toolId: string; cut: CutInHand },
): ToolForecast | undefined {
  const tool = facts.tools.find((known) => known.id === toolId);
  const connection = facts.connections.find((known) => known.id === cut.connectionId);
  const reasons = reasonsFor(ensemble, toolId, cut.materialId);
  if (tool === undefined || connection === undefined || reasons === undefined || !isEdgeKind(tool.role))
    return undefined;
  const operation = tool.role === 'blade' ? 'cone' : 'thread';
  const exposurePerEnd = exposureOfEnd({ operation, connection });
  const left = endsLeft(ensemble, toolId, {
    exposurePerEnd,
    materialId: cut.materialId,
    dry: false,
    rework: false,
  });
  if (left === undefined) return undefined;
  const edges = facts.edges.filter((edge) => edge.toolId === toolId);
  const edgeNo = tool.state === 'regrind' ? edges.length + 1 : edges.length;
  const present = edges.find((edge) => edge.edgeNo === edgeNo);
  const lastLook = present?.readings?.at(-1)?.finding;
  return {
    toolId,
    cut,
    reasons,
    lastLook,
    startKnown: !isUnknownStart(tool, { edgeNo }),
    ...answers(left, requiredProbability(facts.shop, 'ordinary')),
  };
}

function answers(left: EndsLeft, required: number) {
  const { low, high } = bandEnds(left);
  return {
    safeEnds: safeEnds(left, required),
    likelyEnds: likelyEnds(left),
    lowEnds: low,
    highEnds: high,
    safeEndsAt: (confidence: number) => safeEnds(left, confidence),
    probabilityFinishes: (ends: number) => probabilityFinishes(left, ends).probability,
  };
}
