'use client';

import { useState } from 'react';
import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import type { FormState } from '@/app/_shared/form/form-state';
import { Button, Choice, Field, Panel, Select, SubmitButton } from '@/app/_shared/ui';
import type { ExposedThreads } from '@/lib/acceptance/applied-rule';
import {
  type AppliedRule,
  CHECK_KIND_LABEL,
  CHECK_KINDS,
  CONE_CONTACT_LABEL,
  CONE_CONTACTS,
} from '@/lib/shop/acceptance';
import { REJECT_CAUSES } from '@/lib/shop/vocabulary';
import { acceptEndsAction } from '../actions';
import styles from './accept.module.css';
import type { GaugeField } from './accept-view';
import { ConeContactDrawing } from './cone-contact';
import { GaugeFields } from './gauge-fields';
import { type GaugeIds, gaugeIdsOf, type Seen, seenOf } from './live-look';
import { ResultWords } from './result-words';
import { Stepper } from './stepper';

export interface AcceptFormProps {
  readonly stamp: EntryStamp;
  readonly line: {
    readonly id: string;
    readonly connectionId: string;
    readonly materialId: string;
    readonly heat: string;
    readonly operations: readonly ('cone' | 'thread')[];
  };
  readonly rule: AppliedRule | null;
  readonly exposed: ExposedThreads;
  readonly gauges: readonly GaugeField[];
  readonly dieId: string;
  readonly bladeId: string;
  readonly fluidId: string;
  readonly nextEndNo: number;
  readonly endsLeft: number;
  readonly firstLook: boolean;
  /** The earlier look whose ends are gauged again, and how many they are. */
  readonly again: { readonly id: string; readonly endCount: number } | null;
}

/** The technician at the vise: which gauges, what they said, how the surface feels, and how many ends alike. */
export function AcceptForm(props: AcceptFormProps) {
  return (
    <EntryForm action={acceptEndsAction} stamp={props.stamp} label="Accept ends" className="stack-loose">
      {(state) => <Rounds {...props} state={state} />}
    </EntryForm>
  );
}

type Answered = AcceptFormProps & { readonly state: FormState };

/** One round a sending: a refused one comes back as it was typed, after a recorded one everything is looked at anew. */
function Rounds(props: Answered) {
  const { state } = props;
  const [round, setRound] = useState({ state, no: 0 });
  const [gaugeIds, setGaugeIds] = useState(() => gaugeIdsOf(props.gauges, state));
  if (round.state !== state) setRound({ state, no: round.no + 1 });
  return <Fields key={round.no} {...props} gaugeIds={gaugeIds} setGaugeIds={setGaugeIds} />;
}

type FieldsProps = Answered & {
  readonly gaugeIds: GaugeIds;
  /** Gauges stay from one look to the next: they lie on the bench. */
  readonly setGaugeIds: (ids: GaugeIds) => void;
};

function Fields({ gaugeIds, setGaugeIds, ...props }: FieldsProps) {
  const { state, rule, exposed, line } = props;
  const [seen, setSeen] = useState<Seen>(() => seenOf(props, state));
  const set = (part: Partial<Seen>) => setSeen((before) => ({ ...before, ...part }));
  const { operations } = line;
  return (
    <>
      <Hidden {...props} />
      <Panel title="Gauges">
        <GaugeFields {...{ seen, set, rule, gaugeIds, setGaugeIds }} gauges={props.gauges} />
      </Panel>
      <Panel title="Look and feel">
        <LookFields {...{ seen, set, operations }} />
      </Panel>
      <Panel title="How many alike">
        <CountFields {...{ seen, set }} {...props} />
      </Panel>
      <ResultWords {...{ seen, gaugeIds, rule, exposed, operations }} />
      <div>
        <SubmitButton pendingText="Recording…">
          Record {seen.endCount === '1' ? 'this end' : `these ${seen.endCount || '…'} ends`}
        </SubmitButton>
      </div>
    </>
  );
}

function Hidden({ line, again, nextEndNo }: AcceptFormProps) {
  return (
    <>
      <input type="hidden" name="jobLineId" value={line.id} />
      <input type="hidden" name="connectionId" value={line.connectionId} />
      <input type="hidden" name="materialId" value={line.materialId} />
      <input type="hidden" name="regaugesId" value={again?.id ?? ''} />
      <input type="hidden" name="firstEndNo" value={again === null ? nextEndNo : ''} />
      {line.operations.map((operation) => (
        <input key={operation} type="hidden" name={`checked-${operation}`} value="on" />
      ))}
    </>
  );
}

interface Live {
  readonly seen: Seen;
  readonly set: (part: Partial<Seen>) => void;
}

const EXPOSED = ['', '0', '0.5', '1', '1.5', '2', '2.5', '3', '3.5', '4'].map((value) => ({
  value,
  label: value === '' ? 'not looked at' : value.replace('0.5', '½').replace('.5', '½'),
}));

function LookFields({
  seen,
  set,
  operations,
}: Live & { readonly operations: readonly ('cone' | 'thread')[] }) {
  return (
    <div className="stack-loose">
      <div onChange={(event) => set({ finish: (event.target as HTMLInputElement).value })}>
        <Choice
          name="finish"
          legend="Surface, by the fingernail"
          hint="On the finished surface, never on an edge"
          required
          defaultValue={seen.finish}
          options={[
            { value: 'smooth', label: 'smooth' },
            { value: 'can-be-felt', label: 'a mark can be felt', note: 'refused' },
          ]}
        />
      </div>
      {operations.includes('cone') ? (
        <div onChange={(event) => set({ coneContact: (event.target as HTMLInputElement).value })}>
          <Choice
            name="coneContact"
            legend="Blueing on the master seat"
            defaultValue={seen.coneContact}
            options={CONE_CONTACTS.map((contact) => ({
              value: contact,
              label: CONE_CONTACT_LABEL[contact],
              mark: <ConeContactDrawing contact={contact} />,
            }))}
          />
        </div>
      ) : null}
      {operations.includes('thread') ? (
        <Stepper
          name="exposedThreads"
          label="Exposed threads, collar run on by hand"
          options={EXPOSED}
          value={seen.exposedThreads}
          onChange={(exposedThreads) => set({ exposedThreads })}
        />
      ) : null}
      <label className="check">
        <input
          type="checkbox"
          name="boreClear"
          checked={seen.boreClear}
          onChange={(event) => set({ boreClear: event.target.checked })}
        />{' '}
        Looked through the bore, swabbed: clear
      </label>
      <Select
        name="otherFault"
        label="Anything else against it"
        placeholder="Nothing"
        options={REJECT_CAUSES.map(({ code, label }) => ({ value: code, label }))}
        value={seen.otherFault}
        onChange={(event) => set({ otherFault: event.target.value })}
      />
    </div>
  );
}

type CountProps = Live & Pick<Answered, 'firstLook' | 'again' | 'dieId' | 'bladeId' | 'fluidId' | 'line'>;

function CountFields({ seen, set, firstLook, again, dieId, bladeId, fluidId, line }: CountProps) {
  const more = (by: number) => set({ endCount: String(Math.max(1, (Number(seen.endCount) || 0) + by)) });
  return (
    <div className="stack-loose">
      <div className="stack-tight">
        <label htmlFor="f-endCount">Ends, all with this result</label>
        <div className={styles.stepper}>
          <input
            id="f-endCount"
            name="endCount"
            inputMode="numeric"
            autoComplete="off"
            value={seen.endCount}
            onChange={(event) => set({ endCount: event.target.value })}
          />
          <Button onClick={() => more(1)}>+1</Button>
          <Button onClick={() => more(5)}>+5</Button>
        </div>
        <p className="fine">
          Two people, two results? Enter each: the one that refuses decides, nothing is averaged.
        </p>
      </div>
      <Choice
        name="checkKind"
        legend="Which look it is"
        required
        defaultValue={firstLook ? 'first-off' : again === null ? 'in-process' : 'each'}
        options={CHECK_KINDS.map((kind) => ({ value: kind, label: CHECK_KIND_LABEL[kind] }))}
      />
      <details>
        <summary>Marks, heat, die, blade, fluid, second pair of eyes</summary>
        <div className="columns">
          <Field
            name="endMarks"
            label="Marks of the ends"
            hint="S-18 end 1, S-18 end 2"
            optional
            maxLength={2000}
          />
          <Field name="heat" label="Heat" optional maxLength={40} defaultValue={line.heat} />
          <Field name="dieId" label="Die" optional maxLength={40} defaultValue={dieId} />
          <Field name="bladeId" label="Blade" optional maxLength={40} defaultValue={bladeId} />
          <Field name="fluidId" label="Fluid" optional maxLength={40} defaultValue={fluidId} />
          <Select
            name="independentCheck"
            label="Checked independently"
            defaultValue="no"
            options={[
              { value: 'no', label: 'no' },
              { value: 'another-person', label: 'by another person' },
              { value: 'another-gauge', label: 'with another gauge' },
            ]}
          />
          <Field name="reason" label="Note" optional maxLength={300} />
        </div>
      </details>
    </div>
  );
}
