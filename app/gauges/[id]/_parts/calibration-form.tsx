'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import { type FormState, fieldError, typedOr } from '@/app/_shared/form/form-state';
import { Choice, Field, NumberField, Select, SubmitButton } from '@/app/_shared/ui';
import { calibrateGaugeAction } from '../actions';

export interface FigureDefaults {
  readonly feature: string;
  readonly unit: string;
  readonly lowerLimit: string;
  readonly upperLimit: string;
  readonly expandedUncertainty: string;
}

interface CalibrationFormProps {
  readonly toolId: string;
  readonly stamp: { entryId: string; deviceAtMs: number };
  readonly today: string;
  /** The day that the interval in force proposes, counted from today. */
  readonly proposedDueDay: string;
  readonly laboratory: string;
  readonly figures: FigureDefaults;
}

const OUTCOMES = [
  { value: 'in-left', label: 'found in, left as it was' },
  { value: 'in-adjusted', label: 'found in, then adjusted' },
  {
    value: 'out-adjusted',
    label: 'found out, adjusted, now in',
    note: 'set aside until the ends are reviewed',
  },
  {
    value: 'not-stated',
    label: 'passed; how it was found is not stated',
    note: 'no evidence for earlier ends',
  },
  { value: 'failed', label: 'failed, still out', note: 'set aside at once' },
];

/** A certificate written down: the verdict and the next due day are enough; the figures are there for who has them. */
export function CalibrationForm(props: CalibrationFormProps) {
  const { toolId, stamp, today, proposedDueDay, laboratory } = props;
  return (
    <EntryForm action={calibrateGaugeAction} stamp={stamp} label="Calibration">
      {(state) => (
        <>
          <input type="hidden" name="toolId" value={toolId} />
          <input type="hidden" name="figuresAreRight" defaultValue="" />
          <Choice
            name="outcome"
            legend="What came of it"
            required
            defaultValue={typedOr(state, 'outcome', '')}
            error={fieldError(state, 'outcome')}
            options={OUTCOMES}
          />
          <div className="columns">
            <Field
              id="calibrated-on"
              name="onDay"
              label="Calibrated on"
              type="date"
              required
              max={today}
              defaultValue={typedOr(state, 'onDay', today)}
              error={fieldError(state, 'onDay')}
            />
            <Field
              name="dueOnDay"
              label="Next due"
              type="date"
              hint="Valid to the end of that day"
              defaultValue={typedOr(state, 'dueOnDay', proposedDueDay)}
              error={fieldError(state, 'dueOnDay')}
            />
            <Field
              name="certificate"
              label="Certificate number"
              optional
              maxLength={60}
              defaultValue={typedOr(state, 'certificate', '')}
            />
            <Field
              name="laboratory"
              label="Laboratory"
              optional
              maxLength={80}
              defaultValue={typedOr(state, 'laboratory', laboratory)}
            />
          </div>
          <Figures state={state} figures={props.figures} />
          <div>
            <SubmitButton>Record the calibration</SubmitButton>
          </div>
        </>
      )}
    </EntryForm>
  );
}

const UNITS = [
  { value: 'um', label: 'µm' },
  { value: 'mm', label: 'mm' },
  { value: 'in', label: 'in' },
  { value: 'deg', label: 'degrees' },
  { value: 'N.m', label: 'N·m' },
  { value: '%', label: 'per cent' },
];

const RULES = [
  { value: 'guarded-95', label: 'within the limits less 1.645 u: 95 % sure' },
  { value: 'guarded', label: 'within the limits less U' },
  { value: 'simple', label: 'within the limits, uncertainty not counted' },
];

/** The figures of the certificate, all in one unit. */
function Figures({ state, figures }: { readonly state: FormState; readonly figures: FigureDefaults }) {
  const field = (name: string, label: string, otherwise = '') => (
    <NumberField
      name={name}
      label={label}
      entry="decimal"
      optional
      defaultValue={typedOr(state, name, otherwise)}
      error={fieldError(state, name) ?? fieldError(state, `features.0.${name}`)}
    />
  );
  return (
    <details open={state.status === 'refused'}>
      <summary>Figures of the certificate</summary>
      <div className="stack">
        <div className="columns">
          <Field
            name="feature"
            label="What was measured"
            maxLength={60}
            defaultValue={typedOr(state, 'feature', figures.feature)}
            error={fieldError(state, 'features.0.feature')}
          />
          <Select
            name="unit"
            label="All in"
            options={UNITS}
            defaultValue={typedOr(state, 'unit', figures.unit)}
          />
        </div>
        <div className="columns">
          {field('asFoundError', 'Error as found')}
          {field('asLeftError', 'Error as left')}
          {field('lowerLimit', 'Lower limit of the error', figures.lowerLimit)}
          {field('upperLimit', 'Upper limit of the error', figures.upperLimit)}
          {field('expandedUncertainty', 'Uncertainty U', figures.expandedUncertainty)}
          {field('coverageFactor', 'Coverage factor k', '2')}
        </div>
        <Select
          name="rule"
          label="It counts as in when the error lies"
          options={RULES}
          defaultValue={typedOr(state, 'rule', 'guarded-95')}
        />
      </div>
    </details>
  );
}
