'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { LENGTH_UNIT_SIGNS } from '@/app/_shared/form/option-lists';
import { Field, NumberField, type Option, Select, SubmitButton } from '@/app/_shared/ui';
import { REJECT_CAUSES } from '@/lib/shop/vocabulary';
import { logCutAction } from '../actions';

interface LogCutFormProps {
  readonly toolId: string;
  readonly operation: 'cone' | 'thread';
  readonly stamp: EntryStamp;
  readonly connections: readonly Option[];
  readonly materials: readonly Option[];
  readonly lines: readonly Option[];
  /** Bottles of fluid to choose from. */
  readonly fluids: readonly Option[];
  readonly first: {
    connectionId: string;
    materialId: string;
    jobLineId: string;
    heat: string;
    unit: 'mm' | 'in';
    ends: string;
    fluidId: string;
  };
}

/** Logs cones or threads: what was cut, how many, how many good, and why the others were not. */
export function LogCutForm({
  toolId,
  operation,
  stamp,
  connections,
  materials,
  lines,
  fluids,
  first,
}: LogCutFormProps) {
  return (
    <EntryForm action={logCutAction} stamp={stamp} label={`Log ${operation}s`}>
      <input type="hidden" name="toolId" value={toolId} />
      <div className="columns">
        <Select
          name="connectionId"
          label="Size and service"
          options={connections}
          defaultValue={first.connectionId}
        />
        <Select name="materialId" label="Material" options={materials} defaultValue={first.materialId} />
        <NumberField
          name="ends"
          label={operation === 'cone' ? 'Cones cut' : 'Threads cut'}
          unit="ends"
          required
          defaultValue={first.ends}
        />
        <NumberField name="goodEnds" label="Of these good" unit="ends" hint="Left empty: all of them" />
      </div>
      <details>
        <summary>Rejects, thread length, fluid, heat and more</summary>
        <MoreFields operation={operation} lines={lines} fluids={fluids} first={first} />
      </details>
      <div>
        <SubmitButton pendingText="Logging…">Log it</SubmitButton>
      </div>
    </EntryForm>
  );
}

type MoreProps = Pick<LogCutFormProps, 'operation' | 'lines' | 'fluids' | 'first'>;

function MoreFields({ operation, lines, fluids, first }: MoreProps) {
  return (
    <div className="stack">
      <div className="columns">
        <Select
          name="jobLineId"
          label="Job"
          placeholder="No job"
          options={lines}
          defaultValue={first.jobLineId}
        />
        <Select
          name="fluidId"
          label="Cutting fluid"
          placeholder="Not said"
          hint="The bottle on the bench"
          options={fluids}
          defaultValue={first.fluidId}
        />
        <Field name="heat" label="Heat" maxLength={40} defaultValue={first.heat} />
        {operation === 'thread' ? (
          <NumberField
            name="threadLength"
            label="Thread length"
            entry="fraction"
            hint="Only where it differs from the size table"
            units={{
              name: 'threadLengthUnit',
              options: LENGTH_UNIT_SIGNS,
              defaultValue: first.unit,
            }}
          />
        ) : null}
      </div>
      <fieldset>
        <legend>Rejects by cause</legend>
        <div className="columns">
          {REJECT_CAUSES.map(({ code, label }) => (
            <NumberField key={code} name={`reject-${code}`} label={label} unit="ends" />
          ))}
        </div>
      </fieldset>
      <div className="cluster">
        <label className="check">
          <input type="checkbox" name="dry" /> Cut dry
        </label>
        <label className="check">
          <input type="checkbox" name="rework" /> Recut of refused ends
        </label>
      </div>
    </div>
  );
}
