'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { Field, NumberField, SubmitButton } from '@/app/_shared/ui';
import { setMaterialAction } from '@/app/setup/actions';

/** A row of the material table as it is typed. */
export interface MaterialDraft {
  /** Empty for a new one. */
  readonly id: string;
  readonly name: string;
  readonly condition: string;
  readonly factor: string;
  readonly factorGiveOrTake: string;
  readonly isReference: boolean;
}

/** A tube material and the first guess of how fast it wears an edge. The log takes over as edges wear out in it. */
export function MaterialForm({
  draft,
  stamp,
}: {
  readonly draft: MaterialDraft;
  readonly stamp: EntryStamp;
}) {
  return (
    <EntryForm action={setMaterialAction} stamp={stamp} label="Material">
      <input type="hidden" name="id" value={draft.id} />
      <input type="hidden" name="isReference" value={draft.isReference ? 'yes' : 'no'} />
      <div className="columns">
        <Field
          name="name"
          label="Material"
          hint="As on the certificate, such as 316 or Alloy 625"
          required
          maxLength={60}
          defaultValue={draft.name}
        />
        <Field
          name="condition"
          label="Condition"
          hint="Annealed, cold-worked: it can double the wear"
          maxLength={60}
          defaultValue={draft.condition}
        />
        {draft.isReference ? (
          <>
            <input type="hidden" name="factor" value="1" />
            <input type="hidden" name="factorGiveOrTake" value="1" />
          </>
        ) : (
          <>
            <NumberField
              name="factor"
              label="Wears an edge so many times faster"
              hint="Than the reference material"
              entry="decimal"
              unit="×"
              required
              defaultValue={draft.factor}
            />
            <NumberField
              name="factorGiveOrTake"
              label="Give or take a factor of"
              entry="decimal"
              unit="×"
              required
              defaultValue={draft.factorGiveOrTake}
            />
          </>
        )}
      </div>
      {draft.isReference ? (
        <p className="quiet">
          This is the reference: an edge’s life is counted in ends of it, so its factor is 1.
        </p>
      ) : null}
      <div>
        <SubmitButton>{draft.id === '' ? 'Add the material' : 'Change the row'}</SubmitButton>
      </div>
    </EntryForm>
  );
}
