'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { Field, NumberField, Panel, Select, SubmitButton } from '@/app/_shared/ui';
import { DECISION_RULE_OPTIONS } from '@/app/gauges/_parts/decision-rules';
import type { GaugeSettings } from '@/lib/shop/gauge-settings';
import { setGaugeSettingsAction } from '../gauge-settings-action';

interface GaugeRulesPanelProps {
  /** What the shop has set, or what holds until it does. */
  readonly settings: GaugeSettings;
  readonly isSet: boolean;
  readonly stamp: EntryStamp;
}

/** By which rule certificates are judged, and how sure an interval shall be: the shop’s own choice, with its reason. */
export function GaugeRulesPanel({ settings, isSet, stamp }: GaugeRulesPanelProps) {
  return (
    <Panel title="Gauges" id="gauges" aside={isSet ? undefined : 'not set yet: these hold until then'}>
      <EntryForm action={setGaugeSettingsAction} stamp={stamp} label="How gauges are judged">
        <div className="columns">
          <Select
            name="decisionRule"
            label="It counts as in when the error lies"
            options={DECISION_RULE_OPTIONS}
            defaultValue={settings.decisionRule}
            answers="settings.decisionRule"
          />
          <NumberField
            name="targetReliability"
            label="Still in at the end of its interval, at least"
            entry="decimal"
            unit="%"
            hint="80 to 99"
            defaultValue={String(Number((settings.targetReliability * 100).toPrecision(6)))}
            answers="settings.targetReliability"
          />
        </div>
        <Field
          id="gauge-settings-why"
          name="why"
          label="Why"
          hint="Whose rule it is, or what it rests on"
          required
          maxLength={300}
          defaultValue={isSet ? settings.why : ''}
          answers="settings.why"
        />
        <p className="fine">
          A certificate on record keeps the rule that it was judged by. Intervals in force stay; only what is
          proposed follows.
        </p>
        <div>
          <SubmitButton tone="quiet">Save</SubmitButton>
        </div>
      </EntryForm>
    </Panel>
  );
}
