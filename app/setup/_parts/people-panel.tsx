'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { Field, Panel, Select, SubmitButton } from '@/app/_shared/ui';
import type { Person } from '@/lib/shop/noun';
import { setPersonAction } from '../actions';
import { ROLE_OPTIONS } from './options';

/** The people whose names can be chosen at a tablet. Keep no more than the work needs: a role is enough. */
export function PeoplePanel({
  people,
  stamp,
}: {
  readonly people: readonly Person[];
  readonly stamp: EntryStamp;
}) {
  return (
    <Panel title="People">
      <div className="stack">
        <p>{people.map(({ name, role }) => `${name} (${role})`).join(', ')}</p>
        <EntryForm action={setPersonAction} stamp={stamp} label="Add a person">
          <div className="columns">
            <Field name="personName" label="Name or role" required maxLength={40} answers="name" />
            <Select name="personRole" label="Works as" options={ROLE_OPTIONS} defaultValue="technician" />
          </div>
          <div>
            <SubmitButton tone="quiet">Add</SubmitButton>
          </div>
        </EntryForm>
      </div>
    </Panel>
  );
}
