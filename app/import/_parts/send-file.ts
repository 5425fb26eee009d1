import { columnsText, type ImportLine } from '@/app/_import/import-line';
import { readNdjson } from '@/app/_import/ndjson';
import type { ImportKind } from '@/lib/import/column';
import type { ColumnMapping } from '@/lib/import/match-columns';

export type Work = 'check' | 'run';

/** A file in hand: the bytes that were checked are the bytes that are imported. */
export interface FileInHand {
  readonly kind: ImportKind;
  readonly name: string;
  readonly bytes: ArrayBuffer;
}

const LOST: Readonly<Record<Work, string>> = {
  check: 'The connection was lost before the answer came. Nothing was written; check it again.',
  run: 'The connection was lost before the answer came. Send it again: each row counts once, however often it is sent.',
};

/** Sends a file to be checked or imported and hands on each line of the answer. The last one says how it ended. */
export async function sendFile(
  work: Work,
  file: FileInHand,
  mapping: ColumnMapping | null,
  hear: (line: ImportLine) => void,
): Promise<void> {
  const asked = new URLSearchParams({ kind: file.kind });
  if (mapping !== null) asked.set('columns', columnsText(mapping));
  let ended = false;
  try {
    const answer = await fetch(`/import/${work}?${asked}`, {
      method: 'POST',
      headers: { 'content-type': 'application/octet-stream' },
      body: file.bytes,
    });
    const inLines = answer.headers.get('content-type')?.startsWith('application/x-ndjson');
    if (inLines && answer.body !== null) {
      for await (const line of readNdjson<ImportLine>(answer.body)) {
        ended ||= line.step === 'done' || line.step === 'refused';
        hear(line);
      }
    }
  } catch {
    // the connection was lost: said below
  }
  if (!ended) hear({ step: 'refused', code: 'lost', sentence: LOST[work] });
}
