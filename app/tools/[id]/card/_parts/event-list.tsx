import type { ReactNode } from 'react';
import { count, momentText } from '@/app/_shared/format';
import { entryWords, type Names } from '@/app/_shared/words/entry-words';
import type { EntryView } from '@/db/queries/entries';
import styles from './card.module.css';

interface EventListProps {
  /** Newest first, as the log gives them. */
  readonly entries: readonly EntryView[];
  readonly names: Names;
  readonly timeZone: string;
  readonly empty: ReactNode;
}

/** As many as fit the sheet; the rest stands in the log of the tool's page. */
const SHOWN_MOST = 40;
/** Rows are summed above, and going out and coming back says little years later. */
const LEFT_OUT = ['cut-logged', 'tool-issued', 'tool-returned'];

/** What befell the tool besides cutting and custody, oldest first; what was taken back stays, struck through. */
export function EventList({ entries, names, timeZone, empty }: EventListProps) {
  const told = entries
    .filter(({ kind, reversedById }) => !LEFT_OUT.includes(kind) || reversedById !== null)
    .reverse();
  if (told.length === 0) return <>{empty}</>;
  const shown = told.slice(-SHOWN_MOST);
  const earlier = told.length - shown.length;
  return (
    <>
      {earlier > 0 ? (
        <p className="quiet">{count(earlier, 'earlier entry', 'earlier entries')} in the log.</p>
      ) : null}
      <ol className={styles.events}>
        {shown.map((entry) => (
          <li key={entry.id}>
            <span className="num">{momentText(entry.serverAtMs, timeZone)}</span>, {entry.actorName}:{' '}
            {entry.reversedById === null ? entryWords(entry, names) : <s>{entryWords(entry, names)}</s>}
            {entry.reversedById === null ? '' : ' (taken back)'}
            {entry.reason === '' ? '' : `. ${entry.reason}`}
          </li>
        ))}
      </ol>
    </>
  );
}
