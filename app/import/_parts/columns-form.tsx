'use client';

import { type FormEvent, useState } from 'react';
import type { FileColumns } from '@/app/_import/import-line';
import { listWords } from '@/app/_shared/format';
import { Button, Select } from '@/app/_shared/ui';
import type { ImportKind } from '@/lib/import/column';
import { COLUMNS } from '@/lib/import/columns';
import type { ColumnMapping } from '@/lib/import/match-columns';
import styles from './import.module.css';

interface ColumnsFormProps {
  readonly kind: ImportKind;
  readonly columns: FileColumns;
  readonly checkAgain: (mapping: ColumnMapping) => void;
}

/** How the columns of the file are read, each of them to be changed. */
export function ColumnsForm({ kind, columns, checkAgain }: ColumnsFormProps) {
  const [mapping, setMapping] = useState(columns.mapping);
  const options = COLUMNS[kind].map(({ key }) => ({ value: key, label: key }));
  const changed = mapping.some((key, at) => key !== columns.mapping[at]);
  const read = columns.mapping.filter((key) => key !== null).length;
  const wanting = columns.missing.length > 0 || columns.doubled.length > 0;

  const send = (event: FormEvent) => {
    event.preventDefault();
    checkAgain(mapping);
  };

  return (
    <details open={wanting || changed} className={styles.fold}>
      <summary>
        How the columns are read: {read} of {columns.header.length}
      </summary>
      <form onSubmit={send} className="stack" aria-label="How the columns are read">
        {columns.missing.length > 0 ? (
          <p>
            Not found: <strong>{listWords(columns.missing)}</strong>. Choose below which columns they are.
          </p>
        ) : null}
        {columns.unread.length > 0 ? <p className="quiet">Not read: {listWords(columns.unread)}.</p> : null}
        <div className={styles.mapping}>
          {columns.header.map((name, at) => (
            <Select
              // biome-ignore lint/suspicious/noArrayIndexKey: two columns may have one name; their places stay
              key={at}
              name={`column-${at}`}
              label={name.trim() === '' ? `Column ${at + 1}, without a name` : name}
              placeholder="not read"
              options={options}
              value={mapping[at] ?? ''}
              onChange={(event) => setMapping(mapping.with(at, event.target.value || null))}
            />
          ))}
        </div>
        <div>
          <Button type="submit" tone={wanting ? 'primary' : 'quiet'} disabled={!changed}>
            Check again with these columns
          </Button>
        </div>
      </form>
    </details>
  );
}
