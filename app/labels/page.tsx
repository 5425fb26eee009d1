import type { Metadata } from 'next';
import { listWords } from '@/app/_shared/format';
import { Breadcrumb, EmptyState, Notice, Panel, TitleBlock } from '@/app/_shared/ui';
import { PrintButton } from '@/app/_shared/ui/print-button';
import { shopDb } from '@/db/client';
import { FineCodeNote } from './_parts/fine-code-note';
import { LabelForm } from './_parts/label-form';
import { labelQuestion } from './_parts/label-question';
import { LabelSheets } from './_parts/label-sheets';
import { labelsFor } from './_parts/labels-for';
import './labels.css';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Labels' };

/** Labels and tags with a code and the short ID in large letters, on sheets or singly, true to the millimetre. */
export default async function LabelsPage({ searchParams }: PageProps<'/labels'>) {
  const question = labelQuestion(await searchParams);
  const db = shopDb();
  const { labels, unknown, listed } = labelsFor(db, question);
  return (
    <div className="page">
      <div className="page no-print">
        <Breadcrumb trail={[{ href: '/tools', label: 'Tools' }]} here="Labels" />
        <TitleBlock title="Labels" lead="A code and the short ID in letters that can be read through oil." />
        <Panel title="What to print">
          <LabelForm question={question} listed={listed} />
        </Panel>
        {unknown.length > 0 ? (
          <Notice level="notice" title={`Not in the record: ${listWords(unknown)}.`}>
            Check the mark, or receive the tool first.
          </Notice>
        ) : null}
        {labels.length === 0 ? (
          <EmptyState title="No labels yet">Scan or tick the tools that need one.</EmptyState>
        ) : (
          <div className="stack-tight">
            <div>
              <PrintButton tone="primary" />
            </div>
            <p className="fine">Print at 100 %, without margins and without fitting to the page.</p>
          </div>
        )}
        <FineCodeNote question={question} labels={labels} />
      </div>
      {labels.length > 0 ? (
        <div className="label-pages">
          <LabelSheets {...question} labels={labels} />
        </div>
      ) : null}
    </div>
  );
}
