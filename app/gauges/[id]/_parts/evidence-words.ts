import { percent } from '@/app/_shared/format';
import { decideConformity } from '@/lib/gauge/decision-rule';
import type { GaugeEvidence } from '@/lib/gauge/evidence';
import { gaugeUnitLabel } from '@/lib/gauge/gauge-unit';
import type { Feature } from '@/lib/shop/calibration';

const FOUND = { in: 'in', out: 'out', 'not-taken': 'not stated' } as const;

/** What a calibration or a check said, in one line. */
export function resultWords({ kind, asFound, asLeft, qualifies, calibration }: GaugeEvidence): string {
  if (kind === 'interim')
    return `${asFound === 'in' ? 'passed' : 'did not pass'}${qualifies ? '' : ', does not count'}`;
  const adjusted = calibration?.adjusted === true ? ', adjusted' : '';
  return `found ${FOUND[asFound]}${adjusted}, left ${asLeft}`;
}

/** An error with its unit and a sign that can be read: "+1.2 µm"; the uncertainty beside it. */
export function errorWords(row: Feature, error: number | null): string {
  if (error === null) return 'not stated';
  const sign = error > 0 ? '+' : error < 0 ? '\u2212' : '';
  return `${sign}${Math.abs(error)} ${gaugeUnitLabel(row.unit)}`;
}

/** U as printed on the certificate: "U 1.6 µm (k = 2)". */
export function uncertaintyWords(row: Feature): string {
  const { expandedUncertainty: U, coverageFactor: k } = row;
  return U === null ? 'U not stated' : `U ${U} ${gaugeUnitLabel(row.unit)} (k = ${k})`;
}

/** The limits of the error: "−5 to +5 µm", or the one there is. */
export function limitWords({ lowerLimit, upperLimit, unit }: Feature): string {
  const label = gaugeUnitLabel(unit);
  const signed = (limit: number) => `${limit > 0 ? '+' : limit < 0 ? '\u2212' : ''}${Math.abs(limit)}`;
  if (lowerLimit !== null && upperLimit !== null)
    return `${signed(lowerLimit)} to ${signed(upperLimit)} ${label}`;
  if (upperLimit !== null) return `up to ${signed(upperLimit)} ${label}`;
  return lowerLimit === null ? 'no limits stated' : `from ${signed(lowerLimit)} ${label}`;
}

const DECISION = { accept: 'in', reject: 'out', between: 'neither in nor out is proven' } as const;
const RULE = {
  simple: 'uncertainty not counted',
  guarded: 'limits less U',
  'guarded-95': 'limits less 1.645 u',
} as const;

/** How sure the figures make it, by the rule kept with them. Empty where there is nothing to decide from. */
export function conformityWords({ calibration }: Pick<GaugeEvidence, 'calibration'>): string {
  const row = calibration?.features?.[0];
  const error = row?.asFoundError ?? row?.asLeftError ?? null;
  if (row === undefined || error === null || row.expandedUncertainty === null) return '';
  if (row.lowerLimit === null && row.upperLimit === null) return '';
  const { expandedUncertainty, coverageFactor } = row;
  const limits = { lower: row.lowerLimit ?? undefined, upper: row.upperLimit ?? undefined };
  const rule = calibration?.rule ?? 'simple';
  const { decision, probability } = decideConformity(
    { error, expandedUncertainty, coverageFactor },
    limits,
    rule,
  );
  return `Decided: ${DECISION[decision]}, ${RULE[rule]}. Chance to be within the limits ${percent(probability)}.`;
}
