import { sizeName } from '@/app/_shared/format';
import { Panel } from '@/app/_shared/ui';
import { addDays } from '@/lib/calendar';
import type { Ensemble } from '@/lib/ensemble/build-ensemble';
import type { OrderProposal } from '@/lib/orders/order-proposals';
import { stockFan } from '@/lib/orders/stock-fan';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import { exposureOfEnd } from '@/lib/wear/connection-exposure';
import { StockChart } from './stock-chart';

interface StockPanelProps {
  readonly proposal: OrderProposal;
  readonly facts: ShopFacts;
  readonly ensemble: Ensemble;
}

/** The stock against the plan, week by week, in ends of the size that the part is mostly for. */
export function StockPanel({ proposal, facts, ensemble }: StockPanelProps) {
  const { part, outlook } = proposal;
  const planned = facts.lines.find(({ connectionId }) => part.fitsConnectionIds.includes(connectionId));
  const wanted = planned?.connectionId ?? part.fitsConnectionIds[0];
  const connection = facts.connections.find(({ id }) => id === wanted);
  if (connection === undefined) return null;
  const operation = outlook.kind === 'blade' ? 'cone' : 'thread';
  const fan = stockFan(facts, ensemble, proposal, exposureOfEnd({ operation, connection }));
  const what = `${operation === 'cone' ? 'cones' : 'threads'} of ${sizeName(connection.odNum / connection.odDen, connection.service)}`;
  return (
    <Panel title="Stock against the plan">
      <StockChart
        title={`What is in hand and on its way, in ${what}`}
        summary="Steps up are orders that arrive; slopes down are lines being cut. Below zero the shop is behind. Work that is not on the books is not in it."
        endsLabel={what}
        points={fan.days.map((inDays, at) => ({
          day: addDays(facts.today, inDays),
          low: fan.low[at] ?? 0,
          mid: fan.mid[at] ?? 0,
          high: fan.high[at] ?? 0,
          withOrder: fan.midWithOrder?.[at] ?? null,
        }))}
      />
    </Panel>
  );
}
