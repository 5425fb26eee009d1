import type { Metadata } from 'next';
import { redirect } from 'next/navigation';
import { nowMs, timeZone, today } from '@/app/_server/clock';
import { shopNames } from '@/app/_server/names';
import { EmptyState, TitleBlock } from '@/app/_shared/ui';
import { shopDb } from '@/db/client';
import { cutsOfEnd } from '@/db/queries/cut-of-end';
import { findEnds } from '@/db/queries/find-ends';
import { traceEnd } from '@/db/queries/trace';
import { endAddress, endOfAddress } from './_parts/end-address';
import { HitList } from './_parts/hit-list';
import { TraceHead } from './_parts/trace-head';
import { TraceSearch } from './_parts/trace-search';
import { TraceSheet } from './_parts/trace-sheet';
import { momentWords } from './_parts/work-table';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Trace' };

const TYPED_MAX = 80;

/** One end, one search, one page on paper: who, when, with what, traceable to what, and what is not known. */
export default async function TracePage({ searchParams }: PageProps<'/trace'>) {
  const asked = await searchParams;
  const db = shopDb();
  const typed = typeof asked.q === 'string' ? asked.q.slice(0, TYPED_MAX).trim() : '';
  const found = findEnds(db, typed);
  const [only] = found.hits;
  if (only !== undefined && found.hits.length === 1) redirect(endAddress(only));
  const end = endOfAddress(asked);
  const trace = end && traceEnd(db, end);
  const names = shopNames();
  if (trace !== undefined) {
    const { jobLineId, endNo } = trace;
    const cuts = jobLineId === null || endNo === null ? [] : cutsOfEnd(db, { jobLineId, endNo });
    const shared = { trace, names, nowMs: nowMs(), timeZone: timeZone() };
    return (
      <div className="page">
        <TraceHead {...shared} />
        <TraceSheet {...{ trace, names, cuts }} moment={(ms) => momentWords(ms, timeZone())} />
        <TraceSearch typed="" />
      </div>
    );
  }
  const missed = typed !== '' || end !== undefined;
  return (
    <div className="page">
      <TitleBlock title="Trace" lead="Who cut and gauged one end, with what, traceable to what." />
      <TraceSearch typed={typed} />
      {found.hits.length > 0 ? <HitList found={found} names={names} today={today()} /> : null}
      {missed && found.hits.length === 0 ? (
        <EmptyState title="No such end in the record">
          Nobody accepted or refused an end under that. Try the job line alone, the heat, or the gauge.
        </EmptyState>
      ) : null}
    </div>
  );
}
