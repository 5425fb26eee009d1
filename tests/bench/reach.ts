/**
 * How far the predictions reach, on shops whose truth is known:
 * npm run reach -- [shops of each age, default 60] [only studies whose name holds this] [seed: other shops of the same sort].
 * Every row: calibration error over five bins (equal width, equal count; the knowing forecaster's, which is chance alone),
 * Brier score beside that of a forecaster who knows the true figures and that of the shop's fixed count, and the share of
 * 80 % bands of whole ends that held. As believed: truth drawn from the model's own priors. Misjudged: it was not.
 */
import { AGES, type ReachCase, type ReachStudy, reachCases, reachFigures } from '@/tests/support/reach-study';

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
    ].join(' | '),
  );
}

function study(name: string, of: Pick<ReachStudy, 'law' | 'truth' | 'readingShare' | 'useReadings'>): void {
  if (!name.includes(only)) return;
  const all: ReachCase[] = [];
  for (const [age, log] of Object.entries(AGES)) {
    const cases = reachCases({ ...of, ...log, shops, seed });
    line(`${name}, ${age}`, cases);
    all.push(...cases);
  }
  line(`${name}, all`, all);
}

for (const law of ['weibull', 'lognormal'] as const)
  for (const truth of ['as-believed', 'misjudged'] as const) study(`${law}, ${truth}`, { law, truth });
for (const useReadings of [false, true])
  study(`readings ${useReadings ? 'used' : 'left out'}`, {
    ...{ law: 'weibull', truth: 'as-believed', readingShare: READING_SHARE, useReadings },
  });
