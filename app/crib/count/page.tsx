import type { Metadata } from 'next';
import { newStamp } from '@/app/_server/entry-stamp';
import { shopNames } from '@/app/_server/names';
import { Breadcrumb, ButtonLink, Panel, TitleBlock } from '@/app/_shared/ui';
import { drawerWords } from '@/app/_shared/words/drawer-words';
import { shopDb } from '@/db/client';
import { listCountedTools } from '@/db/queries/counted-tools';
import { listConnections } from '@/db/queries/tables';
import { stockVariances } from '@/lib/kit/stock-variances';
import { COUNT_SCOPE_LABEL, COUNT_SCOPES } from '@/lib/shop/stock-count';
import { ROLE_LABEL, TOOL_STATE_LABEL } from '@/lib/shop/vocabulary';
import { askedDrawer } from './_parts/asked-drawer';
import { CountSheet } from './_parts/count-sheet';
import { DrawerForm } from './_parts/drawer-form';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Count the crib' };

/** A stock-take by scanning: what should lie here, ticked as it is scanned; every difference with its reason. */
export default async function CountPage({ searchParams }: PageProps<'/crib/count'>) {
  const asked = await searchParams;
  const scope = COUNT_SCOPES.find((known) => known === asked.scope) ?? 'edges';
  const connections = listConnections(shopDb());
  const drawer = scope === 'edges' ? askedDrawer(asked, connections) : {};
  const tools = listCountedTools(shopDb());
  const { expectedIds } = stockVariances(tools, scope, [], drawer);
  const what = drawerWords(drawer, shopNames()) || COUNT_SCOPE_LABEL[scope];
  return (
    <div className="page">
      <Breadcrumb trail={[{ href: '/crib', label: 'Crib' }]} here="Count" />
      <TitleBlock
        title="Count the crib"
        lead={`Scan ${what}, one by one. A difference is written down with its reason; nothing is mended in silence.`}
        actions={COUNT_SCOPES.map((known) => (
          <ButtonLink
            key={known}
            href={`/crib/count?scope=${known}`}
            aria-current={known === scope ? 'true' : undefined}
            tone={known === scope ? 'primary' : 'quiet'}
          >
            {COUNT_SCOPE_LABEL[known]}
          </ButtonLink>
        ))}
      />
      {scope === 'edges' ? <DrawerForm connections={connections} drawer={drawer} /> : null}
      <Panel title={`In the crib by the record: ${expectedIds.length}`}>
        <CountSheet
          key={`${scope} ${drawer.connectionId} ${drawer.edgeKind}`}
          scope={scope}
          drawer={drawer}
          tools={tools.map(({ id, role, state, holderName, connectionIds }) => ({
            ...{ id, role, state, connectionIds },
            label: ROLE_LABEL[role],
            stands: state === 'issued' ? `with ${holderName ?? 'somebody'}` : TOOL_STATE_LABEL[state],
          }))}
          stamp={newStamp()}
        />
      </Panel>
    </div>
  );
}
