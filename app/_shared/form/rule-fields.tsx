'use client';

import { Field, NumberField } from '@/app/_shared/ui';
import type { AcceptanceRule } from '@/lib/shop/acceptance-rule';

/** The fields of an acceptance rule: how far NOT GO may run on, exposed threads, and whose rule it is. */
export function RuleFields({
  rule,
  otherwise,
}: {
  readonly rule: AcceptanceRule | undefined;
  /** What holds where nothing is written here, in words. */
  readonly otherwise: string;
}) {
  return (
    <div className="columns">
      <NumberField
        name="notGoTurnsMax"
        label="NOT GO may run on"
        entry="decimal"
        unit="turns"
        hint={otherwise}
        optional
        defaultValue={rule?.notGoTurnsMax ?? ''}
        answers="acceptanceRule.notGoTurnsMax"
      />
      <Field
        name="ruleWhose"
        label="Whose rule it is"
        hint="Drawing, specification or standard"
        optional
        maxLength={120}
        defaultValue={rule?.whose ?? ''}
        answers="acceptanceRule.whose"
      />
      <NumberField
        name="exposedThreadsMin"
        label="Exposed threads, at least"
        entry="decimal"
        hint="Between collar and cone: 1 to 2 is usual"
        optional
        defaultValue={rule?.exposedThreadsMin ?? ''}
        answers="acceptanceRule.exposedThreadsMin"
      />
      <NumberField
        name="exposedThreadsMax"
        label="At most"
        entry="decimal"
        optional
        defaultValue={rule?.exposedThreadsMax ?? ''}
        answers="acceptanceRule.exposedThreadsMax"
      />
    </div>
  );
}
