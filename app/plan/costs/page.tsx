import type { Metadata } from 'next';
import { newStamp } from '@/app/_server/entry-stamp';
import { shopFacts } from '@/app/_server/outlook';
import { studyState } from '@/app/_server/study';
import { Breadcrumb, Panel, TitleBlock } from '@/app/_shared/ui';
import { CostsForm } from '@/app/plan/_parts/costs-form';
import { shopDb } from '@/db/client';
import { readGauging } from '@/db/queries/gauging';
import { listLineEnds } from '@/db/queries/jobs';
import { listToolLogs } from '@/db/queries/tool-logs';
import { shopEndCosts } from '@/lib/outlook/shop-end-costs';
import { DEFAULT_COSTS } from '@/lib/shop/costs';
import { EndCostsPanel } from './_parts/end-costs-panel';
import { SavedPanel } from './_parts/saved-panel';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Costs' };

/** What an end costs by size, service and material, what the estimates saved, and the figures that this rests on. */
export default async function CostsPage() {
  const facts = shopFacts();
  const costs = facts.costs ?? DEFAULT_COSTS;
  const currency = facts.shop?.currency ?? 'USD';
  const db = shopDb();
  const record = { logs: listToolLogs(db), lineEnds: listLineEnds(db), gauging: readGauging(db) };
  const rows = shopEndCosts({ ...record, facts });
  return (
    <div className="page">
      <Breadcrumb trail={[{ href: '/plan', label: 'Plan' }]} here="Costs" />
      <TitleBlock
        title="Costs"
        lead="What an end costs in edges, fluid, spoilt tube and gauges, from the log; and what changing by the estimate saved over a fixed count."
      />
      <SavedPanel state={studyState('backtest')} facts={facts} costs={costs} currency={currency} />
      <EndCostsPanel
        rows={rows}
        facts={facts}
        currency={currency}
        gaugesCounted={(costs.calibrationMinor ?? 0) > 0}
      />
      <Panel title="What things cost the shop" id="costs">
        <CostsForm costs={costs} currency={currency} stamp={newStamp()} />
      </Panel>
    </div>
  );
}
