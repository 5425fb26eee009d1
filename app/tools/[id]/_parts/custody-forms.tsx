'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { Choice, Field, type Option, Select, SubmitButton } from '@/app/_shared/ui';
import { END_CAUSES, type ToolState } from '@/lib/shop/vocabulary';
import {
  endEdgeAction,
  issueToolAction,
  moveToolAction,
  renewEdgeAction,
  returnToolAction,
} from '../actions';

interface About {
  readonly toolId: string;
  readonly stamp: EntryStamp;
}

/** Issues the tool to a person, for a job line or on loan. */
export function IssueForm({
  toolId,
  stamp,
  people,
  lines,
  lineId,
}: About & {
  readonly people: readonly Option[];
  readonly lines: readonly Option[];
  readonly lineId: string;
}) {
  return (
    <EntryForm action={issueToolAction} stamp={stamp} label="Issue">
      <input type="hidden" name="toolId" value={toolId} />
      <div className="columns">
        <Select name="toPersonId" label="To" placeholder="Choose a name" options={people} required />
        <Select
          id="issue-line"
          name="jobLineId"
          label="For job"
          placeholder="On loan, no job"
          options={lines}
          defaultValue={lineId}
        />
        <Field name="bench" label="Bench" optional maxLength={24} />
      </div>
      <div>
        <SubmitButton pendingText="Issuing…">Issue it</SubmitButton>
      </div>
    </EntryForm>
  );
}

/** Takes the tool back: four answers, one press. */
export function ReturnForm({ toolId, stamp }: About) {
  return (
    <EntryForm action={returnToolAction} stamp={stamp} label="Return">
      <input type="hidden" name="toolId" value={toolId} />
      <Choice
        name="condition"
        legend="It came back"
        required
        defaultValue="ok"
        options={[
          { value: 'ok', label: 'in order', note: 'back in the crib' },
          { value: 'dull', label: 'dull', note: 'set aside' },
          { value: 'damaged', label: 'damaged', note: 'set aside; all pieces found?' },
          { value: 'unsure', label: 'not sure', note: 'set aside for a look' },
        ]}
      />
      <label className="check">
        <input type="checkbox" name="piecesOwed" value="yes" />
        <span>Something broke off it: its pieces are to be found</span>
      </label>
      <div>
        <SubmitButton pendingText="Taking back…">Take it back</SubmitButton>
      </div>
    </EntryForm>
  );
}

const MOVES: Record<ToolState, string> = {
  'in-crib': 'back in the crib',
  quarantined: 'quarantine: set aside, not to be used',
  calibration: 'out for calibration',
  regrind: 'out for regrind',
  lost: 'lost',
  scrapped: 'scrapped',
  issued: 'issued',
};

/** Moves the tool somewhere else, with a reason. */
export function MoveForm({ toolId, stamp, to }: About & { readonly to: readonly ToolState[] }) {
  return (
    <EntryForm action={moveToolAction} stamp={stamp} label="Move">
      <input type="hidden" name="toolId" value={toolId} />
      <div className="columns">
        <Select
          name="to"
          label="Where to"
          placeholder="Choose"
          required
          options={to.map((value) => ({ value, label: MOVES[value] }))}
        />
        <Field name="backOnDay" label="Expected back" type="date" optional />
        <Field id="move-reason" name="reason" label="Why" maxLength={300} />
      </div>
      <div>
        <SubmitButton tone="quiet">Move it</SubmitButton>
      </div>
    </EntryForm>
  );
}

/** Takes the edge out of service. No blame: the cause decides whether it counts as wear. */
export function EndEdgeForm({ toolId, stamp, canRegrind }: About & { readonly canRegrind: boolean }) {
  const where: Option[] = [
    ...(canRegrind ? [{ value: 'regrind', label: 'out for regrind' }] : []),
    { value: 'scrapped', label: 'scrapped' },
    { value: 'quarantined', label: 'quarantine, for a look' },
  ];
  return (
    <EntryForm action={endEdgeAction} stamp={stamp} label="Take the edge out of service">
      <input type="hidden" name="toolId" value={toolId} />
      <div className="columns">
        <Select
          name="cause"
          label="What happened"
          hint="Only worn edges count as wear"
          placeholder="Choose"
          required
          options={END_CAUSES.map(({ code, label }) => ({ value: code, label }))}
        />
        <Select id="end-to" name="to" label="It goes" options={where} defaultValue={where[0]?.value ?? ''} />
        <Field id="end-reason" name="reason" label="Note" optional maxLength={300} />
      </div>
      <label className="check">
        <input type="checkbox" name="piecesOwed" value="yes" />
        <span>Something broke off it: its pieces are to be found</span>
      </label>
      <div>
        <SubmitButton tone="quiet">Take out of service</SubmitButton>
      </div>
    </EntryForm>
  );
}

/** A blade back from regrind. Its first-off is owed, and written down with its gauges once it is cut. */
export function RenewForm({ toolId, stamp, today }: About & { readonly today: string }) {
  return (
    <EntryForm action={renewEdgeAction} stamp={stamp} label="Back from regrind">
      <input type="hidden" name="toolId" value={toolId} />
      <Field
        id="renew-day"
        name="onDay"
        label="Came back on"
        hint="Its first-off is then owed: cut one cone, gauge it, write it down here"
        type="date"
        required
        defaultValue={today}
      />
      <div>
        <SubmitButton>New edge, into the crib</SubmitButton>
      </div>
    </EntryForm>
  );
}
