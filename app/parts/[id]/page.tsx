import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { newStamp } from '@/app/_server/entry-stamp';
import { shopFacts } from '@/app/_server/outlook';
import { Breadcrumb, Panel, TitleBlock } from '@/app/_shared/ui';
import { connectionText } from '@/lib/shop/connection-text';
import { ROLE_LABEL, ROLES } from '@/lib/shop/vocabulary';
import { KindForm } from '../_parts/kind-form';
import { PartForm } from '../_parts/part-form';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Part' };

/** One part, to add ("new") or to change. */
export default async function PartPage({ params, searchParams }: PageProps<'/parts/[id]'>) {
  const { id } = await params;
  const { parts, connections, materials } = shopFacts();
  const part = parts.find((known) => known.id === id);
  if (part === undefined && id !== 'new') notFound();
  const { kind } = await searchParams;
  const role = ROLES.find((known) => known === kind) ?? 'die';
  return (
    <div className="page">
      <Breadcrumb
        trail={[
          { href: '/setup', label: 'Set-up' },
          { href: '/parts', label: 'Parts' },
        ]}
        here={part?.name ?? 'Add a part'}
      />
      <TitleBlock
        title={part?.name ?? 'Add a part'}
        lead="Write the designation out as it stands on the box and on the order."
      />
      {part === undefined ? <KindForm role={role} /> : null}
      <Panel title="What it is" aside={ROLE_LABEL[part?.role ?? role]}>
        <PartForm
          part={part ?? null}
          key={role}
          role={role}
          stamp={newStamp()}
          connections={connections.map((connection) => ({
            value: connection.id,
            label: connectionText(connection),
          }))}
          materials={materials.map(({ id: value, name, condition }) => ({
            value,
            label: `${name} ${condition}`.trim(),
          }))}
        />
      </Panel>
    </div>
  );
}
