import type { GaugeSettings } from '../shop/gauge-settings';

/**
 * How gauges are judged until the shop says otherwise: conformity proven to 95 % at a single limit, and an interval at the
 * end of which 95 in 100 are still within their limits. Source: the 95 % is the default of ISO 14253-1:2017, from memory;
 * for the interval common practice, no source.
 */
export const DEFAULT_GAUGE_SETTINGS: GaugeSettings = {
  decisionRule: 'guarded-95',
  targetReliability: 0.95,
  why: 'Not set by the shop: 95 % is the usual figure.',
};
