'use client';

import { type DragEvent, type FormEvent, useRef, useState } from 'react';
import { Button, Choice, Field, FormMessage } from '@/app/_shared/ui';
import { IMPORT_KINDS, type ImportKind } from '@/lib/import/column';
import { FILE_BYTES_MAX } from '@/lib/import/decode-text';
import styles from './import.module.css';
import { KIND_WORDS } from './kind-words';

interface ChooseFormProps {
  readonly take: (kind: ImportKind, file: File) => void;
}

/** What the file holds, and the file: chosen, or dropped anywhere on this form. */
export function ChooseForm({ take }: ChooseFormProps) {
  const form = useRef<HTMLFormElement>(null);
  const [over, setOver] = useState(false);
  const [refusal, setRefusal] = useState('');

  const send = (event: FormEvent) => {
    event.preventDefault();
    if (form.current === null) return;
    const fields = new FormData(form.current);
    const kind = IMPORT_KINDS.find((name) => name === fields.get('kind'));
    const file = fields.get('file');
    if (kind === undefined || !(file instanceof File)) return;
    if (file.size > FILE_BYTES_MAX)
      setRefusal('This file is larger than 50 MB. Split it into several files.');
    else take(kind, file);
  };

  const drop = (event: DragEvent) => {
    event.preventDefault();
    setOver(false);
    const field = form.current?.elements.namedItem('file');
    if (!(field instanceof HTMLInputElement) || event.dataTransfer.files.length === 0) return;
    field.files = event.dataTransfer.files;
    guessKind();
  };

  /** A file named after what it holds needs no second choice. */
  const guessKind = () => {
    setRefusal('');
    const field = form.current?.elements.namedItem('file');
    const name = field instanceof HTMLInputElement ? (field.files?.[0]?.name ?? '').toLowerCase() : '';
    const guess = IMPORT_KINDS.find((kind) => name.includes(kind.slice(0, -1)));
    const kinds = form.current?.elements.namedItem('kind');
    if (guess !== undefined && kinds instanceof RadioNodeList && kinds.value === '') kinds.value = guess;
  };

  return (
    <form
      ref={form}
      onSubmit={send}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={drop}
      className={styles.choose}
      data-over={over ? '' : undefined}
      aria-label="Choose a file"
    >
      <Choice
        name="kind"
        legend="What the file holds"
        required
        options={IMPORT_KINDS.map((kind) => ({
          value: kind,
          label: KIND_WORDS[kind].label,
          note: KIND_WORDS[kind].row,
        }))}
      />
      <Field
        name="file"
        type="file"
        label="The file"
        hint="CSV in UTF-8, up to 50 MB. Choose it, or drop it here."
        accept=".csv,.txt,.tsv,text/csv,text/plain"
        required
        onChange={guessKind}
      />
      <FormMessage tone="refusal">{refusal}</FormMessage>
      <div className="cluster">
        <Button type="submit" tone="primary">
          Check the file
        </Button>
        <span className="quiet">Nothing is written yet.</span>
      </div>
    </form>
  );
}
