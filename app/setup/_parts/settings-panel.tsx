'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { LENGTH_UNIT_OPTIONS } from '@/app/_shared/form/option-lists';
import { RuleFields } from '@/app/_shared/form/rule-fields';
import { Field, NumberField, Panel, Select, SubmitButton } from '@/app/_shared/ui';
import type { Shop } from '@/lib/shop/shop-settings';
import { setShopAction } from '../actions';

/** The shop's settings: how sure the plan has to be, and how much fluid is lost. */
export function SettingsPanel({ shop, stamp }: { readonly shop: Shop; readonly stamp: EntryStamp }) {
  return (
    <Panel title="Settings">
      <EntryForm action={setShopAction} stamp={stamp} label="Settings">
        <Field
          name="shopName"
          label="The shop’s name"
          required
          maxLength={80}
          defaultValue={shop.name}
          answers="name"
        />
        <div className="columns">
          <Select name="units" label="Lengths in" options={LENGTH_UNIT_OPTIONS} defaultValue={shop.units} />
          <Field
            name="currency"
            label="Currency"
            hint="Three letters"
            maxLength={3}
            defaultValue={shop.currency}
          />
          <NumberField
            name="required"
            label="How sure for ordinary work"
            entry="decimal"
            unit="%"
            defaultValue={percentOf(shop.requiredProbability)}
            answers="requiredProbability"
          />
          <NumberField
            name="requiredPrecious"
            label="For what cannot be remade"
            entry="decimal"
            unit="%"
            defaultValue={percentOf(shop.requiredProbabilityPrecious)}
            answers="requiredProbabilityPrecious"
          />
          <NumberField
            name="fluidWasteFactor"
            label="Fluid used over fluid planned"
            hint="What runs off and is wiped away: 2 to 5 is usual"
            entry="decimal"
            unit="×"
            defaultValue={String(shop.fluidWasteFactor)}
          />
        </div>
        <fieldset>
          <legend>An end is accepted by this rule, where neither its job nor its size says more</legend>
          <RuleFields rule={shop.acceptanceRule} otherwise="Left empty: nobody may assume one" />
        </fieldset>
        <div>
          <SubmitButton tone="quiet">Save</SubmitButton>
        </div>
      </EntryForm>
    </Panel>
  );
}

function percentOf(share: number): string {
  return String(Math.round(share * 1000) / 10);
}
