import type { Feature, GaugeUnit } from '../shop/calibration';

/** The units as they are printed, and the one each kind is compared in with its factor. */
const UNIT: Record<GaugeUnit, { readonly label: string; readonly base: string; readonly factor: number }> = {
  mm: { label: 'mm', base: 'um', factor: 1000 },
  um: { label: 'µm', base: 'um', factor: 1 },
  in: { label: 'in', base: 'um', factor: 25_400 },
  deg: { label: '°', base: 'deg', factor: 1 },
  'N.m': { label: 'N·m', base: 'N.m', factor: 1 },
  '%': { label: '%', base: '%', factor: 1 },
};

/**
 * A unit as it is printed.
 * @example gaugeUnitLabel('um') // => "µm"
 */
export function gaugeUnitLabel(unit: GaugeUnit | BaseUnit): string {
  return UNIT[unit].label;
}

/** The units that errors are compared and plotted in: lengths in µm. */
export type BaseUnit = 'um' | 'deg' | 'N.m' | '%';

/** A row of a certificate with all of its figures in one comparable unit: lengths in µm. */
export type BaseFeature = Omit<Feature, 'unit'> & { readonly unit: BaseUnit };

/**
 * A feature in its comparable unit: an inch is 25 400 µm exactly. For the drift of a gauge that one laboratory certifies in
 * inches and another in micrometres. Source: published. The international yard and pound agreement of 1959, 1 in = 25.4 mm.
 */
export function inBaseUnit(row: Feature): BaseFeature {
  const { base, factor } = UNIT[row.unit];
  const scaled = (value: number | null) => (value === null ? null : value * factor);
  return {
    ...row,
    unit: base as BaseUnit,
    asFoundError: scaled(row.asFoundError),
    asLeftError: scaled(row.asLeftError),
    lowerLimit: scaled(row.lowerLimit),
    upperLimit: scaled(row.upperLimit),
    expandedUncertainty: scaled(row.expandedUncertainty),
  };
}
