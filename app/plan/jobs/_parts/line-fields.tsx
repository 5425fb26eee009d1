'use client';

import { useGivenBack, useLastSending } from '@/app/_shared/form/given-back';
import { Field, NumberField, type Option, Select } from '@/app/_shared/ui';
import { DUTIES, DUTY_LABEL } from '@/lib/shop/duty';
import styles from './job.module.css';
import type { LineDraft } from './job-draft';

interface LineFieldsProps {
  readonly draft: LineDraft;
  readonly connections: readonly Option[];
  readonly materials: readonly Option[];
  /** A line that may be left empty asks for nothing in the browser. */
  readonly required: boolean;
}

/** What of a line is typed or chosen. */
type TextField = Exclude<keyof LineDraft, 'lineNo' | 'begun' | Tick>;
type Tick = 'cone' | 'thread' | 'assemble' | 'precious';
type Naming = (field: string) => string;

/** The fields of one line: size, material, ends and dates first, then what is rarer. */
export function LineFields({ draft, connections, materials, required }: LineFieldsProps) {
  const name: Naming = (field) => `line${draft.lineNo}-${field}`;
  const wires = (field: TextField) => ({ name: name(field), defaultValue: draft[field] });
  return (
    <div className="stack">
      <div className={`columns ${styles.fields}`}>
        <Select
          {...wires('connectionId')}
          label="Size and service"
          placeholder="Choose from the table"
          options={connections}
        />
        <Select
          {...wires('materialId')}
          label="Material"
          placeholder="Choose"
          options={materials}
          required={required}
        />
        <NumberField
          {...wires('ends')}
          label="Ends"
          unit="ends"
          hint="Ends = spools × 2, less those made elsewhere"
          required={required}
        />
        <Field {...wires('startOnDay')} label="Start" type="date" required={required} />
        <Field {...wires('dueOnDay')} label="Due" type="date" required={required} />
        <Field {...wires('heat')} label="Heat" optional maxLength={40} />
        <Select
          {...wires('duty')}
          label="For"
          hint="Decides which fluid may be used, and whether a cleaning record is asked for"
          options={DUTIES.map((known) => ({ value: known, label: DUTY_LABEL[known] }))}
        />
      </div>
      <OtherSize {...{ draft, name }} />
      <WorkFields {...{ draft, name }} />
    </div>
  );
}

interface PartProps {
  readonly draft: LineDraft;
  readonly name: Naming;
}

/** A size that the table has no row for: only named, nothing about it is assumed. */
function OtherSize({ draft, name }: PartProps) {
  const size = useGivenBack({ name: name('otherSize'), start: draft.otherSize });
  return (
    <details open={size.start !== '' || size.error !== undefined}>
      <summary>Another size, not in the table</summary>
      <div className={`columns ${styles.fields}`}>
        <NumberField
          name={name('otherSize')}
          defaultValue={draft.otherSize}
          label="Tube size"
          entry="fraction"
          unit="in"
          hint="Outside diameter, such as 9/16. The plan will say what is missing for it"
        />
        <Select
          name={name('otherService')}
          defaultValue={draft.otherService}
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

function WorkFields({ draft, name }: PartProps) {
  const sending = useLastSending();
  // A box not ticked is not sent: a line was, if its ends were. One added after a refusal begins with its own ticks.
  const sent = sending.status === 'refused' && name('ends') in sending.values ? sending.values : undefined;
  const wasChecked = (field: Tick) => (sent === undefined ? draft[field] : name(field) in sent);
  const { error } = useGivenBack({ name: name('cone'), start: undefined });
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
