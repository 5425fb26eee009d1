import type { Metadata } from 'next';
import { today } from '@/app/_server/clock';
import { shopNames } from '@/app/_server/names';
import { shopFacts } from '@/app/_server/outlook';
import { ButtonLink, Panel, TitleBlock } from '@/app/_shared/ui';
import { shopDb } from '@/db/client';
import { listKits } from '@/db/queries/kits';
import { listTools } from '@/db/queries/tools';
import { DuePanel } from './_parts/due-panel';
import { KitsOut } from './_parts/kits-out';
import { LinesToIssue } from './_parts/lines-to-issue';
import { ScanForm } from './_parts/scan-form';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Crib' };

/** The counter: scan anything; what is to go out, what is out and late, what waits to be looked at. */
export default async function CribPage({ searchParams }: PageProps<'/crib'>) {
  const { unknown } = await searchParams;
  const db = shopDb();
  const day = today();
  const kits = listKits(db);
  const facts = shopFacts();
  const names = shopNames();
  const tools = listTools(db);
  return (
    <div className="page">
      <TitleBlock
        title="Crib"
        lead="Kits out by job, back by scanner."
        cells={[
          { label: 'Kits out', value: kits.length },
          { label: 'Tools out', value: tools.filter(({ state }) => state === 'issued').length },
        ]}
        actions={
          <>
            <ButtonLink href="/crib/count">Count the crib</ButtonLink>
            <ButtonLink href="/tools/receive">Receive</ButtonLink>
          </>
        }
      />
      <ScanForm unknown={typeof unknown === 'string' ? unknown : undefined} />
      <div className="columns-lead">
        <div className="stack-loose">
          <Panel title="To issue">
            <LinesToIssue facts={facts} kits={kits} names={names} />
          </Panel>
        </div>
        <div className="stack-loose">
          <Panel title="Out with kits">
            <KitsOut kits={kits} lines={facts.lines} names={names} today={day} />
          </Panel>
          <DuePanel tools={tools} />
        </div>
      </div>
    </div>
  );
}
