'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { LENGTH_UNIT_SIGNS } from '@/app/_shared/form/option-lists';
import { Choice, NumberField, SubmitButton } from '@/app/_shared/ui';
import { GO_FEEL_LABEL, GO_FEELS, GRADE_LABEL, GRADES } from '@/lib/reading/reading';
import { readEdgeAction } from '../actions';

export interface About {
  readonly toolId: string;
  readonly today: string;
  readonly stamp: EntryStamp;
}

/** The plain grade of a trained eye: four answers, one press. */
export function GradeForm({ toolId, today, stamp }: About) {
  return (
    <EntryForm action={readEdgeAction} stamp={stamp} label="Grade by eye">
      <Hidden method="grade" toolId={toolId} today={today} />
      <Choice
        name="grade"
        legend="How it looks under the loupe"
        required
        options={GRADES.map((value) => ({ value, label: GRADE_LABEL[value] }))}
      />
      <p className="fine">Loupe and light. Never test an edge with a finger.</p>
      <div>
        <SubmitButton tone="quiet">Write it down</SubmitButton>
      </div>
    </EntryForm>
  );
}

/** The wear land on a blade's flank, read with a loupe. */
export function LandForm({ toolId, today, stamp, unit }: About & { readonly unit: 'in' | 'mm' }) {
  return (
    <EntryForm action={readEdgeAction} stamp={stamp} label="Wear land">
      <Hidden method="flank-land" toolId={toolId} today={today} />
      <NumberField
        name="land"
        label="Wear land on the flank"
        entry="fraction"
        required
        units={{ name: 'landUnit', options: LENGTH_UNIT_SIGNS, defaultValue: unit }}
        answers="finding.landMm"
      />
      <div>
        <SubmitButton tone="quiet">Write it down</SubmitButton>
      </div>
    </EntryForm>
  );
}

/** How the rings went on the thread that the die last cut. */
export function RingForm({ toolId, today, stamp }: About) {
  return (
    <EntryForm action={readEdgeAction} stamp={stamp} label="Rings on the last thread">
      <Hidden method="ring" toolId={toolId} today={today} />
      <Choice
        name="go"
        legend="GO ring on the last thread"
        required
        options={GO_FEELS.map((value) => ({ value, label: GO_FEEL_LABEL[value] }))}
      />
      <NumberField
        name="notGoTurns"
        label="NOT GO ran on"
        entry="decimal"
        unit="turns"
        optional
        hint="Clean part, clean ring, never forced"
        answers="finding.notGoTurns"
      />
      <div>
        <SubmitButton tone="quiet">Write it down</SubmitButton>
      </div>
    </EntryForm>
  );
}

/** The fields that every reading carries. */
export function Hidden({
  method,
  toolId,
  today,
}: {
  readonly method: string;
  readonly toolId: string;
  readonly today: string;
}) {
  return (
    <>
      <input type="hidden" name="toolId" value={toolId} />
      <input type="hidden" name="method" value={method} />
      <input type="hidden" name="onDay" value={today} />
    </>
  );
}
