import { expect, it } from 'vitest';
import { normalCdf } from '@/lib/numeric/normal';
import { survivalReplacementAge } from '@/lib/replacement/survival-age';
import { weibullReplacementAge } from '@/lib/replacement/weibull-age';

// source: published, from memory. A reliability handbook's optimum replacement time: shape 2.5, scale 1000, costs 1 and 5: 493.0470.
it('the handbook’s optimum replacement time', () => {
  const { age } = weibullReplacementAge({ shape: 2.5, scale: 1000 }, { plannedCost: 1, failureCost: 5 });
  expect(Math.abs((age ?? 0) - 493.047)).toBeLessThan(1e-4);
});

// source: other-software. mpmath in 40 digits: age and cost per unit.
it.each([
  [2.5, 1000, 1, 5, 493.046957596634, 0.00346204273878927, 0.00563530248993014],
  [2, 1, 1, 2, 1.09079696963472, 2.18159393926944, 2.25675833419103],
  [2, 1, 1, 5, 0.510655224295446, 4.08524179436357, 5.64189583547756],
  [2, 1, 1, 10, 0.336451191255388, 6.05612144259699, 11.2837916709551],
  [2, 1, 1, 20, 0.230426798271809, 8.75621833432875, 22.5675833419103],
  [3, 1, 1, 10, 0.38245553114298, 3.94935029915019, 11.1984652172219],
  [1.5, 1, 1, 5, 0.675491992136462, 4.93129919158356, 5.53866083716236],
  [1.5, 1, 1, 10, 0.378144491573017, 8.30161632389635, 11.0773216743247],
  [1.2, 1, 1, 5, 1.59321211196962, 5.26860885241146, 5.31544023896904],
  [1.1, 1, 1, 10, 1.4627688392001, 10.2837797008513, 10.3636341262917],
  [2.2, 85, 18, 95, 40.9788962078792, 0.830355519627659, 1.26198714030463],
])('shape %d, scale %d, costs %d and %d', (shape, scale, plannedCost, failureCost, age, rate, run) => {
  const found = weibullReplacementAge({ shape, scale }, { plannedCost, failureCost });
  expect(Math.abs((found.age ?? 0) / age - 1)).toBeLessThan(1e-9);
  expect(Math.abs(found.costRate / rate - 1)).toBeLessThan(1e-12);
  expect(Math.abs(found.runCostRate / run - 1)).toBeLessThan(1e-12);
});

// source: formula. No finite age: C = c_f/(scale·Γ(1 + 1/shape)); Γ(2.25) by mpmath, Γ(3) = 2, Γ(1.5) = √π/2.
it.each([
  [1, 1, 10, 10],
  [0.8, 1, 10, 8.8261012105667],
  [0.5, 1, 10, 5],
  [2, 5, 5, 10 / Math.sqrt(Math.PI)],
])('shape %d, costs %d and %d: run to wear-out', (shape, plannedCost, failureCost, rate) => {
  const found = weibullReplacementAge({ shape, scale: 1 }, { plannedCost, failureCost });
  expect(found.age).toBeNull();
  expect(Math.abs(found.costRate / rate - 1)).toBeLessThan(1e-12);
});

// source: published. The trade's worked figures on a normal life (mean 1200, sd 0.3 of it, die 150): failure 150: run; 450: near 840;
// 1150: near 630. "Near" is read as 1 %.
it('Q40: replace at belongs to the job value, on the worked normal life', () => {
  const lasts = (age: number) => normalCdf((1200 - age) / 360) / normalCdf(1200 / 360);
  const at = (failureCost: number) =>
    survivalReplacementAge(lasts, { plannedCost: 150, failureCost }, 4440).age;
  expect(at(150)).toBeNull();
  expect(Math.abs((at(450) ?? 0) - 840)).toBeLessThan(8.4);
  expect(Math.abs((at(1150) ?? 0) - 630)).toBeLessThan(6.3);
});
