import { count, whole } from '@/app/_shared/format';
import { ProgressBar } from '@/app/_shared/ui';
import type { ImportState } from './import-state';

/** How far the work on a file is. */
export function BusyBar({ busy }: { readonly busy: NonNullable<ImportState['busy']> }) {
  const { work, line } = busy;
  if (line?.step === 'reading')
    return (
      <ProgressBar
        label="Reading the rows"
        value={line.rowsDone}
        max={line.rowsTotal}
        note={`${whole(line.rowsDone)} of ${count(line.rowsTotal, 'row')}`}
      />
    );
  if (line?.step === 'deciding') {
    const rows = count(line.rowsTotal, 'row');
    return (
      <ProgressBar
        label={work === 'run' ? `Writing ${rows}, all or none` : `Trying ${rows} against the record`}
        note="A long file takes some seconds; other screens wait for it."
      />
    );
  }
  return <ProgressBar label="Sending the file" />;
}
