import { number, numberOrNull, text } from '@/app/_server/form-fields';
import type { AsFound } from '@/lib/shop/calibration';

/** What a calibration can come to, as one answer: how it was found, whether it was adjusted, how it was left. */
export const OUTCOME = {
  'in-left': { result: 'pass', asFound: 'in', adjusted: false },
  'in-adjusted': { result: 'pass', asFound: 'in', adjusted: true },
  'out-adjusted': { result: 'pass', asFound: 'out', adjusted: true },
  'not-stated': { result: 'pass', asFound: 'not-taken', adjusted: undefined },
  failed: { result: 'fail', asFound: 'out', adjusted: false },
} as const satisfies Record<
  string,
  { result: 'pass' | 'fail'; asFound: AsFound; adjusted: boolean | undefined }
>;
export type Outcome = keyof typeof OUTCOME;

/** The outcome that was ticked. */
export function outcomeOf(value: string): Outcome | undefined {
  return (Object.keys(OUTCOME) as Outcome[]).find((key) => key === value);
}

const FIGURES = ['asFoundError', 'asLeftError', 'lowerLimit', 'upperLimit', 'expandedUncertainty'] as const;

/**
 * The figures of the certificate as typed; null where no error was, whatever limits the form proposed. What is left empty
 * is not stated.
 */
export function figuresOfForm(form: FormData): Record<string, unknown> | null {
  if (text(form, 'asFoundError') === '' && text(form, 'asLeftError') === '') return null;
  return {
    feature: text(form, 'feature'),
    unit: text(form, 'unit'),
    ...Object.fromEntries(FIGURES.map((name) => [name, numberOrNull(form, name)])),
    coverageFactor: number(form, 'coverageFactor'),
  };
}
