'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import { fieldError, typedOr } from '@/app/_shared/form/form-state';
import { RuleFields } from '@/app/_shared/form/rule-fields';
import { Field, NumberField, Panel, Select, SubmitButton } from '@/app/_shared/ui';
import type { Shop } from '@/lib/shop/shop-settings';
import { setShopAction } from '../actions';
import { UNIT_OPTIONS } from './options';

/** The shop's settings: how sure the plan has to be, and how much fluid is lost. */
export function SettingsPanel({
  shop,
  stamp,
}: {
  readonly shop: Shop;
  readonly stamp: { entryId: string; deviceAtMs: number };
}) {
  return (
    <Panel title="Settings">
      <EntryForm action={setShopAction} stamp={stamp} label="Settings">
        {(state) => (
          <>
            <Field
              name="shopName"
              label="The shop’s name"
              required
              maxLength={80}
              defaultValue={typedOr(state, 'shopName', shop.name)}
              error={fieldError(state, 'name')}
            />
            <div className="columns">
              <Select
                name="units"
                label="Lengths in"
                options={UNIT_OPTIONS}
                defaultValue={typedOr(state, 'units', shop.units)}
              />
              <Field
                name="currency"
                label="Currency"
                hint="Three letters"
                maxLength={3}
                defaultValue={typedOr(state, 'currency', shop.currency)}
                error={fieldError(state, 'currency')}
              />
              <NumberField
                name="required"
                label="How sure for ordinary work"
                entry="decimal"
                unit="%"
                defaultValue={typedOr(state, 'required', percentOf(shop.requiredProbability))}
                error={fieldError(state, 'requiredProbability')}
              />
              <NumberField
                name="requiredPrecious"
                label="For what cannot be remade"
                entry="decimal"
                unit="%"
                defaultValue={typedOr(state, 'requiredPrecious', percentOf(shop.requiredProbabilityPrecious))}
                error={fieldError(state, 'requiredProbabilityPrecious')}
              />
              <NumberField
                name="fluidWasteFactor"
                label="Fluid used over fluid planned"
                hint="What runs off and is wiped away: 2 to 5 is usual"
                entry="decimal"
                unit="×"
                defaultValue={typedOr(state, 'fluidWasteFactor', String(shop.fluidWasteFactor))}
                error={fieldError(state, 'fluidWasteFactor')}
              />
            </div>
            <fieldset>
              <legend>An end is accepted by this rule, where neither its job nor its size says more</legend>
              <RuleFields
                state={state}
                rule={shop.acceptanceRule}
                otherwise="Left empty: nobody may assume one"
              />
            </fieldset>
            <div>
              <SubmitButton tone="quiet">Save</SubmitButton>
            </div>
          </>
        )}
      </EntryForm>
    </Panel>
  );
}

function percentOf(share: number): string {
  return String(Math.round(share * 1000) / 10);
}
