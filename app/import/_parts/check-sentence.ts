import { count } from '@/app/_shared/format';
import type { ImportCheck } from '@/db/commands/import-file';

/** What importing a file would do, in a sentence. */
export function checkSentence({ newRows, alreadyThere, leftOut, errorCount }: ImportCheck): string {
  if (errorCount > 0)
    return `${count(errorCount, 'error')}: nothing can be imported until every row is right. Mend the file and choose it again.`;
  if (newRows > 0) return `${count(newRows, 'row')} would be imported.`;
  const kept =
    ['the one row is', 'both rows are'][alreadyThere - 1] ?? `all ${count(alreadyThere, 'row')} are`;
  if (alreadyThere > 0) return `Nothing new: ${kept} there already.`;
  return leftOut > 0 ? 'Nothing to import: the file marks every row as taken back.' : 'Nothing to import.';
}

/** What was imported, in a sentence. */
export function importedSentence({ newRows, alreadyThere }: ImportCheck, name: string): string {
  const before = alreadyThere > 0 ? ` ${count(alreadyThere, 'row')} had been there already.` : '';
  return `${count(newRows, 'row')} imported from ${name}.${before}`;
}
