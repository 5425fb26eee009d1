import { expect, it } from 'vitest';
import { DEFAULT_GAUGE_SETTINGS } from '@/lib/gauge/default-gauge-settings';
import {
  GaugeSettingsSchema,
  SetGaugeSettingsInput,
  TARGET_LEAST,
  TARGET_MOST,
} from '@/lib/shop/gauge-settings';

// source: identity. What a shop starts from is what the door takes.
it('takes the defaults as they are', () => {
  expect(GaugeSettingsSchema.parse(DEFAULT_GAUGE_SETTINGS)).toEqual(DEFAULT_GAUGE_SETTINGS);
});

// source: hand. A target of a half decides nothing, one of certainty is met by no interval; a choice without a reason is none.
it('keeps the target within bounds, and asks why', () => {
  const set = (over: object) => GaugeSettingsSchema.safeParse({ ...DEFAULT_GAUGE_SETTINGS, ...over }).success;
  expect([0.5, 0.79, 1, 95, Number.NaN].map((targetReliability) => set({ targetReliability }))).toEqual(
    Array(5).fill(false),
  );
  expect([TARGET_LEAST, 0.9, TARGET_MOST].map((targetReliability) => set({ targetReliability }))).toEqual(
    Array(3).fill(true),
  );
  expect(set({ why: ' ' })).toBe(false);
  expect(set({ decisionRule: 'by-feel' })).toBe(false);
  expect(SetGaugeSettingsInput.safeParse({ settings: DEFAULT_GAUGE_SETTINGS }).success).toBe(false);
});
