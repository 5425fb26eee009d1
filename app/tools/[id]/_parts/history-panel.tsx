import { newStamp } from '@/app/_server/entry-stamp';
import { momentText } from '@/app/_shared/format';
import { EmptyState, Panel, Table } from '@/app/_shared/ui';
import { entryWords, type Names } from '@/app/_shared/words/entry-words';
import type { EntryView } from '@/db/queries/entries';
import { CorrectCutForm, TakeBackForm } from './take-back-form';

interface HistoryPanelProps {
  readonly entries: readonly EntryView[];
  readonly names: Names;
  readonly timeZone: string;
  readonly today: string;
}

/** Everything that was ever entered about one tool, newest first; what was taken back stays, struck through. */
export function HistoryPanel({ entries, names, timeZone, today }: HistoryPanelProps) {
  const when = (entry: EntryView) => momentText(whenOf(entry), timeZone, today);
  return (
    <Panel title="History">
      <Table
        caption="Every entry about this tool, newest first"
        rows={entries}
        rowKey={(entry) => entry.id}
        empty={<EmptyState title="No entries yet">What is done with this tool will stand here.</EmptyState>}
        columns={[
          {
            key: 'what',
            header: 'What',
            lead: true,
            cell: (entry) => <EntryText entry={entry} names={names} />,
          },
          { key: 'who', header: 'Who', cell: (entry) => <span className="num">{entry.actorName}</span> },
          {
            key: 'when',
            header: 'When',
            cell: (entry) => <span className="num">{when(entry)}</span>,
          },
          {
            key: 'mend',
            header: 'Mend',
            cell: (entry) => <Mend entry={entry} about={`${entryWords(entry, names)}, ${when(entry)}`} />,
          },
        ]}
      />
    </Panel>
  );
}

/** A row of the cut log stands under the day it was cut; everything else under the day it was entered. */
function whenOf(entry: EntryView): number {
  const { cutAtMs } = entry.payload;
  return typeof cutAtMs === 'number' ? cutAtMs : entry.serverAtMs;
}

function EntryText({ entry, names }: { entry: EntryView; names: Names }) {
  const words = entryWords(entry, names);
  const corrects = typeof entry.payload.correctsId === 'string' ? ' (moved here from another tool)' : '';
  return (
    <span>
      {entry.reversedById ? (
        <>
          <s>{words}</s> <span className="quiet">taken back</span>
        </>
      ) : (
        words + corrects
      )}
      {entry.reason ? <span className="quiet"> — {entry.reason}</span> : null}
    </span>
  );
}

function Mend({ entry, about }: { entry: EntryView; about: string }) {
  if (entry.reversesId !== null || entry.reversedById !== null || entry.kind === 'tool-received') return null;
  const Form = entry.kind === 'cut-logged' ? CorrectCutForm : TakeBackForm;
  return (
    <details>
      <summary className="num">{entry.kind === 'cut-logged' ? 'Wrong tool?' : 'Take back'}</summary>
      <Form toolId={entry.subjectId} entryId={entry.id} about={about} stamp={newStamp()} />
    </details>
  );
}
