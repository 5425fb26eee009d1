import type { Metadata } from 'next';
import { currentActor } from '@/app/_server/session';
import { ButtonLink, EmptyState, TitleBlock } from '@/app/_shared/ui';
import { CsvOut } from './_parts/csv-out';
import { FileKinds } from './_parts/file-kinds';
import { Uploader } from './_parts/uploader';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Import' };

/** What is in spreadsheets today, brought in: first the file in hand, since whoever comes here has one. */
export default async function ImportPage() {
  const actor = await currentActor();
  return (
    <div className="page">
      <TitleBlock
        title="Import"
        lead="Bring in what is in spreadsheets today. You see what a file would do before anything is written, and then all of it goes in or none of it."
      />
      {actor === null ? (
        <EmptyState
          title="Say who you are first"
          action={
            <ButtonLink href="/who?back=/import" tone="primary">
              Choose your name
            </ButtonLink>
          }
        >
          What is imported stands in the log under the name of the one who imported it.
        </EmptyState>
      ) : (
        <Uploader />
      )}
      <noscript>
        <p>Importing needs scripts, which are off in this browser.</p>
      </noscript>
      <FileKinds />
      <CsvOut />
    </div>
  );
}
