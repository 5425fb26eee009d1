/**
 * How far the predictions reach, on shops whose truth is known:
 * npm run reach -- [shops of each age, default 60] [only studies whose name holds this] [seed: other shops of the same sort].
 * Every row: calibration error over five bins (equal width, equal count; the knowing forecaster's, which is chance alone),
 * Brier score beside that of a forecaster who knows the true figures and that of the shop's fixed count, and the share of
 * 80 % bands of whole ends that held, beside the same expected over the lives with its standard error over shops. As believed:
 * truth drawn from the model's own priors. Misjudged: it was not. The other sorts of shop (`reach-worlds.ts`) by name, or `every`.
 */
import { AGES, type ReachCase, type ReachStudy, reachCases, reachFigures } from '@/tests/support/reach-study';
import { WORLDS, type WorldName } from '@/tests/support/reach-worlds';

const shops = Number(process.argv[2] ?? 60);
const only = process.argv[3] ?? '';
const seed = process.argv[4] ?? '';
const READING_SHARE = 0.5;

function line(name: string, cases: readonly ReachCase[]): void {
  const f = reachFigures(cases);
  const percent = (share: number): string => `${(100 * share).toFixed(1)} %`.padStart(7);
  console.log(
    [
      name.padEnd(34),
      `n ${String(f.count).padStart(5)}`,
      `base ${percent(f.baseRate)}`,
      `calibration ${f.widthError.toFixed(3)} / ${f.countError.toFixed(3)} (knowing ${f.knowingError.toFixed(3)})`,
      `Brier ${f.brier.toFixed(4)}, knowing ${f.knowingBrier.toFixed(4)}, fixed count ${f.fixedCountBrier.toFixed(4)}`,
      `above knowing ${percent(f.excess)} (expected ${percent(f.expectedExcess)})`,
      `in band ${percent(f.inBand)} (short ${percent(f.short)}, beyond ${percent(f.beyond)})`,
      `expected ${percent(f.holds)} ± ${percent(f.holdsError).trim()}`,
    ].join(' | '),
  );
}

function study(name: string, of: Pick<ReachStudy, 'law' | 'truth' | 'readingShare' | 'useReadings'>): void {
  if (only !== 'every' && !name.includes(only)) return;
  const all: ReachCase[] = [];
  for (const [age, log] of Object.entries(AGES)) {
    const cases = reachCases({ ...of, ...log, shops, seed });
    line(`${name}, ${age}`, cases);
    all.push(...cases);
  }
  line(`${name}, all`, all);
}

/** The two that the targets are about, and any other that is asked for. */
function worldsToStudy(): WorldName[] {
  const all = Object.keys(WORLDS) as WorldName[];
  return all.filter(
    (name, i) =>
      i < 2 || only === 'every' || (only !== '' && `weibull, ${name} lognormal, ${name}`.includes(only)),
  );
}

for (const law of ['weibull', 'lognormal'] as const)
  for (const truth of worldsToStudy()) study(`${law}, ${truth}`, { law, truth });
for (const useReadings of [false, true])
  study(`readings ${useReadings ? 'used' : 'left out'}`, {
    ...{ law: 'weibull', truth: 'as-believed', readingShare: READING_SHARE, useReadings },
  });
