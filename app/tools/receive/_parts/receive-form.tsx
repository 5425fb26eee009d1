'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import { type FormState, fieldError, typedOr } from '@/app/_shared/form/form-state';
import { Choice, Field, NumberField, Panel, Select, SubmitButton } from '@/app/_shared/ui';
import { receiveAction } from '../actions';
import type { PartChoice } from './part-choice';

interface ReceiveFormProps {
  readonly choice: PartChoice;
  readonly stamp: { entryId: string; deviceAtMs: number };
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
                defaultValue={typedOr(state, 'toolId', choice.suggestedId)}
                error={fieldError(state, 'toolId')}
              />
              {choice.orders.length === 0 ? null : (
                <Select
                  name="orderId"
                  label="Came on order"
                  placeholder="None of them"
                  options={choice.orders}
                  defaultValue={typedOr(state, 'orderId', choice.orderId)}
                />
              )}
              <Field
                name="lot"
                label="Lot"
                optional
                maxLength={60}
                defaultValue={typedOr(state, 'lot', '')}
              />
              <Field
                name="receivedOnDay"
                label="Received on"
                type="date"
                required
                defaultValue={typedOr(state, 'receivedOnDay', today)}
                error={fieldError(state, 'receivedOnDay')}
              />
            </div>
            {part.hand === null ? null : (
              <Choice
                name="hand"
                legend="Hand, as marked on the tool itself"
                required
                defaultValue={typedOr(state, 'hand', '')}
                error={fieldError(state, 'hand')}
                options={[
                  { value: 'LH', label: 'LH', note: 'left hand' },
                  { value: 'RH', label: 'RH', note: 'right hand' },
                ]}
              />
            )}
            {fieldError(state, 'hand') === undefined ? null : (
              <label className="check">
                <input type="checkbox" name="takeWrongHand" /> It really is so: take it into quarantine, to be
                sent back
              </label>
            )}
            <Choice
              name="certificate"
              legend="Its certificate"
              hint="Missing or wrong: it is received into quarantine until that is settled"
              defaultValue={typedOr(state, 'certificate', 'in-order')}
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
                defaultValue={typedOr(state, 'dueOnDay', '')}
                error={fieldError(state, 'dueOnDay')}
              />
            ) : null}
            {part.role === 'fluid' ? <FluidFields state={state} /> : null}
            {choice.hasEdge ? <OpeningFields state={state} choice={choice} /> : null}
            <div>
              <SubmitButton pendingText="Receiving…">Into the crib</SubmitButton>
            </div>
          </>
        )}
      </EntryForm>
    </Panel>
  );
}

function FluidFields({ state }: { readonly state: FormState }) {
  return (
    <div className="columns">
      <NumberField
        name="levelMl"
        label="In the bottle"
        entry="decimal"
        unit="mL"
        required
        defaultValue={typedOr(state, 'levelMl', '')}
        error={fieldError(state, 'levelMl')}
      />
      <Field
        name="expiresOnDay"
        label="Shelf life to"
        type="date"
        optional
        defaultValue={typedOr(state, 'expiresOnDay', '')}
      />
      <Field
        name="openedOnDay"
        label="Opened on"
        type="date"
        optional
        defaultValue={typedOr(state, 'openedOnDay', '')}
      />
    </div>
  );
}

function OpeningFields({ state, choice }: { readonly state: FormState; readonly choice: PartChoice }) {
  return (
    <>
      <Choice
        name="opening"
        legend="What it has cut before"
        defaultValue={typedOr(state, 'opening', 'new')}
        error={fieldError(state, 'opening')}
        options={[
          { value: 'new', label: 'nothing, it is new' },
          { value: 'counted', label: 'about so many ends', note: 'say how many below' },
          { value: 'unknown', label: 'nobody knows' },
        ]}
      />
      <details open={state.status === 'refused'}>
        <summary>Ends already cut</summary>
        <div className="columns">
          <NumberField
            name="openingEnds"
            label="Ends"
            unit="ends"
            defaultValue={typedOr(state, 'openingEnds', '')}
            error={fieldError(state, 'opening.ends')}
          />
          <Select
            name="openingConnectionId"
            label="Of size"
            options={choice.connections}
            defaultValue={typedOr(state, 'openingConnectionId', choice.connections[0]?.value ?? '')}
          />
          <Select
            name="openingMaterialId"
            label="In"
            options={choice.materials}
            defaultValue={typedOr(state, 'openingMaterialId', choice.materials[0]?.value ?? '')}
          />
        </div>
      </details>
    </>
  );
}
