import { invariant } from '../invariant';

/** What a dropper can give: water from a standard dropper 18 to 22, threading oils 34 to 68. Outside these it is a slip. */
export const DROPS_PER_ML_RANGE = { low: 5, high: 200 } as const;

/** m/s². Standard gravity. */
const GRAVITY = 9.806_65;

/**
 * Drops to the millilitre from a count into a measure: drops ÷ mL. For the ten-second check "count 100 drops into a cup".
 * Domain: both above 0.
 * @example dropsPerMl({ drops: 100, volumeMl: 2.5 }) // => 40
 */
export function dropsPerMl({ drops, volumeMl }: { drops: number; volumeMl: number }): number {
  invariant(drops > 0 && volumeMl > 0, 'dropsPerMl requires drops and a volume above 0');
  return drops / volumeMl;
}

/**
 * The same from a scale: drops × density ÷ mass. For the shop that has a letter scale and no measure.
 * Domain: all above 0; mass in g, density in g/mL.
 * @example dropsPerMlByMass({ drops: 20, massG: 1, densityGPerMl: 1 }) // => 20
 */
export function dropsPerMlByMass(count: { drops: number; massG: number; densityGPerMl: number }): number {
  const { drops, massG, densityGPerMl } = count;
  invariant(drops > 0 && massG > 0 && densityGPerMl > 0, 'dropsPerMlByMass requires figures above 0');
  return (drops * densityGPerMl) / massG;
}

/**
 * Volume of a drop hanging from a round tip, mL, after Tate: V = 2π r γ f ÷ (ρ g), with f the share of the hanging drop
 * that falls (0.6 to 0.7 for droppers, after Harkins and Brown; from memory). Says whether a count is likely.
 * Domain: all above 0; tip radius in mm, surface tension in mN/m, density in g/mL.
 */
export function tateDropMl(drop: {
  tipRadiusMm: number;
  surfaceTensionMnPerM: number;
  densityGPerMl: number;
  fallingShare?: number;
}): number {
  const { tipRadiusMm, surfaceTensionMnPerM, densityGPerMl, fallingShare = 1 } = drop;
  invariant(
    tipRadiusMm > 0 && surfaceTensionMnPerM > 0 && densityGPerMl > 0 && fallingShare > 0,
    'tateDropMl requires figures above 0',
  );
  // mm × mN/m = 1e-6 N; g/mL × m/s² = 1e3 N/m³; m³ = 1e6 mL.
  return (
    ((2 * Math.PI * tipRadiusMm * surfaceTensionMnPerM * fallingShare) / (densityGPerMl * GRAVITY)) * 1e-3
  );
}
