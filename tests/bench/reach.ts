import { reachCases, reachFigures } from '@/tests/support/reach-study';

const N = Number(process.argv[2] ?? 1);
for (const law of ['weibull', 'lognormal'] as const)
  for (const [age, shops, jobs, skip] of [
    ['young', 60 * N, 30, 0],
    ['old', 10 * N, 350, 250],
  ] as const) {
    const t = performance.now();
    const c = reachCases({ law, shops, jobs, skip });
    const f = reachFigures(c);
    console.log(
      law,
      age,
      (performance.now() - t) | 0,
      'ms',
      JSON.stringify(f, (k, v) => (typeof v === 'number' ? Number(v.toFixed(4)) : v)),
    );
  }
