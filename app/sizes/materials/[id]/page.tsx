import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { newStamp } from '@/app/_server/entry-stamp';
import { Breadcrumb, Panel, TitleBlock } from '@/app/_shared/ui';
import { shopDb } from '@/db/client';
import { listMaterials } from '@/db/queries/tables';
import { type MaterialDraft, MaterialForm } from '../../_parts/material-form';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Material' };

const NEW: MaterialDraft = {
  id: '',
  name: '',
  condition: '',
  factor: '',
  factorGiveOrTake: '2',
  isReference: false,
};

/** One row of the material table, to add ("new") or to change. */
export default async function MaterialPage({ params }: PageProps<'/sizes/materials/[id]'>) {
  const { id } = await params;
  const row = listMaterials(shopDb()).find((material) => material.id === id);
  if (row === undefined && id !== 'new') notFound();
  const draft: MaterialDraft = row
    ? {
        ...row,
        factor: String(row.factor),
        factorGiveOrTake: String(Number(row.factorGiveOrTake.toFixed(3))),
      }
    : NEW;
  return (
    <div className="page">
      <Breadcrumb trail={[{ href: '/sizes', label: 'Sizes' }]} here={row?.name ?? 'Add a material'} />
      <TitleBlock
        title={row?.name ?? 'Add a material'}
        lead="A first guess is enough. Two heats of one grade can differ by a factor of two; the shop’s own log decides."
      />
      <Panel title="The row">
        <MaterialForm draft={draft} stamp={newStamp()} />
      </Panel>
    </div>
  );
}
