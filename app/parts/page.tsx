import type { Metadata, Route } from 'next';
import Link from 'next/link';
import { shopFacts } from '@/app/_server/outlook';
import { count, money } from '@/app/_shared/format';
import { Breadcrumb, ButtonLink, EmptyState, HandText, Panel, Table, TitleBlock } from '@/app/_shared/ui';
import type { Part } from '@/lib/shop/part';
import { ROLE_LABEL, ROLES } from '@/lib/shop/vocabulary';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Parts' };

/** What can be bought: each part with its full designation, hand, supplier, price and lead time. */
export default async function PartsPage() {
  const { parts, shop } = shopFacts();
  const ordered = ROLES.flatMap((role) => parts.filter((part) => part.role === role));
  const price = ({ priceMinor }: Part) =>
    priceMinor === null ? 'no price yet' : money(priceMinor, shop?.currency ?? 'USD');
  return (
    <div className="page">
      <Breadcrumb trail={[{ href: '/setup', label: 'Set-up' }]} here="Parts" />
      <TitleBlock
        title="Parts"
        lead="What can be bought. An order line spells out the designation: 1-14 UNS is not 1-12 UNF, left hand is not right hand."
        actions={<ButtonLink href="/parts/new">Add a part</ButtonLink>}
      />
      <Panel>
        <Table
          caption="Parts"
          rows={ordered}
          rowKey={({ id }) => id}
          empty={
            <EmptyState title="No parts yet">
              They come with the sizes that are taken into use under Set-up.
            </EmptyState>
          }
          columns={[
            {
              key: 'name',
              header: 'Part',
              lead: true,
              cell: (part) => (
                <Link href={`/parts/${encodeURIComponent(part.id)}` as Route} prefetch={false}>
                  {part.name}
                </Link>
              ),
            },
            { key: 'kind', header: 'Kind', cell: (part) => ROLE_LABEL[part.role] },
            { key: 'designation', header: 'Designation', cell: (part) => part.designation },
            {
              key: 'hand',
              header: 'Hand',
              cell: ({ hand }) => (hand === null ? null : <HandText hand={hand} />),
            },
            { key: 'supplier', header: 'Supplier', cell: ({ supplier }) => supplier || 'none yet' },
            { key: 'price', header: 'Price', numeric: true, cell: price },
            {
              key: 'lead',
              header: 'Lead time',
              numeric: true,
              cell: ({ leadTimeDays }) => (leadTimeDays === null ? 'not known' : count(leadTimeDays, 'day')),
            },
          ]}
        />
      </Panel>
    </div>
  );
}
