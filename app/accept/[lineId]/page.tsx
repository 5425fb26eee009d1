import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { timeZone, today } from '@/app/_server/clock';
import { newStamp } from '@/app/_server/entry-stamp';
import { shopNames } from '@/app/_server/names';
import { Cautions } from '@/app/_shared/cautions';
import { momentText } from '@/app/_shared/format';
import { ButtonLink, EmptyState } from '@/app/_shared/ui';
import { AcceptForm } from '../_parts/accept-form';
import { AcceptHead } from '../_parts/accept-head';
import { acceptView } from '../_parts/accept-view';
import { LookedPanel } from '../_parts/looked-panel';
import { PiecesNote } from '../_parts/pieces-note';

export const dynamic = 'force-dynamic';

export async function generateMetadata({ params }: PageProps<'/accept/[lineId]'>): Promise<Metadata> {
  return { title: `Accept ends of ${decodeURIComponent((await params).lineId)}` };
}

/** One line at the vise: gauges, verdicts, the surface, and how many ends alike; what was accepted so far beside it. */
export default async function AcceptPage({ params, searchParams }: PageProps<'/accept/[lineId]'>) {
  const view = acceptView(decodeURIComponent((await params).lineId));
  if (view === undefined) notFound();
  const { again } = await searchParams;
  const { line, connection, looks, standing } = view;
  const repeated = looks.find(({ id, decision }) => id === again && decision === 'accepted');
  const names = shopNames();
  const operations = (['cone', 'thread'] as const).filter((operation) => line.operations.includes(operation));
  return (
    <div className="page">
      <AcceptHead view={view} materialText={names.material(line.materialId)} repeated={repeated} />
      <PiecesNote lineId={line.id} />
      <div className="columns-lead">
        <div className="bench stack-loose">
          {connection === undefined || operations.length === 0 ? (
            <EmptyState title="Nothing to gauge here" action={<ButtonLink href="/sizes">Sizes</ButtonLink>}>
              The shop has no table row for this size, or the line asks for no cutting.
            </EmptyState>
          ) : (
            <>
              <Cautions at="accept" />
              <AcceptForm
                key={`${repeated?.id ?? ''}`}
                stamp={newStamp()}
                line={{ ...line, operations }}
                {...{
                  rule: view.rule,
                  exposed: view.exposed,
                  gauges: view.gauges,
                  nextEndNo: view.nextEndNo,
                }}
                {...{ dieId: view.dieId, bladeId: view.bladeId, fluidId: view.fluidId }}
                endsLeft={line.ends - standing.acceptedEnds}
                firstLook={looks.length === 0}
                again={repeated === undefined ? null : { id: repeated.id, endCount: repeated.endCount }}
              />
            </>
          )}
        </div>
        <div className="stack-loose">
          <LookedPanel
            {...{ lineId: line.id, looks, standing, personName: names.person }}
            moment={(ms) => momentText(ms, timeZone(), today())}
          />
        </div>
      </div>
    </div>
  );
}
