/**
 * Speed of the life engine, as ratios and times of one run: npx tsx tests/bench/life.ts (needs Rscript with survival).
 * R is warm: one process, the timed fits come after fits that are thrown away.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { buildEnsemble } from '@/lib/ensemble/build-ensemble';
import { endsLeft, likelyEnds } from '@/lib/ensemble/forecast';
import { fitLife } from '@/lib/life/fit-life';
import { fitWeibull } from '@/lib/life/fit-weibull';
import type { EdgeHistory } from '@/lib/life/observation';
import { defaultLifePriors } from '@/lib/life/priors';
import { streamOfKey } from '@/lib/numeric/random-stream';
import { computeOutlook } from '@/lib/outlook/outlook';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import { shopFutures } from '@/lib/outlook/shop-futures';
import { edgeFacts, use } from '@/tests/support/edge-facts';
import { cut, edge } from '@/tests/support/edge-histories';
import { shopRecord, toolFacts } from '@/tests/support/shop-record';
import { inHand } from '@/tests/support/small-shop';

const REPEATS = 40;

/** Lives of shape 2 and scale 1000, cut short at random ages up to 2000. */
function sample(count: number): { time: number[]; worn: number[] } {
  const random = streamOfKey(`bench:${count}`);
  const rows = Array.from({ length: count }, () => {
    const [life, limit] = [1000 * Math.sqrt(-Math.log(random())), 2000 * random()];
    return { time: Number(Math.min(life, limit).toPrecision(9)), worn: life <= limit ? 1 : 0 };
  });
  return { time: rows.map((row) => row.time), worn: rows.map((row) => row.worn) };
}

/** Median milliseconds of one fit by survreg in a warm R process, and its log-likelihood. */
function timeInR(data: { time: number[]; worn: number[] }): { ms: number; logLik: number } {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  const file = join(folder, 'lives.csv');
  writeFileSync(file, `time,worn\n${data.time.map((time, i) => `${time},${data.worn[i]}`).join('\n')}\n`);
  const script = `suppressMessages(library(survival)); d <- read.csv(commandArgs(TRUE)[1])
    one <- function() { t <- proc.time()[["elapsed"]]; n <- ${Math.max(1, Math.round(2000 / data.time.length))}
      for (i in 1:n) f <<- survreg(Surv(time, worn) ~ 1, data = d, dist = "weibull"); (proc.time()[["elapsed"]] - t) / n * 1000 }
    for (i in 1:5) one(); cat(median(replicate(${REPEATS}, one())), sprintf("%.12f", f$loglik[1]))`;
  const output = execFileSync('Rscript', ['-e', script, file], { encoding: 'utf8' });
  rmSync(folder, { recursive: true });
  const [ms = Number.NaN, logLik = Number.NaN] = output.trim().split(' ').map(Number);
  return { ms, logLik };
}

function medianMs(work: () => unknown, inner = 1, repeats = REPEATS): number {
  for (let i = 0; i < Math.min(5, repeats) * inner; i++) work();
  const times = Array.from({ length: repeats }, () => {
    const start = performance.now();
    for (let i = 0; i < inner; i++) work();
    return (performance.now() - start) / inner;
  });
  return times.sort((a, b) => a - b)[Math.floor(repeats / 2)] ?? Number.NaN;
}

for (const count of [20, 100, 1000, 100_000]) {
  const data = sample(count);
  const wornAt = Float64Array.from(data.time.filter((_, i) => data.worn[i] === 1));
  const workingAt = Float64Array.from(data.time.filter((_, i) => data.worn[i] === 0));
  const ours = medianMs(() => fitWeibull({ wornAt, workingAt }), Math.max(1, Math.round(20_000 / count)));
  const fit = fitWeibull({ wornAt, workingAt });
  const r = timeInR(data);
  const miss = fit.ok ? Math.abs(fit.logLik - r.logLik) / Math.max(1, Math.abs(r.logLik)) : Number.NaN;
  console.log(
    `fitWeibull, ${count} lives: ${ours.toFixed(4)} ms; survreg ${r.ms.toFixed(3)} ms; ratio ${(r.ms / ours).toFixed(0)}; ` +
      `log-likelihoods differ by ${miss.toExponential(1)} (relative)`,
  );
}

/** A shop of so many tools of both kinds, a third of them still cutting, in six sizes and five materials. */
function shop(tools: number): EdgeHistory[] {
  const random = streamOfKey('bench-shop');
  return Array.from({ length: tools }, (_, i): EdgeHistory => {
    const kind = i % 2 === 0 ? 'die' : 'blade';
    const odIn = [0.25, 0.375, 0.5625, 0.75, 1][i % 5] ?? 0.375;
    const typical = kind === 'die' ? 1200 : 3800;
    const before = Array.from({ length: 40 }, () =>
      cut((typical / 40) * random(), {
        materialId: ['ref', '2507', '625', 'ti', '316L'][Math.floor(random() * 5)] ?? 'ref',
        dry: random() < 0.05,
      }),
    );
    const worn = random() < 0.6;
    return edge(`T${i}`, {
      kind,
      odIn,
      partId: `${kind}-${odIn}`,
      regrinds: kind === 'blade' ? i % 3 : 0,
      before,
      during: worn ? [cut(typical / 30)] : [],
      end: worn ? 'worn' : 'in-service',
    });
  });
}

function posteriorAndEnsemble(histories: readonly EdgeHistory[], inService: readonly EdgeHistory[]): number {
  const materials = [
    ['2507', 2.5],
    ['625', 4],
    ['ti', 1.5],
    ['316L', 0.8],
  ].map(([id, factor]) => ({ materialId: String(id), factor: Number(factor) }));
  const fitOf = (kind: 'die' | 'blade') => {
    const fit = fitLife({
      kind,
      histories,
      priors: defaultLifePriors(kind, { referenceMaterialId: 'ref', materials }),
    });
    if (!fit.ok) throw new Error(fit.sentence);
    return fit;
  };
  const ensemble = buildEnsemble({
    kinds: { die: fitOf('die'), blade: fitOf('blade') },
    tools: inService.map(inHand),
    parts: [],
  });
  let sum = 0;
  for (const { toolId } of inService) {
    const left = endsLeft(ensemble, toolId, {
      exposurePerEnd: 10.5,
      materialId: '2507',
      dry: false,
      rework: false,
    });
    sum += left === undefined ? 0 : likelyEnds(left);
  }
  return sum;
}

const histories = shop(500);
const asIfCutting = histories.map((history): EdgeHistory => ({ ...history, during: [], end: 'in-service' }));
console.log(
  `fit both kinds, 2,048 draws, 500 tools forecast: ${medianMs(() => posteriorAndEnsemble(histories, asIfCutting)).toFixed(0)} ms`,
);
const many = shop(10_000);
const start = performance.now();
const priors = defaultLifePriors('die', { referenceMaterialId: 'ref', materials: [] });
const fit = fitLife({
  kind: 'die',
  histories: many.map((history): EdgeHistory => ({ ...history, kind: 'die', partId: `die-${history.odIn}` })),
  priors,
});
console.log(
  `fitLife, 10,000 edges of 40 rows: ${(performance.now() - start).toFixed(0)} ms, ${fit.ok ? fit.stoppedBy : fit.sentence}`,
);

/** 2,000 tools as a shop's record: what a page after one logged row waits for, with the other kind's futures carried over. */
const FEW = 5;
const facts = benchShop(2000);
const first = shopFutures(facts);
const moved = {
  ...facts,
  edges: facts.edges.map((edge, i) => (i === 0 ? { ...edge, use: [...edge.use, ...edge.use] } : edge)),
};
console.log(
  `outlook of 2,000 tools after one row: ${medianMs(() => computeOutlook(moved, shopFutures(moved).ensemble), 1, FEW).toFixed(0)} ms afresh, ` +
    `${medianMs(() => computeOutlook(moved, shopFutures(moved, first).ensemble), 1, FEW).toFixed(0)} ms with what has not moved`,
);

function benchShop(tools: number): ShopFacts {
  const random = streamOfKey('bench-outlook');
  const ids = Array.from(
    { length: tools },
    (_, i) => ({ id: `T${i}`, role: i % 2 === 0 ? 'die' : 'blade' }) as const,
  );
  return shopRecord({
    tools: ids.map(({ id, role }) => toolFacts({ id, role })),
    edges: ids.map(({ id }) =>
      edgeFacts(id, {
        end: random() < 0.3 ? 'worn' : null,
        use: [use(1 + Math.floor(100 * random()))],
        lastUse: use(1),
      }),
    ),
  });
}
