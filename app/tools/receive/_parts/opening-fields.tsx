'use client';

import { typedOr } from '@/app/_shared/form/form-state';
import { useLastSending } from '@/app/_shared/form/given-back';
import { Choice, NumberField, Select } from '@/app/_shared/ui';
import type { PartChoice } from './part-choice';

/** What an edge had cut before it came here. The figures are folded away unless that is what was said. */
export function OpeningFields({ choice }: { readonly choice: PartChoice }) {
  const isCounted = typedOr(useLastSending(), 'opening', 'new') === 'counted';
  return (
    <>
      <Choice
        name="opening"
        legend="What it has cut before"
        defaultValue="new"
        options={[
          { value: 'new', label: 'nothing, it is new' },
          { value: 'counted', label: 'about so many ends', note: 'say how many below' },
          { value: 'unknown', label: 'nobody knows' },
        ]}
      />
      <details open={isCounted}>
        <summary>Ends already cut</summary>
        <div className="columns">
          <NumberField name="openingEnds" label="Ends" unit="ends" answers="opening.ends" />
          <Select
            name="openingConnectionId"
            label="Of size"
            options={choice.connections}
            defaultValue={choice.connections[0]?.value ?? ''}
          />
          <Select
            name="openingMaterialId"
            label="In"
            options={choice.materials}
            defaultValue={choice.materials[0]?.value ?? ''}
          />
        </div>
      </details>
    </>
  );
}
