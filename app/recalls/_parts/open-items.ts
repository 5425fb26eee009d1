import type { SuspectRow } from '@/db/queries/recall-sheet';
import { endsWords } from './suspect-table';

/** The looks with ends still to be decided, as the form shows them. */
export function openItems(suspects: readonly SuspectRow[]) {
  return suspects
    .filter(({ open }) => open > 0)
    .map((row) => ({
      acceptanceId: row.acceptanceId,
      ends: row.open,
      words: `${endsWords(row)}${row.look?.jobLineId ? ` of ${row.look.jobLineId}` : ''}`,
      note: [
        row.look === undefined ? 'entry taken back' : row.look.heat && `heat ${row.look.heat}`,
        row.shippedOnDay === null ? '' : 'shipped',
      ]
        .filter((part) => part !== '')
        .join(', '),
    }));
}
