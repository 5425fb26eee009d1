import Link from 'next/link';
import { StateMark, Table, ToolId } from '@/app/_shared/ui';
import type { KitItemRow, KitRow } from '@/db/queries/kits';
import { ROLE_LABEL } from '@/lib/shop/vocabulary';

/** Every item of a kit with where it stands now. */
export function KitItems({ kit, holder }: { readonly kit: KitRow; readonly holder: string }) {
  const missing = new Set(kit.missingToolIds);
  return (
    <Table<KitItemRow>
      caption="Items of the kit"
      rows={kit.itemsNow}
      rowKey={({ tool }) => tool.id}
      columns={[
        {
          key: 'id',
          header: 'Tool',
          lead: true,
          cell: ({ tool }) => (
            <Link href={`/tools/${encodeURIComponent(tool.id)}`} prefetch={false}>
              <ToolId id={tool.id} />
            </Link>
          ),
        },
        { key: 'role', header: 'What', cell: ({ tool }) => ROLE_LABEL[tool.role] },
        {
          key: 'state',
          header: 'Stands',
          cell: ({ tool, out }) =>
            missing.has(tool.id) && out ? (
              <b>missing, searched for</b>
            ) : (
              <StateMark state={tool.state}>{out ? `with ${holder}` : undefined}</StateMark>
            ),
        },
      ]}
    />
  );
}
