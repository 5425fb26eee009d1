'use client';

import { useState } from 'react';
import { EntryForm } from '@/app/_shared/form/entry-form';
import { useGivenBack } from '@/app/_shared/form/given-back';
import { LENGTH_UNIT_SIGNS } from '@/app/_shared/form/option-lists';
import { measureText } from '@/app/_shared/format';
import { marginSentence } from '@/app/_shared/thread/margin-words';
import { NumberField, SubmitButton } from '@/app/_shared/ui';
import { readTypedPitch } from '@/lib/reading/typed-finding';
import { pitchMargin } from '@/lib/thread/pitch-margin';
import { readEdgeAction } from '../actions';
import type { PitchThread } from './pitch-thread';
import { type About, Hidden } from './reading-forms';

type Unit = 'in' | 'mm';
type PitchProps = About & { readonly unit: Unit; readonly thread: PitchThread | undefined };

/** The last thread over three wires: the wires chosen, the measurement, and at once the pitch diameter with what is left to the limit. */
export function OverWiresForm(props: PitchProps) {
  const { toolId, today, stamp, unit, thread } = props;
  const [preview, setPreview] = useState('');
  if (thread === undefined)
    return (
      <p>The size table does not say which thread this die cuts. Its pitch diameter can be written down.</p>
    );
  return (
    // What is typed bubbles up from the fields; the server reads and judges the same figures again.
    <div onInput={(event) => setPreview(previewOf(formAround(event.target), thread))}>
      <EntryForm action={readEdgeAction} stamp={stamp} label="Over three wires">
        {(state) => (
          <>
            <Hidden method="pitch-diameter" toolId={toolId} today={today} />
            <input type="hidden" name="instrument" value="wires" />
            <div className="columns">
              <Length form="wires" name="wire" label="Wires" unit={unit} first={thread.bestWire[unit]} />
              <Length form="wires" name="overWires" label="Measured over them" unit={unit} />
            </div>
            <Limits form="wires" thread={thread} unit={unit} />
            <p className="quiet" aria-live="polite">
              {state.status === 'refused' && state.sentence === preview ? '' : preview}
            </p>
            <div>
              <SubmitButton tone="quiet">Write it down</SubmitButton>
            </div>
          </>
        )}
      </EntryForm>
    </div>
  );
}

/** The pitch diameter read directly, against the limits. */
export function PitchForm({ toolId, today, stamp, unit, thread }: PitchProps) {
  return (
    <EntryForm action={readEdgeAction} stamp={stamp} label="Pitch diameter">
      <Hidden method="pitch-diameter" toolId={toolId} today={today} />
      <input type="hidden" name="instrument" value="micrometer" />
      <Length form="pitch" name="pitchDiameter" label="Pitch diameter of the last thread" unit={unit} />
      <Limits form="pitch" thread={thread} unit={unit} />
      <div>
        <SubmitButton tone="quiet">Write it down</SubmitButton>
      </div>
    </EntryForm>
  );
}

function Length({
  form,
  name,
  label,
  unit,
  first = '',
}: {
  readonly form: 'wires' | 'pitch';
  readonly name: string;
  readonly label: string;
  readonly unit: Unit;
  readonly first?: string;
}) {
  return (
    <NumberField
      id={`${form}-${name}`}
      name={name}
      label={label}
      entry="fraction"
      required
      units={{ name: `${name}Unit`, options: LENGTH_UNIT_SIGNS, defaultValue: unit }}
      defaultValue={first}
    />
  );
}

/** The limits of the pitch diameter: the table's own unless the drawing says otherwise. */
function Limits({
  form,
  thread,
  unit,
}: {
  readonly form: 'wires' | 'pitch';
  readonly thread: PitchThread | undefined;
  readonly unit: Unit;
}) {
  const limits = thread?.limits[unit] ?? { min: '', max: '' };
  const { error } = useGivenBack({ name: 'min', start: undefined, answers: 'max' });
  return (
    <details open={limits.min === '' || error !== undefined}>
      <summary>
        {limits.min === ''
          ? 'Limits of the pitch diameter'
          : `Limits ${limits.min} to ${limits.max} ${unit}, ${thread?.designation ?? ''} class ${thread?.threadClass ?? ''}`}
      </summary>
      <div className="columns">
        <Length form={form} name="min" label="Lower limit" unit={unit} first={limits.min} />
        <Length form={form} name="max" label="Upper limit" unit={unit} first={limits.max} />
      </div>
      <p className="fine">Class by the fitting maker’s manual.</p>
    </details>
  );
}

function formAround(target: EventTarget): FormData | undefined {
  const form = target instanceof Element ? target.closest('form') : null;
  return form === null ? undefined : new FormData(form);
}

/** What the figures typed so far give, or what is doubtful about them; empty while the measurement is still to come. */
function previewOf(form: FormData | undefined, thread: PitchThread): string {
  const typed = (name: string) => ({
    text: String(form?.get(name) ?? '').trim(),
    unit: form?.get(`${name}Unit`) === 'mm' ? ('mm' as const) : ('in' as const),
  });
  const overWires = typed('overWires');
  if (overWires.text === '') return '';
  const read = readTypedPitch(
    { overWires, wire: typed('wire'), min: typed('min'), max: typed('max'), instrument: 'wires' },
    thread,
  );
  if (!read.ok) return read.refusal.sentence;
  const size = measureText(read.value.pitchDiameterMm, overWires.unit);
  return `Pitch diameter ${size}. ${marginSentence(pitchMargin(read.value), overWires.unit)}`;
}
