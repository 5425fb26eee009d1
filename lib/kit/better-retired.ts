/**
 * How often a split die may be opened or closed before it is better retired: adjusting follows wear, it gives no life back.
 * Source: common practice, no source.
 */
const ADJUSTMENTS_MOST = 3;

/**
 * Whether a die has been adjusted so often that it is better retired. For the head of a die's page.
 * Formula: adjustments > 3. Domain: adjustments 0 or more. Source: common practice, no source.
 * @example isBetterRetired(3) // => false
 * @example isBetterRetired(4) // => true
 */
export function isBetterRetired(adjustments: number): boolean {
  return adjustments > ADJUSTMENTS_MOST;
}
