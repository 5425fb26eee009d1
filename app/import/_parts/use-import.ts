'use client';

import { useRouter } from 'next/navigation';
import { useReducer } from 'react';
import type { ImportKind } from '@/lib/import/column';
import type { ColumnMapping } from '@/lib/import/match-columns';
import { NO_FILE, nextImportState } from './import-state';
import { type FileInHand, sendFile, type Work } from './send-file';

/** The file in hand and what can be done with it. */
export function useImport() {
  const [state, step] = useReducer(nextImportState, NO_FILE);
  const router = useRouter();

  const send = async (work: Work, file: FileInHand, mapping: ColumnMapping | null) => {
    step({ type: 'send', work, file });
    await sendFile(work, file, mapping, (line) => {
      step({ type: 'heard', line });
      if (work === 'run' && line.step === 'done') router.refresh();
    });
  };

  const take = async (kind: ImportKind, chosen: File) => {
    try {
      await send('check', { kind, name: chosen.name, bytes: await chosen.arrayBuffer() }, null);
    } catch {
      step({ type: 'unreadable' });
    }
  };

  return { state, send, take, putDown: () => step({ type: 'put-down' }) };
}
