import type { Metadata } from 'next';
import { dayAt, timeZone, today } from '@/app/_server/clock';
import { shopNames } from '@/app/_server/names';
import { momentText } from '@/app/_shared/format';
import { ButtonLink, EmptyState, Panel, Table, TitleBlock } from '@/app/_shared/ui';
import { entryWords } from '@/app/_shared/words/entry-words';
import { shopDb } from '@/db/client';
import { type EntryView, listEntries } from '@/db/queries/entries';
import { SubjectLink } from './_parts/subject-link';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Log' };

const PAGE_ROWS = 100;
/** From here on a device's clock counts as off. */
const CLOCK_OFF_MS = 10 * 60_000;

/** Everything that was ever entered, newest first. Nothing is changed and nothing is removed; mistakes are taken back. */
export default async function LedgerPage({ searchParams }: PageProps<'/ledger'>) {
  const before = Number((await searchParams).before);
  const beforeSeq = Number.isSafeInteger(before) && before > 0 ? before : undefined;
  const entries = listEntries(shopDb(), { beforeSeq, limit: PAGE_ROWS });
  const names = shopNames();
  const last = entries.at(-1);
  return (
    <div className="page">
      <TitleBlock
        title="Log"
        lead="Everything that was entered, newest first. Nothing is changed and nothing is removed: a mistake is taken back, and both entries stay."
      />
      <Panel>
        <Table
          caption="Entries, newest first"
          rows={entries}
          rowKey={({ id }) => id}
          empty={
            <EmptyState title="Nothing entered yet">Everything that is done will stand here.</EmptyState>
          }
          columns={[
            {
              key: 'about',
              header: 'About',
              lead: true,
              cell: (entry) => <SubjectLink entry={entry} names={names} />,
            },
            {
              key: 'what',
              header: 'What',
              cell: (entry) => <What entry={entry} words={entryWords(entry, names)} />,
            },
            { key: 'who', header: 'Who', cell: ({ actorName }) => actorName },
            { key: 'when', header: 'Entered', cell: (entry) => <When entry={entry} /> },
          ]}
        />
        {entries.length === PAGE_ROWS && last ? (
          <ButtonLink href={`/ledger?before=${last.seq}`}>Earlier entries</ButtonLink>
        ) : null}
      </Panel>
    </div>
  );
}

function What({ entry, words }: { entry: EntryView; words: string }) {
  return (
    <>
      {entry.reversedById === null ? words : <s>{words}</s>}
      {entry.reversedById === null ? null : <span className="quiet"> taken back</span>}
      {entry.reason === '' ? null : <span className="quiet"> — {entry.reason}</span>}
    </>
  );
}

function When({ entry }: { entry: EntryView }) {
  const off = Math.abs(entry.deviceAtMs - entry.serverAtMs) > CLOCK_OFF_MS;
  return (
    <span className="num">
      {momentText(entry.serverAtMs, timeZone(), today())}
      {off ? <span className="quiet"> (device said {dayAt(entry.deviceAtMs)})</span> : null}
    </span>
  );
}
