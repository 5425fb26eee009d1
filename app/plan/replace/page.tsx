import type { Metadata } from 'next';
import { newStamp } from '@/app/_server/entry-stamp';
import { shopView } from '@/app/_server/outlook';
import { FiguresNote } from '@/app/_shared/figures-note';
import { dayText } from '@/app/_shared/format';
import { Breadcrumb, Notice, Panel, TitleBlock } from '@/app/_shared/ui';
import { CostsForm } from '@/app/plan/_parts/costs-form';
import { lineLabeller } from '@/app/plan/_parts/plan-rows';
import { listOpenLines } from '@/db/queries/jobs';
import { shopReplacement } from '@/lib/replacement/shop-replacement';
import { DEFAULT_COSTS } from '@/lib/shop/costs';
import { MoneyPanels } from './_parts/money-panels';
import { ToolPanels } from './_parts/tool-panels';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'When to change edges' };

/** When to change which edge: what comes first, the age that costs least by part, and regrind or buy. */
export default async function ReplacePage() {
  const { outlook, db, asOfMs } = await shopView();
  const { facts, ensemble } = outlook;
  const { parts, tools, unpriced } = shopReplacement(facts, ensemble);
  const { today, costs = DEFAULT_COSTS, shop } = facts;
  const currency = shop?.currency ?? 'USD';
  const lineLabel = lineLabeller(listOpenLines(db));
  return (
    <div className="page">
      <FiguresNote asOfMs={asOfMs} />
      <Breadcrumb trail={[{ href: '/plan', label: 'Plan' }]} here="When to change edges" />
      <TitleBlock
        title="When to change edges"
        lead="A change between jobs costs less than one in mid-job. This is the age at which waiting costs more than it saves."
        cells={[
          { label: 'As of', value: dayText(today) },
          { label: 'Edges here', value: tools.length },
        ]}
      />
      <Notice level="notice" title="What the edge looks like beats every count.">
        Hard turning, chatter, a torn finish or a chip: stop and look, whatever its age. An edge that still
        looks fresh goes on; enter the look, and its figures follow.
      </Notice>
      <ToolPanels tools={tools} parts={parts} today={today} lineLabel={lineLabel} />
      <MoneyPanels parts={parts} unpriced={unpriced} costs={costs} currency={currency} />
      <Panel title="What it costs here" id="costs">
        <CostsForm costs={costs} currency={currency} stamp={newStamp()} />
      </Panel>
    </div>
  );
}
