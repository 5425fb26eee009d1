'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import { fieldError, typedOr } from '@/app/_shared/form/form-state';
import { Field, Panel, Select, SubmitButton } from '@/app/_shared/ui';
import { foundShopAction } from '../actions';
import { ROLE_OPTIONS, UNIT_OPTIONS } from './options';
import type { SizeTile } from './size-tiles';
import { TickSizes } from './tick-sizes';

interface FoundFormProps {
  readonly stamp: { entryId: string; deviceAtMs: number };
  readonly sizes: readonly SizeTile[];
}

/** The first page of a new shop: its name, who is setting it up, the sizes in use. */
export function FoundForm({ stamp, sizes }: FoundFormProps) {
  return (
    <Panel title="First things">
      <EntryForm action={foundShopAction} stamp={stamp} label="Found the shop">
        {(state) => (
          <>
            <div className="columns">
              <Field
                name="shopName"
                label="The shop’s name"
                required
                maxLength={80}
                defaultValue={typedOr(state, 'shopName', '')}
                error={fieldError(state, 'shop.name')}
              />
              <Field
                name="personName"
                label="Your name or role"
                hint="A role such as Lead-1 is enough"
                required
                maxLength={40}
                defaultValue={typedOr(state, 'personName', '')}
                error={fieldError(state, 'person.name')}
              />
              <Select
                name="personRole"
                label="You are"
                options={ROLE_OPTIONS}
                defaultValue={typedOr(state, 'personRole', 'lead')}
              />
              <Select
                name="units"
                label="Lengths in"
                options={UNIT_OPTIONS}
                defaultValue={typedOr(state, 'units', 'in')}
              />
            </div>
            <TickSizes sizes={sizes} error={fieldError(state, 'connectionIds')} />
            <div>
              <SubmitButton pendingText="Setting up…">Set up the shop</SubmitButton>
            </div>
          </>
        )}
      </EntryForm>
    </Panel>
  );
}
