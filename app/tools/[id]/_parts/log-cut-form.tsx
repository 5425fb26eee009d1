'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import { type FormState, fieldError, typedOr } from '@/app/_shared/form/form-state';
import { Field, NumberField, type Option, Select, SubmitButton } from '@/app/_shared/ui';
import { REJECT_CAUSES } from '@/lib/shop/vocabulary';
import { logCutAction } from '../actions';

interface LogCutFormProps {
  readonly toolId: string;
  readonly operation: 'cone' | 'thread';
  readonly stamp: { entryId: string; deviceAtMs: number };
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
      {(state) => (
        <>
          <input type="hidden" name="toolId" value={toolId} />
          <div className="columns">
            <Select
              name="connectionId"
              label="Size and service"
              options={connections}
              defaultValue={typedOr(state, 'connectionId', first.connectionId)}
              error={fieldError(state, 'connectionId')}
            />
            <Select
              name="materialId"
              label="Material"
              options={materials}
              defaultValue={typedOr(state, 'materialId', first.materialId)}
              error={fieldError(state, 'materialId')}
            />
            <NumberField
              name="ends"
              label={operation === 'cone' ? 'Cones cut' : 'Threads cut'}
              unit="ends"
              required
              defaultValue={typedOr(state, 'ends', first.ends)}
              error={fieldError(state, 'ends')}
            />
            <NumberField
              name="goodEnds"
              label="Of these good"
              unit="ends"
              hint="Left empty: all of them"
              defaultValue={typedOr(state, 'goodEnds', '')}
              error={fieldError(state, 'goodEnds')}
            />
          </div>
          <details>
            <summary>Rejects, thread length, fluid, heat and more</summary>
            <MoreFields state={state} operation={operation} lines={lines} fluids={fluids} first={first} />
          </details>
          <div>
            <SubmitButton pendingText="Logging…">Log it</SubmitButton>
          </div>
        </>
      )}
    </EntryForm>
  );
}

type MoreProps = Pick<LogCutFormProps, 'operation' | 'lines' | 'fluids' | 'first'> & {
  readonly state: FormState;
};

function MoreFields({ state, operation, lines, fluids, first }: MoreProps) {
  return (
    <div className="stack">
      <div className="columns">
        <Select
          name="jobLineId"
          label="Job"
          placeholder="No job"
          options={lines}
          defaultValue={typedOr(state, 'jobLineId', first.jobLineId)}
        />
        <Select
          name="fluidId"
          label="Cutting fluid"
          placeholder="Not said"
          hint="The bottle on the bench"
          options={fluids}
          defaultValue={typedOr(state, 'fluidId', first.fluidId)}
          error={fieldError(state, 'fluidId')}
        />
        <Field name="heat" label="Heat" maxLength={40} defaultValue={typedOr(state, 'heat', first.heat)} />
        {operation === 'thread' ? (
          <NumberField
            name="threadLength"
            label="Thread length"
            entry="fraction"
            hint="Only where it differs from the size table"
            units={{
              name: 'threadLengthUnit',
              options: [
                { value: 'in', label: 'in' },
                { value: 'mm', label: 'mm' },
              ],
              defaultValue: typedOr(state, 'threadLengthUnit', first.unit),
            }}
            defaultValue={typedOr(state, 'threadLength', '')}
            error={fieldError(state, 'threadLength')}
          />
        ) : null}
      </div>
      <fieldset>
        <legend>Rejects by cause</legend>
        <div className="columns">
          {REJECT_CAUSES.map(({ code, label }) => (
            <NumberField
              key={code}
              name={`reject-${code}`}
              label={label}
              unit="ends"
              defaultValue={typedOr(state, `reject-${code}`, '')}
            />
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
