'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { Choice, Field, SubmitButton } from '@/app/_shared/ui';
import { adjustDieAction, checkFirstOffAction } from '../care-actions';

interface About {
  readonly toolId: string;
  readonly stamp: EntryStamp;
  readonly today: string;
}

/** A gauge of the first-off: filled in where only one can be meant. */
export interface FirstOffGauge {
  readonly role: string;
  readonly label: string;
  readonly toolId: string;
  readonly hint: string;
}

/** The first end after a regrind or an adjustment, gauged. */
export function FirstOffForm({
  toolId,
  stamp,
  today,
  gauges,
}: About & { readonly gauges: readonly FirstOffGauge[] }) {
  return (
    <EntryForm action={checkFirstOffAction} stamp={stamp} label="First-off">
      <input type="hidden" name="toolId" value={toolId} />
      <Choice
        id="first-off-result"
        name="result"
        legend="The first end, gauged"
        required
        options={[
          { value: 'pass', label: 'passed', note: 'it may go out' },
          { value: 'fail', label: 'failed', note: 'it is set aside' },
          { value: 'not-gauged', label: 'looked at, not gauged', note: 'it stays owed' },
        ]}
      />
      {gauges.map((gauge, at) => (
        <Field
          key={gauge.role}
          id={`first-off-${gauge.role}`}
          name={`gauge-${gauge.role}`}
          label={gauge.label}
          hint={gauge.hint}
          maxLength={40}
          autoComplete="off"
          defaultValue={gauge.toolId}
          answers={at === 0 ? 'gaugeIds' : undefined}
        />
      ))}
      <Field id="first-off-day" name="onDay" label="Gauged on" type="date" required defaultValue={today} />
      <div>
        <SubmitButton>Write it down</SubmitButton>
      </div>
    </EntryForm>
  );
}

/** A split die opened or closed a touch. */
export function AdjustForm({ toolId, stamp, today }: About) {
  return (
    <EntryForm action={adjustDieAction} stamp={stamp} label="Adjusted">
      <input type="hidden" name="toolId" value={toolId} />
      <Choice
        id="adjust-direction"
        name="direction"
        legend="The die was"
        required
        options={[
          { value: 'opened', label: 'opened a touch', note: 'screw in: larger thread' },
          { value: 'closed', label: 'closed a touch', note: 'screw out: smaller thread' },
        ]}
      />
      <Field
        id="adjust-amount"
        name="amount"
        label="How far"
        hint="An eighth of a turn, say"
        optional
        maxLength={60}
      />
      <Field id="adjust-day" name="onDay" label="On" type="date" required defaultValue={today} />
      <div>
        <SubmitButton tone="quiet">Write it down</SubmitButton>
      </div>
    </EntryForm>
  );
}
