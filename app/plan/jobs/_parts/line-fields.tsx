'use client';

import { type FormState, FRESH, fieldError, typedOr } from '@/app/_shared/form/form-state';
import { Field, NumberField, type Option, Select } from '@/app/_shared/ui';
import { DUTIES, DUTY_LABEL } from '@/lib/shop/duty';
import styles from './job.module.css';
import type { LineDraft } from './job-draft';

interface LineFieldsProps {
  readonly draft: LineDraft;
  readonly state: FormState;
  readonly connections: readonly Option[];
  readonly materials: readonly Option[];
  /** A line that may be left empty asks for nothing in the browser. */
  readonly required: boolean;
}

/** The fields of one line: size, material, ends and dates first, then what is rarer. */
export function LineFields({ draft, state: sent, connections, materials, required }: LineFieldsProps) {
  const name = (field: string) => `line${draft.lineNo}-${field}`;
  // A line added after a refusal was not in what was sent: it begins with its own defaults.
  const state = sent.status === 'refused' && !(name('ends') in sent.values) ? FRESH : sent;
  const wires = (field: string, otherwise: string) => ({
    name: name(field),
    defaultValue: typedOr(state, name(field), otherwise),
    error: fieldError(state, name(field)),
  });
  const size = wires('connectionId', draft.connectionId);
  const material = wires('materialId', draft.materialId);
  const duty = wires('duty', draft.duty);
  return (
    <div className="stack">
      <div className={`columns ${styles.fields}`}>
        <Select
          key={`size ${size.defaultValue}`}
          {...size}
          label="Size and service"
          placeholder="Choose from the table"
          options={connections}
        />
        <Select
          key={`material ${material.defaultValue}`}
          {...material}
          label="Material"
          placeholder="Choose"
          options={materials}
          required={required}
        />
        <NumberField
          {...wires('ends', draft.ends)}
          label="Ends"
          unit="ends"
          hint="Ends = spools × 2, less those made elsewhere"
          required={required}
        />
        <Field {...wires('startOnDay', draft.startOnDay)} label="Start" type="date" required={required} />
        <Field {...wires('dueOnDay', draft.dueOnDay)} label="Due" type="date" required={required} />
        <Field {...wires('heat', draft.heat)} label="Heat" optional maxLength={40} />
        <Select
          key={`duty ${duty.defaultValue}`}
          {...duty}
          label="For"
          hint="Decides which fluid may be used, and whether a cleaning record is asked for"
          options={DUTIES.map((known) => ({ value: known, label: DUTY_LABEL[known] }))}
        />
      </div>
      <OtherSize {...{ draft, state, wires }} />
      <WorkFields draft={draft} state={state} name={name} />
    </div>
  );
}

interface OtherSizeProps extends Pick<LineFieldsProps, 'draft' | 'state'> {
  readonly wires: (
    field: string,
    otherwise: string,
  ) => { name: string; defaultValue: string; error: string | undefined };
}

/** A size that the table has no row for: only named, nothing about it is assumed. */
function OtherSize({ draft, wires }: OtherSizeProps) {
  const size = wires('otherSize', draft.otherSize);
  const service = wires('otherService', draft.otherService);
  return (
    <details open={size.defaultValue !== '' || size.error !== undefined}>
      <summary>Another size, not in the table</summary>
      <div className={`columns ${styles.fields}`}>
        <NumberField
          {...size}
          label="Tube size"
          entry="fraction"
          unit="in"
          hint="Outside diameter, such as 9/16. The plan will say what is missing for it"
        />
        <Select
          key={`service ${service.defaultValue}`}
          {...service}
          label="Service"
          options={[
            { value: 'medium', label: 'medium pressure' },
            { value: 'high', label: 'high pressure' },
          ]}
        />
      </div>
    </details>
  );
}

const WORK = [
  ['cone', 'Cone'],
  ['thread', 'Thread'],
  ['assemble', 'Assemble: torque the gland nut'],
] as const;

function WorkFields({
  draft,
  state,
  name,
}: Pick<LineFieldsProps, 'draft' | 'state'> & { readonly name: (field: string) => string }) {
  const wasChecked = (field: 'cone' | 'thread' | 'assemble' | 'precious') =>
    state.status === 'refused' ? name(field) in state.values : draft[field];
  const error = fieldError(state, name('cone'));
  return (
    <div className={styles.work}>
      <fieldset aria-describedby={error === undefined ? undefined : name('work-error')}>
        <legend>Work</legend>
        <div className="cluster">
          {WORK.map(([field, label]) => (
            <label key={field} className={styles.check}>
              <input type="checkbox" name={name(field)} defaultChecked={wasChecked(field)} />
              {label}
            </label>
          ))}
        </div>
        {error === undefined ? null : <p id={name('work-error')}>{error}</p>}
      </fieldset>
      <fieldset>
        <legend>Value</legend>
        <label className={styles.check}>
          <input type="checkbox" name={name('precious')} defaultChecked={wasChecked('precious')} />
          Cannot be remade: ask for more certainty
        </label>
      </fieldset>
    </div>
  );
}
