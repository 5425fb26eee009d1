import { expect, it } from 'vitest';
import { cdf, mean } from '@/lib/life/weibull';
import { cyclesAt, lifeBeyond } from '@/lib/replacement/life-posterior';
import { meanCycle } from '@/lib/replacement/weibull-age';

const lives = [
  { shape: 1.1, scale: 40 },
  { shape: 2.5, scale: 100 },
];
const posterior = {
  shape: Float64Array.from(lives, ({ shape }) => shape),
  scale: Float64Array.from(lives, ({ scale }) => scale),
  incidentRate: new Float64Array(2),
};

// source: identity. Without incidents the exact Weibull figures, draw by draw; Simpson in two dozen cells is good to 1 in 20 000.
it('gives every draw its own cycle', () => {
  const { exposure, failed } = cyclesAt(posterior, 60);
  const whole = cyclesAt(posterior, null);
  lives.forEach((life, k) => {
    expect((exposure[k] as number) / meanCycle(life, 60)).toBeCloseTo(1, 4);
    expect(failed[k]).toBeCloseTo(cdf(life, 60), 12);
    expect((whole.exposure[k] as number) / mean(life)).toBeCloseTo(1, 4);
    expect(whole.failed[k]).toBe(1);
    expect((lifeBeyond(posterior, k, 60) + meanCycle(life, 60)) / mean(life)).toBeCloseTo(1, 4);
  });
});

// source: formula. Log-logistic life of power 4 and median 100: S = 1/(1 + (t/m)⁴), mean m·(π/4)/sin(π/4).
it('has log-logistic lives in the draws that say so', () => {
  const tailed = {
    ...{ shape: Float64Array.of(4), scale: Float64Array.of(100), incidentRate: new Float64Array(1) },
    logLogistic: Uint8Array.of(1),
  };
  expect(cyclesAt(tailed, 60).failed[0]).toBeCloseTo(1 - 1 / (1 + 0.6 ** 4), 12);
  const mean = (100 * (Math.PI / 4)) / Math.sin(Math.PI / 4);
  expect((cyclesAt(tailed, null).exposure[0] as number) / mean).toBeCloseTo(1, 4);
});
