'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { Field, SubmitButton } from '@/app/_shared/ui';
import { closeKitAction, searchKitAction } from '../actions';

interface About {
  readonly kitId: string;
  readonly stamp: EntryStamp;
}

/** The kit is complete: one press. */
export function CloseForm({ kitId, stamp }: About) {
  return (
    <EntryForm action={closeKitAction} stamp={stamp} label="Put the kit away">
      <input type="hidden" name="kitId" value={kitId} />
      <div>
        <SubmitButton>Put the kit away</SubmitButton>
      </div>
    </EntryForm>
  );
}

function Ticks({ name, ids, ticked }: { name: string; ids: readonly string[]; ticked: readonly string[] }) {
  return ids.map((id) => (
    <label key={id} className="check">
      <input type="checkbox" name={name} value={id} defaultChecked={ticked.includes(id)} />
      <span className="id">{id}</span>
    </label>
  ));
}

/** Opens the search for what did not come back. */
export function SearchForm({
  kitId,
  stamp,
  outIds,
  missing,
}: About & { readonly outIds: readonly string[]; readonly missing: readonly string[] }) {
  return (
    <EntryForm action={searchKitAction} stamp={stamp} label="Search for what is missing">
      <input type="hidden" name="kitId" value={kitId} />
      <fieldset className="stack-tight">
        <legend>Did not come back</legend>
        <Ticks name="missing" ids={outIds} ticked={missing} />
      </fieldset>
      <Field name="lastSeen" label="Last seen" optional maxLength={200} />
      <div>
        <SubmitButton tone="quiet">Search for it</SubmitButton>
      </div>
    </EntryForm>
  );
}

/** Closes the kit with something lost: for a lead or quality, with where was searched. */
export function LossForm({ kitId, stamp, outIds }: About & { readonly outIds: readonly string[] }) {
  return (
    <EntryForm action={closeKitAction} stamp={stamp} label="Close with a loss">
      <input type="hidden" name="kitId" value={kitId} />
      <p className="quiet">A lead or quality does this. The items go to lost until they are found.</p>
      <fieldset className="stack-tight">
        <legend>Given up as lost</legend>
        <Ticks name="lost" ids={outIds} ticked={[]} />
      </fieldset>
      <Field id="loss-reason" name="reason" label="Where was searched" required maxLength={300} />
      <div>
        <SubmitButton tone="quiet">Close with the loss</SubmitButton>
      </div>
    </EntryForm>
  );
}
