'use client';

import { Field, NumberField } from '@/app/_shared/ui';
import type { AcceptanceRule } from '@/lib/shop/acceptance-rule';
import { type FormState, fieldError, typedOr } from './form-state';

/** The fields of an acceptance rule: how far NOT GO may run on, exposed threads, and whose rule it is. */
export function RuleFields({
  state,
  rule,
  otherwise,
}: {
  readonly state: FormState;
  readonly rule: AcceptanceRule | undefined;
  /** What holds where nothing is written here, in words. */
  readonly otherwise: string;
}) {
  const kept = (name: string, value: number | null | undefined) =>
    typedOr(state, name, value === null || value === undefined ? '' : String(value));
  return (
    <div className="columns">
      <NumberField
        name="notGoTurnsMax"
        label="NOT GO may run on"
        entry="decimal"
        unit="turns"
        hint={otherwise}
        optional
        defaultValue={kept('notGoTurnsMax', rule?.notGoTurnsMax)}
        error={fieldError(state, 'acceptanceRule.notGoTurnsMax')}
      />
      <Field
        name="ruleWhose"
        label="Whose rule it is"
        hint="Drawing, specification or standard"
        optional
        maxLength={120}
        defaultValue={typedOr(state, 'ruleWhose', rule?.whose ?? '')}
        error={fieldError(state, 'acceptanceRule.whose')}
      />
      <NumberField
        name="exposedThreadsMin"
        label="Exposed threads, at least"
        entry="decimal"
        hint="Between collar and cone: 1 to 2 is usual"
        optional
        defaultValue={kept('exposedThreadsMin', rule?.exposedThreadsMin)}
        error={fieldError(state, 'acceptanceRule.exposedThreadsMin')}
      />
      <NumberField
        name="exposedThreadsMax"
        label="At most"
        entry="decimal"
        optional
        defaultValue={kept('exposedThreadsMax', rule?.exposedThreadsMax)}
        error={fieldError(state, 'acceptanceRule.exposedThreadsMax')}
      />
    </div>
  );
}
