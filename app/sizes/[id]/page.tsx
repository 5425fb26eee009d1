import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { newStamp } from '@/app/_server/entry-stamp';
import { ConnectionEnd } from '@/app/_shared/drawing/connection-end';
import { Breadcrumb, Panel, SizeText, TitleBlock } from '@/app/_shared/ui';
import { shopDb } from '@/db/client';
import { findShop } from '@/db/queries/shop';
import { findConnection } from '@/db/queries/tables';
import { connectionText } from '@/lib/shop/connection-text';
import { draftOf } from '../_parts/connection-draft';
import { ConnectionForm } from '../_parts/connection-form';
import { ConePanel } from './_parts/cone-panel';
import { LimitsPanel } from './_parts/limits-panel';

export const dynamic = 'force-dynamic';

export async function generateMetadata({ params }: PageProps<'/sizes/[id]'>): Promise<Metadata> {
  const connection = findConnection(shopDb(), (await params).id);
  return { title: connection ? connectionText(connection) : 'Size' };
}

/** One row of the size table: its thread and cone worked out, and the row itself to confirm or to change. */
export default async function SizePage({ params, searchParams }: PageProps<'/sizes/[id]'>) {
  const connection = findConnection(shopDb(), (await params).id);
  if (connection === undefined) notFound();
  const unit = findShop(shopDb())?.units ?? 'in';
  return (
    <div className="page">
      <Breadcrumb trail={[{ href: '/sizes', label: 'Sizes' }]} here={connectionText(connection)} />
      <TitleBlock
        title={<SizeText odIn={connection.odNum / connection.odDen} service={connection.service} />}
        lead="Take the figures from the fitting maker’s manual for this connection, not from memory."
        drawing={<ConnectionEnd connection={connection} decorative />}
      />
      <LimitsPanel connection={connection} />
      <ConePanel connection={connection} unit={unit} asked={await searchParams} />
      <Panel title="The row">
        <ConnectionForm draft={draftOf(connection, unit)} stamp={newStamp()} />
      </Panel>
    </div>
  );
}
