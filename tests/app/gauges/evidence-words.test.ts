import { expect, it } from 'vitest';
import {
  conformityWords,
  errorWords,
  limitWords,
  resultWords,
  uncertaintyWords,
} from '@/app/gauges/[id]/_parts/evidence-words';
import type { GaugeEvidence } from '@/lib/gauge/evidence';
import { CalibrationSchema, type Feature } from '@/lib/shop/calibration';

const row: Feature = {
  ...{ feature: 'Pitch diameter', unit: 'um', asFoundError: 1.2, asLeftError: 1.2 },
  ...{ lowerLimit: -5, upperLimit: 5, expandedUncertainty: 1.6, coverageFactor: 2 },
};
const certificate = (over: Partial<Feature> = {}, rule = 'guarded-95'): GaugeEvidence => ({
  ...{ entryId: 'e', kind: 'calibration', onDay: '2026-03-02', atMs: 0, asFound: 'in', asLeft: 'in' },
  ...{ qualifies: true, againstToolId: null, file: null },
  calibration: CalibrationSchema.parse({
    ...{
      onDay: '2026-03-02',
      result: 'pass',
      dueOnDay: '2027-03-01',
      certificate: '',
      adjusted: false,
      rule,
    },
    features: [{ ...row, ...over }],
  }),
});

it('says what a certificate or a check came to', () => {
  expect(resultWords(certificate())).toBe('found in, left in');
  const { calibration } = certificate();
  const adjusted = calibration && { ...calibration, adjusted: true };
  expect(resultWords({ ...certificate(), asFound: 'out', calibration: adjusted })).toBe(
    'found out, adjusted, left in',
  );
  const check = { ...certificate(), kind: 'interim', calibration: null } as const;
  expect(resultWords(check)).toBe('passed');
  expect(resultWords({ ...check, asFound: 'out', qualifies: false })).toBe('did not pass, does not count');
});

it('prints figures as the certificate has them', () => {
  expect(errorWords(row, 1.2)).toBe('+1.2 µm');
  expect(errorWords(row, -0.5)).toBe('\u22120.5 µm');
  expect(errorWords(row, null)).toBe('not stated');
  expect(uncertaintyWords(row)).toBe('U 1.6 µm (k = 2)');
  expect(limitWords(row)).toBe('\u22125 to +5 µm');
  expect(limitWords({ ...row, lowerLimit: null })).toBe('up to +5 µm');
  expect(limitWords({ ...row, lowerLimit: null, upperLimit: null })).toBe('no limits stated');
});

// source: hand. 1.645·0.8 = 1.32: accepted up to 3.68, refused from 6.32 on, and nothing is proven between.
it('says what the rule decides, and which rule', () => {
  expect(conformityWords(certificate())).toContain('Decided: in, limits less 1.645 u');
  expect(conformityWords(certificate({ asFoundError: 4 }))).toContain('neither in nor out is proven');
  expect(conformityWords(certificate({ asFoundError: 7 }))).toContain('Decided: out');
  expect(conformityWords(certificate({ asFoundError: 4 }, 'simple'))).toContain(
    'in, uncertainty not counted',
  );
  expect(conformityWords(certificate({ expandedUncertainty: null }))).toBe('');
  expect(conformityWords({ calibration: null })).toBe('');
});
