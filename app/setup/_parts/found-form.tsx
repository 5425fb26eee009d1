'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { LENGTH_UNIT_OPTIONS } from '@/app/_shared/form/option-lists';
import { Field, Panel, Select, SubmitButton } from '@/app/_shared/ui';
import { foundShopAction } from '../actions';
import { ROLE_OPTIONS } from './options';
import type { SizeTile } from './size-tiles';
import { TickSizes } from './tick-sizes';

interface FoundFormProps {
  readonly stamp: EntryStamp;
  readonly sizes: readonly SizeTile[];
}

/** The first page of a new shop: its name, who is setting it up, the sizes in use. */
export function FoundForm({ stamp, sizes }: FoundFormProps) {
  return (
    <Panel title="First things">
      <EntryForm action={foundShopAction} stamp={stamp} label="Found the shop">
        <div className="columns">
          <Field name="shopName" label="The shop’s name" required maxLength={80} answers="shop.name" />
          <Field
            name="personName"
            label="Your name or role"
            hint="A role such as Lead-1 is enough"
            required
            maxLength={40}
            answers="person.name"
          />
          <Select name="personRole" label="You are" options={ROLE_OPTIONS} defaultValue="lead" />
          <Select name="units" label="Lengths in" options={LENGTH_UNIT_OPTIONS} defaultValue="in" />
        </div>
        <TickSizes sizes={sizes} />
        <div>
          <SubmitButton pendingText="Setting up…">Set up the shop</SubmitButton>
        </div>
      </EntryForm>
    </Panel>
  );
}
