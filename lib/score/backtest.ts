import { ensembleOver } from '../ensemble/build-ensemble';
import { bandEnds, endsLeft, probabilityFinishes } from '../ensemble/forecast';
import { type KindDraws, kindDrawsOf } from '../ensemble/kind-draws';
import type { FirstGuess } from '../life/first-guess';
import { fitLife } from '../life/fit-life';
import type { ExposurePart } from '../life/observation';
import type { LifePriors } from '../life/priors';
import type { EdgeKind } from '../shop/vocabulary';
import { type ChangeCase, type Changing, changeCase, type PartRates, RowSizes } from './change-case';
import { fixedCountSays } from './fixed-count';
import type { LogEvent, RowCut } from './log-event';
import type { Prediction } from './prediction';
import { edgeKey, exposureOf, historyOf, type ReplayedEdge, replay } from './replayed-edge';
import { type RowSince, settled, settleToolFinishes } from './settle-prediction';

export interface BacktestInput {
  /** In the order in which they happened. */
  readonly events: readonly LogEvent[];
  readonly priors: Readonly<Record<EdgeKind, LifePriors>>;
  readonly guesses?: Readonly<Record<EdgeKind, readonly FirstGuess[]>>;
  /** Ends after which the shop changes an edge of this part; undefined where it has no such rule. */
  readonly changeAtEnds?: (partId: string) => number | undefined;
  /** What a change of an edge of a part costs: where that is asked, each case says whether to change first. */
  readonly changing?: (partId: string) => Changing | undefined;
  readonly drawCount?: number;
  /** Rows at the start of the log that are learnt from, but not predicted. Default 0. */
  readonly warmUpRows?: number;
  /** False: as if nobody had ever looked at an edge. */
  readonly useReadings?: boolean;
}

/** A prediction that the product would have made, with the row that it was made for and what the edge had cut by then. */
export interface BacktestCase {
  readonly prediction: Prediction;
  readonly row: RowCut;
  readonly exposure: readonly ExposurePart[];
  /** Edges found worn by then, of any part of the kind. */
  readonly wornSoFar: number;
  /** Changing the edge before the row; only where costs of a change are given. */
  readonly change?: ChangeCase;
}

/** The futures of a kind as last fitted, with what is worked out of them once. */
interface Fitted {
  readonly draws: KindDraws | undefined;
  rowsLeft: number;
  /** Long-run cost of wear by part. */
  readonly rates: PartRates;
}

/**
 * Replays a shop's log: at every row, what would have been said of the edge finishing the ends that were asked of it, from
 * only what was known when the row began, then settled by what followed. Fitted anew when an edge has ended and whenever
 * the log has grown by a hundredth since: what still cuts is evidence too.
 * Source: formula (rolling-origin evaluation).
 */
export function backtest(input: BacktestInput): BacktestCase[] {
  const edges = new Map<string, ReplayedEdge>();
  const made: { said: BacktestCase; at: number; key: string }[] = [];
  const fits = new Map<EdgeKind, Fitted>();
  const sizes = new RowSizes();
  let row = 0;
  for (const event of input.events) {
    const known = edges.get(edgeKey(event));
    const warm = event.type !== 'cut' || row++ >= (input.warmUpRows ?? 0);
    if (event.type === 'cut' && event.opening !== true && warm && known?.began.startKnown === true) {
      const { kind } = known.began;
      const fit: Fitted = fits.get(kind) ?? {
        draws: fitted(input, kind, edges),
        rowsLeft: rowsOf(edges, kind) * GROWTH,
        rates: new Map(),
      };
      fits.set(kind, fit);
      const said = predict(input, fit, known, { row: event, workEnds: sizes.next(event, kind) });
      if (said !== undefined) made.push({ said, at: known.rows.length, key: edgeKey(event) });
      fit.rowsLeft--;
      if (fit.rowsLeft < 0) fits.delete(kind);
    }
    if (event.type === 'read' && input.useReadings === false) continue;
    const edge = replay(edges, event);
    if (event.type === 'cut' && event.opening !== true) sizes.add(event, edge.began.kind);
    if (event.type === 'ended') fits.delete(edge.began.kind);
  }
  return made.map(({ said, at, key }) => {
    const edge = edges.get(key) as ReplayedEdge;
    const since = { rows: rowsSince(said.row, edge.rows.slice(at)), ended: edge.ended };
    const settlement = settleToolFinishes(said.prediction.what.ends ?? 0, since);
    return { ...said, prediction: settled(said.prediction, settlement) };
  });
}

/** The rows from a prediction on, told apart from work that it was not about. Source: hand (a rule of this project). */
function rowsSince(about: RowCut, rows: readonly RowCut[]): RowSince[] {
  return rows.map((row) => ({
    ...row,
    otherWork: row.connectionId !== about.connectionId || row.materialId !== about.materialId,
  }));
}

/** Share by which the log may grow before the next fit. */
const GROWTH = 0.01;
function rowsOf(edges: ReadonlyMap<string, ReplayedEdge>, kind: EdgeKind): number {
  let rows = 0;
  for (const edge of edges.values()) if (edge.began.kind === kind) rows += edge.rows.length;
  return rows;
}

/** How many draws a replay takes: enough for a probability to a hundredth. */
const DRAWS = 1024;

function fitted(
  input: BacktestInput,
  kind: EdgeKind,
  edges: ReadonlyMap<string, ReplayedEdge>,
): KindDraws | undefined {
  const histories = [...edges.values()].filter((edge) => edge.began.startKnown).map(historyOf);
  const guesses = input.guesses?.[kind] ?? [];
  const fit = fitLife({ kind, histories, priors: input.priors[kind], guesses });
  return fit.ok ? kindDrawsOf(fit, input.drawCount ?? DRAWS) : undefined;
}

function predict(
  input: BacktestInput,
  fit: Fitted,
  edge: ReplayedEdge,
  { row, workEnds }: { row: RowCut; workEnds: number },
): BacktestCase | undefined {
  const { draws } = fit;
  if (draws === undefined) return undefined;
  const { toolId, edgeNo, kind, partId, odIn, regrinds } = edge.began;
  const exposure = exposureOf(edge);
  const tool = { toolId, kind, partId, odIn, regrinds, exposure, readings: edge.readings };
  const { drawCount } = draws;
  const ensemble = ensembleOver(new Map([[kind, draws]]), { tools: [tool], parts: [], drawCount });
  const left = endsLeft(ensemble, toolId, row);
  if (left === undefined) return undefined;
  const ends = row.askedEnds ?? row.ends;
  const changeAtEnds = input.changeAtEnds?.(partId);
  const usedEnds = edge.rows.reduce((sum, past) => sum + past.ends, 0);
  const prediction: Prediction = {
    id: `${edge.rows.length}:${edgeKey(row)}`,
    madeAtMs: row.atMs,
    kind: 'tool-finishes',
    probability: probabilityFinishes(left, ends).probability,
    what: { toolId, edgeNo, ends, connectionId: row.connectionId, materialId: row.materialId },
    band: bandEnds(left),
    ...(changeAtEnds === undefined
      ? {}
      : { fixedCount: fixedCountSays({ usedEnds, jobEnds: ends, changeAtEnds }) }),
    settled: null,
  };
  const said = { prediction, row, exposure, wornSoFar: draws.fit.counts.worn };
  if (input.changing === undefined) return said;
  const changing = input.changing(partId);
  const asked = { row, workEnds, usedEnds, changeAtEnds, changing };
  return { ...said, change: changeCase(ensemble, tool, asked, fit.rates) };
}
