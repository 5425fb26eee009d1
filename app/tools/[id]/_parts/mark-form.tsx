'use client';

import { EntryForm } from '@/app/_shared/form/entry-form';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { Field, Select, SubmitButton } from '@/app/_shared/ui';
import { CODE_KIND_LABEL, CODE_KINDS } from '@/lib/labels/code-kind';
import { MARK_WAY_LABEL, MARK_WAYS } from '@/lib/shop/mark';
import { markToolAction } from '../actions';

interface Props {
  readonly toolId: string;
  readonly today: string;
  readonly stamp: EntryStamp;
}

/** The same ID marked on the tool again, and scanned back off it so that it cannot sit on another. */
export function MarkForm({ toolId, today, stamp }: Props) {
  return (
    <EntryForm action={markToolAction} stamp={stamp} label="Marked again">
      <input type="hidden" name="toolId" value={toolId} />
      <input type="hidden" name="onDay" value={today} />
      <Select
        name="how"
        label="How"
        id="mark-how"
        defaultValue="label"
        options={MARK_WAYS.map((way) => ({ value: way, label: MARK_WAY_LABEL[way] }))}
      />
      <Select
        name="codeKind"
        label="Code"
        id="mark-code"
        placeholder="ID alone"
        defaultValue="data-matrix"
        options={CODE_KINDS.map((kind) => ({ value: kind, label: CODE_KIND_LABEL[kind] }))}
      />
      <Field
        name="readAs"
        id="mark-read"
        label="The new mark, scanned or read off"
        hint="So that it cannot sit on the wrong tool"
        optional
        maxLength={40}
        autoComplete="off"
      />
      <div>
        <SubmitButton tone="quiet">Write it down</SubmitButton>
      </div>
    </EntryForm>
  );
}
