import type { DecisionRule } from '@/lib/shop/calibration';

/** When an error counts as in, by each rule: for a choice, and for a sentence that begins “in when the error lies”. */
export const DECISION_RULE_WORDS: Record<DecisionRule, string> = {
  'guarded-95': 'within the limits less 1.645 u: 95 % sure',
  guarded: 'within the limits less U',
  simple: 'within the limits, uncertainty not counted',
};

export const DECISION_RULE_OPTIONS = (['guarded-95', 'guarded', 'simple'] as const).map((value) => ({
  value,
  label: DECISION_RULE_WORDS[value],
}));
