import type { Metadata } from 'next';
import { newStamp } from '@/app/_server/entry-stamp';
import { Breadcrumb, ButtonLink, Panel, TitleBlock } from '@/app/_shared/ui';
import { shopDb } from '@/db/client';
import { listTools } from '@/db/queries/tools';
import { stockVariances } from '@/lib/kit/stock-variances';
import { COUNT_SCOPE_LABEL, COUNT_SCOPES } from '@/lib/shop/stock-count';
import { ROLE_LABEL, TOOL_STATE_LABEL } from '@/lib/shop/vocabulary';
import { CountSheet } from './_parts/count-sheet';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Count the crib' };

/** A stock-take by scanning: what should lie here, ticked as it is scanned; every difference with its reason. */
export default async function CountPage({ searchParams }: PageProps<'/crib/count'>) {
  const asked = (await searchParams).scope;
  const scope = COUNT_SCOPES.find((known) => known === asked) ?? 'edges';
  const tools = listTools(shopDb());
  const { expectedIds } = stockVariances(tools, scope, []);
  return (
    <div className="page">
      <Breadcrumb trail={[{ href: '/crib', label: 'Crib' }]} here="Count" />
      <TitleBlock
        title="Count the crib"
        lead={`Scan ${COUNT_SCOPE_LABEL[scope]}, one by one. A difference is written down with its reason; nothing is mended in silence.`}
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
      <Panel title={`In the crib by the record: ${expectedIds.length}`}>
        <CountSheet
          key={scope}
          scope={scope}
          tools={tools.map(({ id, role, state, holderName }) => ({
            ...{ id, role, state },
            label: ROLE_LABEL[role],
            stands: state === 'issued' ? `with ${holderName ?? 'somebody'}` : TOOL_STATE_LABEL[state],
          }))}
          stamp={newStamp()}
        />
      </Panel>
    </div>
  );
}
