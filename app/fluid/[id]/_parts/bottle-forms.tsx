'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import { fieldError, typedOr } from '@/app/_shared/form/form-state';
import { Field, NumberField, Select, SubmitButton } from '@/app/_shared/ui';
import { DISPOSAL_LABEL, DISPOSALS } from '@/lib/shop/fluid-entry';
import {
  countDropsAction,
  disposeAction,
  extendAction,
  openBottleAction,
  readLevelAction,
} from '../../actions';

interface About {
  readonly toolId: string;
  readonly stamp: { entryId: string; deviceAtMs: number };
  readonly today: string;
}

/** Opens a bottle, once: its opened life begins, and the day is written on it. */
export function OpenForm({ toolId, stamp, today }: About) {
  return (
    <EntryForm action={openBottleAction} stamp={stamp} label="Open">
      {(state) => (
        <>
          <input type="hidden" name="toolId" value={toolId} />
          <Field
            id="opened-on"
            name="onDay"
            label="Opened on"
            type="date"
            required
            hint="Write the same day on the bottle"
            defaultValue={typedOr(state, 'onDay', today)}
            error={fieldError(state, 'onDay')}
          />
          <div>
            <SubmitButton>Mark as opened</SubmitButton>
          </div>
        </>
      )}
    </EntryForm>
  );
}

/** How much is left: what the shop's own use is learnt from. */
export function LevelForm({ toolId, stamp, today, levelMl }: About & { readonly levelMl: number | null }) {
  return (
    <EntryForm action={readLevelAction} stamp={stamp} label="Level">
      {(state) => (
        <>
          <input type="hidden" name="toolId" value={toolId} />
          <input type="hidden" name="onDay" value={today} />
          <NumberField
            name="levelMl"
            label="Left in the bottle"
            entry="decimal"
            unit="mL"
            required
            defaultValue={typedOr(state, 'levelMl', levelMl === null ? '' : String(levelMl))}
            error={fieldError(state, 'levelMl')}
          />
          <div>
            <SubmitButton>Write the level down</SubmitButton>
          </div>
        </>
      )}
    </EntryForm>
  );
}

/** The ten-second count: so many drops into a small measure. */
export function DropsForm({ toolId, stamp, today }: About) {
  return (
    <EntryForm action={countDropsAction} stamp={stamp} label="Count drops">
      {(state) => (
        <>
          <input type="hidden" name="toolId" value={toolId} />
          <input type="hidden" name="onDay" value={today} />
          <p className="quiet">
            Count 100 drops into a small measure, held as you hold it at the bench, and read the mL.
          </p>
          <div className="columns">
            <NumberField
              name="drops"
              label="Drops"
              unit="drops"
              required
              defaultValue={typedOr(state, 'drops', '100')}
              error={fieldError(state, 'drops')}
            />
            <NumberField
              name="volumeMl"
              label="Volume"
              entry="decimal"
              unit="mL"
              required
              hint="Oils: 100 drops are 1.5 to 3 mL"
              defaultValue={typedOr(state, 'volumeMl', '')}
              error={fieldError(state, 'volumeMl')}
            />
          </div>
          <div>
            <SubmitButton tone="quiet">Write the count down</SubmitButton>
          </div>
        </>
      )}
    </EntryForm>
  );
}

/** A longer life after an inspection: a lead or quality decides, with the reason. */
export function ExtendForm({ toolId, stamp, today }: About) {
  return (
    <EntryForm action={extendAction} stamp={stamp} label="Extend its life">
      {(state) => (
        <>
          <input type="hidden" name="toolId" value={toolId} />
          <input type="hidden" name="onDay" value={today} />
          <div className="columns">
            <Field
              name="inspection"
              label="Inspected, and found"
              required
              maxLength={300}
              hint="Clear, no water, no separation, no smell; a trial thread cut clean"
              defaultValue={typedOr(state, 'inspection', '')}
              error={fieldError(state, 'inspection')}
            />
            <Field
              name="untilDay"
              label="Good until"
              type="date"
              required
              defaultValue={typedOr(state, 'untilDay', '')}
              error={fieldError(state, 'untilDay')}
            />
            <Field
              id="extend-reason"
              name="reason"
              label="Why"
              required
              maxLength={300}
              defaultValue={typedOr(state, 'reason', '')}
              error={fieldError(state, 'reason')}
            />
          </div>
          <p className="quiet">
            Decided by a lead or by quality. For oxygen work the day on the label still counts.
          </p>
          <div>
            <SubmitButton tone="quiet">Extend it</SubmitButton>
          </div>
        </>
      )}
    </EntryForm>
  );
}

/** The end of a bottle. */
export function DisposeForm({ toolId, stamp, today, levelMl }: About & { readonly levelMl: number | null }) {
  return (
    <EntryForm action={disposeAction} stamp={stamp} label="Dispose of it">
      {(state) => (
        <>
          <input type="hidden" name="toolId" value={toolId} />
          <div className="columns">
            <Select
              name="how"
              label="Where it goes"
              options={DISPOSALS.map((how) => ({ value: how, label: DISPOSAL_LABEL[how] }))}
              defaultValue={typedOr(state, 'how', 'waste-carrier')}
              error={fieldError(state, 'how')}
            />
            <Field
              name="transferNote"
              label="Transfer note"
              hint="Its number; keep the note"
              maxLength={80}
              defaultValue={typedOr(state, 'transferNote', '')}
              error={fieldError(state, 'transferNote')}
            />
            <NumberField
              id="dispose-volume"
              name="volumeMl"
              label="What was left"
              entry="decimal"
              unit="mL"
              required
              defaultValue={typedOr(state, 'volumeMl', levelMl === null ? '' : String(levelMl))}
              error={fieldError(state, 'volumeMl')}
            />
            <Field
              id="disposed-on"
              name="onDay"
              label="On"
              type="date"
              required
              defaultValue={typedOr(state, 'onDay', today)}
              error={fieldError(state, 'onDay')}
            />
          </div>
          <div>
            <SubmitButton tone="quiet">Dispose of it</SubmitButton>
          </div>
        </>
      )}
    </EntryForm>
  );
}
