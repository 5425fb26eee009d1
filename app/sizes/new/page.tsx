import type { Metadata } from 'next';
import { newStamp } from '@/app/_server/entry-stamp';
import { Breadcrumb, Panel, TitleBlock } from '@/app/_shared/ui';
import { shopDb } from '@/db/client';
import { findShop } from '@/db/queries/shop';
import { SERVICES } from '@/lib/shop/vocabulary';
import { emptyDraft } from '../_parts/connection-draft';
import { ConnectionForm } from '../_parts/connection-form';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Add a size' };

/** A new row of the size table. No dimension is proposed: they come from the fitting maker's manual. */
export default async function NewSizePage({ searchParams }: PageProps<'/sizes/new'>) {
  const asked = await searchParams;
  const size = typeof asked.size === 'string' ? asked.size.slice(0, 24) : '';
  const service = SERVICES.find((known) => known === asked.service) ?? 'medium';
  const unit = findShop(shopDb())?.units ?? 'in';
  return (
    <div className="page">
      <Breadcrumb trail={[{ href: '/sizes', label: 'Sizes' }]} here="Add a size" />
      <TitleBlock
        title="Add a size"
        lead="Every figure comes from the fitting maker’s manual. Nothing is filled in that the shop has not read there."
      />
      <Panel title="The row">
        <ConnectionForm draft={emptyDraft(unit, size, service)} stamp={newStamp()} />
      </Panel>
    </div>
  );
}
