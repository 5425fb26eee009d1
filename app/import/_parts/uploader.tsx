'use client';

import { useEffect, useRef } from 'react';
import { Button, ButtonLink, FormMessage, Panel } from '@/app/_shared/ui';
import { BusyBar } from './busy-bar';
import { CheckResult } from './check-result';
import { importedSentence } from './check-sentence';
import { ErrorTable, FirstRows, RemarkList } from './check-tables';
import { ChooseForm } from './choose-form';
import { ColumnsForm } from './columns-form';
import styles from './import.module.css';
import { KIND_WORDS } from './kind-words';
import { useImport } from './use-import';
import { WayOut } from './way-out';

/** One file: choose it, see what it would do, import it. */
export function Uploader() {
  const { state, send, take, putDown } = useImport();
  const { file, busy, columns, check, imported, refusal } = state;
  const result = useRef<HTMLDivElement>(null);
  const settled = file !== null && busy === null;
  useEffect(() => {
    if (settled) result.current?.focus();
  }, [settled]);

  if (file === null)
    return (
      <Panel title="Bring in a file" id="file">
        <ChooseForm take={take} />
        <FormMessage tone="refusal">{refusal?.sentence}</FormMessage>
      </Panel>
    );
  return (
    <Panel title={`${KIND_WORDS[file.kind].label} from ${file.name}`} id="file">
      <div ref={result} tabIndex={-1} className={styles.result} aria-busy={busy !== null}>
        {busy ? <BusyBar busy={busy} /> : null}
        {imported ? (
          <>
            <FormMessage tone="done">{importedSentence(imported, file.name)}</FormMessage>
            <div className="cluster">
              <ButtonLink href="/plan">Look at the plan</ButtonLink>
              <ButtonLink href="/tools">Look at the tools</ButtonLink>
              <Button onClick={putDown}>Import another file</Button>
            </div>
          </>
        ) : null}
        {refusal ? (
          <FormMessage tone="refusal">
            <div className="stack-tight">
              <span>{refusal.sentence}</span>
              <div className="cluster">
                <WayOut state={state} send={send} />
              </div>
            </div>
          </FormMessage>
        ) : null}
        {check && !imported && !busy ? (
          <CheckResult
            check={check}
            importIt={() => send('run', file, columns?.mapping ?? null)}
            putDown={putDown}
          />
        ) : null}
        {refusal && !check && !busy ? (
          <div>
            <Button onClick={putDown}>Choose another file</Button>
          </div>
        ) : null}
      </div>
      {check && !imported ? <ErrorTable check={check} /> : null}
      {check && !imported ? <RemarkList check={check} /> : null}
      {columns && !imported && !busy ? (
        <ColumnsForm
          key={columns.mapping.join()}
          kind={file.kind}
          columns={columns}
          checkAgain={(mapping) => send('check', file, mapping)}
        />
      ) : null}
      {check && !imported ? <FirstRows check={check} /> : null}
    </Panel>
  );
}
