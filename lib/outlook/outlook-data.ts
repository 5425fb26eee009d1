import { ensembleOver } from '../ensemble/build-ensemble';
import type { KindDraws } from '../ensemble/kind-draws';
import { EDGE_KINDS } from '../shop/vocabulary';
import { type Outlook, type OutlookAnswers, outlookOver } from './outlook';
import { partsOnOffer, toolsInHand } from './tools-in-hand';

/** An outlook as plain data and arrays of figures, to be handed from one process to another. */
export interface OutlookData {
  readonly answers: OutlookAnswers;
  readonly drawCount: number;
  readonly kinds: readonly KindDraws[];
  readonly lives: ReadonlyMap<string, Float64Array>;
}

/**
 * Takes an outlook apart, with the lives of all tools in hand worked out. What only a fit needs (its edges, one by one)
 * stays behind. For the process that works figures out.
 */
export function packOutlook({ ensemble, forecast: _, ...answers }: Outlook): OutlookData {
  for (const { toolId } of toolsInHand(answers.facts)) ensemble.residualLife(toolId);
  const kinds = EDGE_KINDS.flatMap((kind): KindDraws[] => {
    const draws = ensemble.draws(kind);
    if (draws === undefined) return [];
    const { model: _edges, logLogistic: _other, ...fit } = draws.fit;
    return [{ ...draws, fit }];
  });
  return { answers, drawCount: ensemble.drawCount, kinds, lives: ensemble.lives };
}

/** Puts an outlook together again: every answer is the one that was packed, to the last bit. */
export function unpackOutlook({ answers, drawCount, kinds, lives }: OutlookData): Outlook {
  const byKind = new Map(kinds.map((draws) => [draws.fit.kind, draws]));
  const { facts } = answers;
  const hands = { tools: toolsInHand(facts), parts: partsOnOffer(facts), drawCount };
  return outlookOver(ensembleOver(byKind, hands, lives), answers);
}
