import type { Route } from 'next';
import Link from 'next/link';
import { ConnectionEnd } from '@/app/_shared/drawing/connection-end';
import { Panel, SizeText, Table } from '@/app/_shared/ui';
import type { ToolRow } from '@/db/queries/tools';
import type { Outlook } from '@/lib/outlook/outlook';
import type { Connection } from '@/lib/shop/noun';
import type { Part } from '@/lib/shop/part';
import type { Role } from '@/lib/shop/vocabulary';

const GROUPS: readonly { key: string; header: string; roles: readonly Role[] }[] = [
  { key: 'blades', header: 'Blades', roles: ['blade'] },
  { key: 'dies', header: 'Dies', roles: ['die'] },
  { key: 'holding', header: 'Guides and collets', roles: ['coning-guide', 'threading-guide', 'collet'] },
  { key: 'rings', header: 'Rings', roles: ['go-ring', 'not-go-ring'] },
  { key: 'gauges', header: 'Cone and length gauges', roles: ['cone-gauge', 'length-gauge'] },
];

/** Every size in use with what there is of it: in the crib, out, set aside. */
export function StockBySize({
  outlook,
  tools,
  parts,
}: {
  outlook: Outlook;
  tools: readonly ToolRow[];
  parts: ReadonlyMap<string, Part>;
}) {
  const sizes = outlook.facts.connections.filter(({ inUse }) => inUse);
  const of = (connection: Connection, roles: readonly Role[]) =>
    tools.filter(
      (tool) =>
        roles.includes(tool.role) && parts.get(tool.partId)?.fitsConnectionIds.includes(connection.id),
    );
  return (
    <Panel title="Stock by size and service">
      <Table
        caption="Stock by size and service"
        rows={sizes}
        rowKey={(connection) => connection.id}
        columns={[
          {
            key: 'size',
            header: 'Size',
            lead: true,
            cell: (connection) => (
              <Link href={`/tools?size=${connection.id}` as Route} className="cluster" prefetch={false}>
                <ConnectionEnd connection={connection} framed decorative />
                <SizeText odIn={connection.odNum / connection.odDen} service={connection.service} />
              </Link>
            ),
          },
          ...GROUPS.map(({ key, header, roles }) => ({
            key,
            header,
            cell: (connection: Connection) => <Counts tools={of(connection, roles)} />,
          })),
        ]}
      />
    </Panel>
  );
}

/** "2 in the crib, 1 out": what is nowhere is not named; none at all says so. */
function Counts({ tools }: { tools: readonly ToolRow[] }) {
  const here = tools.filter(({ state }) => state === 'in-crib').length;
  const out = tools.filter(({ state }) => state === 'issued').length;
  const away = tools.filter(({ state }) => state === 'regrind' || state === 'calibration').length;
  const aside = tools.filter(({ state }) => state === 'quarantined').length;
  const words = [
    here > 0 ? `${here} in` : '',
    out > 0 ? `${out} issued` : '',
    away > 0 ? `${away} away` : '',
    aside > 0 ? `${aside} set aside` : '',
  ].filter((word) => word !== '');
  return words.length === 0 ? <strong>none</strong> : <span>{words.join(', ')}</span>;
}
