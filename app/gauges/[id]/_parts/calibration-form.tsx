'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { useLastSending } from '@/app/_shared/form/given-back';
import { Choice, Field, NumberField, type Option, Select, SubmitButton } from '@/app/_shared/ui';
import type { DecisionRule } from '@/lib/shop/calibration';
import { DECISION_RULE_OPTIONS } from '../../_parts/decision-rules';
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
  readonly stamp: EntryStamp;
  readonly today: string;
  /** The day that the interval in force proposes, counted from today. */
  readonly proposedDueDay: string;
  readonly laboratory: string;
  /** Masters in date that it can be set or calibrated on in the shop. */
  readonly masters: readonly Option[];
  readonly figures: FigureDefaults;
  /** The shop’s rule of decision. */
  readonly rule: DecisionRule;
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
  const { toolId, stamp, today, proposedDueDay, laboratory, masters } = props;
  return (
    <EntryForm action={calibrateGaugeAction} stamp={stamp} label="Calibration">
      <input type="hidden" name="toolId" value={toolId} />
      <input type="hidden" name="figuresAreRight" defaultValue="" />
      <Choice name="outcome" legend="What came of it" required options={OUTCOMES} />
      <div className="columns">
        <Field
          id="calibrated-on"
          name="onDay"
          label="Calibrated on"
          type="date"
          required
          max={today}
          defaultValue={today}
        />
        <Field
          name="dueOnDay"
          label="Next due"
          type="date"
          hint="Valid to the end of that day"
          defaultValue={proposedDueDay}
        />
        <Field name="certificate" label="Certificate number" optional maxLength={60} />
        <Field name="laboratory" label="Laboratory" optional maxLength={80} defaultValue={laboratory} />
        {masters.length === 0 ? null : (
          <Select
            id="calibrated-on-master"
            name="againstToolId"
            label="Or done here, on"
            placeholder="Not done here"
            options={masters}
            defaultValue=""
          />
        )}
      </div>
      <Figures figures={props.figures} rule={props.rule} />
      <div>
        <SubmitButton>Record the calibration</SubmitButton>
      </div>
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

interface FiguresProps {
  readonly figures: FigureDefaults;
  readonly rule: DecisionRule;
}

/** The figures of the certificate, all in one unit. */
function Figures({ figures, rule }: FiguresProps) {
  const isRefused = useLastSending().status === 'refused';
  const field = (name: string, label: string, otherwise = '') => (
    <NumberField
      name={name}
      label={label}
      entry="decimal"
      optional
      defaultValue={otherwise}
      answers={`features.0.${name}`}
    />
  );
  return (
    <details open={isRefused}>
      <summary>Figures of the certificate</summary>
      <div className="stack">
        <div className="columns">
          <Field
            name="feature"
            label="What was measured"
            maxLength={60}
            defaultValue={figures.feature}
            answers="features.0.feature"
          />
          <Select name="unit" label="All in" options={UNITS} defaultValue={figures.unit} />
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
          options={DECISION_RULE_OPTIONS}
          hint="Starts with the shop’s rule; kept with this result"
          defaultValue={rule}
        />
      </div>
    </details>
  );
}
