'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { SubmitButton } from '@/app/_shared/ui';
import { scrapToolAction } from '../care-actions';

interface Props {
  readonly toolId: string;
  readonly stamp: EntryStamp;
  readonly regrindLimit: number;
}

/** A blade at its regrind limit: nothing more can be ground off it. */
export function ScrapForm({ toolId, stamp, regrindLimit }: Props) {
  return (
    <EntryForm action={scrapToolAction} stamp={stamp} label="Scrap">
      <input type="hidden" name="toolId" value={toolId} />
      <input type="hidden" name="reason" value={`At its limit of ${regrindLimit} regrinds.`} />
      <p>
        It has been reground {regrindLimit} times, as often as its part allows. Scrap it; if the limit is set
        too low, change it on the part.
      </p>
      <div>
        <SubmitButton>Scrap it</SubmitButton>
      </div>
    </EntryForm>
  );
}
