import type { Metadata } from 'next';
import { newStamp } from '@/app/_server/entry-stamp';
import { shopFacts } from '@/app/_server/outlook';
import { Breadcrumb, ButtonLink, EmptyState, TitleBlock } from '@/app/_shared/ui';
import { askedLine, blankLine } from '../_parts/job-draft';
import { JobForm } from '../_parts/job-form';
import { jobOptions } from '../_parts/job-options';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Enter a job' };

/** A new job: one line is enough, more can be added. Saved, its verdict stands on the plan. */
export default async function NewJobPage({ searchParams }: PageProps<'/plan/jobs/new'>) {
  const facts = shopFacts();
  const { today, materials } = facts;
  return (
    <div className="page">
      <Breadcrumb trail={[{ href: '/plan', label: 'Plan' }]} here="Enter a job" />
      <TitleBlock
        title="Enter a job"
        lead="Count ends, not spools: ends = spools × 2, less those made elsewhere. Say the service; the same tube is threaded short for medium and long for high pressure."
      />
      {materials.length === 0 ? (
        <EmptyState
          title="The shop is not set up yet"
          action={<ButtonLink href="/setup">Set up the shop</ButtonLink>}
        >
          Say first which sizes and materials are in use; then a job takes half a minute.
        </EmptyState>
      ) : (
        <JobForm
          stamp={newStamp()}
          job={null}
          lines={[askedLine(await searchParams, today)]}
          spare={[blankLine(2, today), blankLine(3, today)]}
          {...jobOptions(facts)}
        />
      )}
    </div>
  );
}
