'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { fieldError } from '@/app/_shared/form/form-state';
import { Choice, Field, NumberField, Panel, Select, SubmitButton } from '@/app/_shared/ui';
import { receiveAction } from '../actions';
import { OpeningFields } from './opening-fields';
import type { PartChoice } from './part-choice';
import { WrongHandStop } from './wrong-hand-stop';

interface ReceiveFormProps {
  readonly choice: PartChoice;
  readonly stamp: EntryStamp;
  readonly today: string;
}

/** Then its mark, its hand as marked on the tool itself, and what it had cut before. */
export function ReceiveForm({ choice, stamp, today }: ReceiveFormProps) {
  const { part } = choice;
  return (
    <Panel title={part.name} aside={part.designation}>
      <EntryForm action={receiveAction} stamp={stamp} label="Receive">
        {(state) => (
          <>
            <input type="hidden" name="partId" value={part.id} />
            <div className="columns">
              <Field
                name="toolId"
                label="Its ID, as marked on it"
                hint="Without O and I: they read like 0 and 1"
                required
                maxLength={16}
                defaultValue={choice.suggestedId}
              />
              {choice.orders.length === 0 ? null : (
                <Select
                  name="orderId"
                  label="Came on order"
                  placeholder="None of them"
                  options={choice.orders}
                  defaultValue={choice.orderId}
                />
              )}
              <Field name="lot" label="Lot" optional maxLength={60} />
              <Field name="receivedOnDay" label="Received on" type="date" required defaultValue={today} />
            </div>
            {part.hand === null ? null : (
              <Choice
                name="hand"
                legend="Hand, as marked on the tool itself"
                required
                options={[
                  { value: 'LH', label: 'LH', note: 'left hand' },
                  { value: 'RH', label: 'RH', note: 'right hand' },
                ]}
              />
            )}
            {fieldError(state, 'hand') === undefined ? null : (
              <>
                <label className="check">
                  <input type="checkbox" name="takeWrongHand" /> It really is so: take it into quarantine, to
                  be sent back
                </label>
                <WrongHandStop state={state} />
              </>
            )}
            <Choice
              name="certificate"
              legend="Its certificate"
              hint="Missing or wrong: it is received into quarantine until that is settled"
              defaultValue="in-order"
              options={[
                { value: 'in-order', label: 'in order, or none is asked' },
                { value: 'missing', label: 'missing' },
                { value: 'wrong', label: 'not the right one' },
              ]}
            />
            {choice.calibrated ? (
              <Field
                name="dueOnDay"
                label="Calibration due"
                type="date"
                hint="From its certificate; good to the end of that day. Empty only without a certificate"
                optional
              />
            ) : null}
            {part.role === 'fluid' ? <FluidFields /> : null}
            {choice.hasEdge ? <OpeningFields choice={choice} /> : null}
            <div>
              <SubmitButton pendingText="Receiving…">Into the crib</SubmitButton>
            </div>
          </>
        )}
      </EntryForm>
    </Panel>
  );
}

function FluidFields() {
  return (
    <div className="columns">
      <NumberField name="levelMl" label="In the bottle" entry="decimal" unit="mL" required />
      <Field name="expiresOnDay" label="Shelf life to" type="date" optional />
      <Field name="openedOnDay" label="Opened on" type="date" optional />
    </div>
  );
}
