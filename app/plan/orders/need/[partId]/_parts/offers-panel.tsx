import { chanceWords, count, dayText, money } from '@/app/_shared/format';
import { ButtonLink, Panel, Table } from '@/app/_shared/ui';
import { addDays } from '@/lib/calendar';
import type { BuyingWay } from '@/lib/orders/buy-offer';
import type { OrderProposal } from '@/lib/orders/order-proposals';
import type { ShopFacts } from '@/lib/outlook/shop-facts';

/** The ways to buy it side by side: quantity and price under each supplier's terms, order-by day, chance to come in time. */
export function OffersPanel({
  proposal,
  facts,
}: {
  readonly proposal: OrderProposal;
  readonly facts: ShopFacts;
}) {
  const { chosen, others, part } = proposal;
  const currency = facts.shop?.currency ?? 'USD';
  return (
    <Panel
      title="Who sells it"
      aside={<ButtonLink href={`/parts/${encodeURIComponent(part.id)}`}>Change the offers</ButtonLink>}
    >
      <Table
        caption="Offers"
        rows={[chosen, ...others]}
        rowKey={({ offer }) => offer.supplier}
        columns={[
          {
            key: 'supplier',
            header: 'Supplier',
            lead: true,
            cell: (way) =>
              `${way.offer.supplier || 'none on record'}${way === chosen && way.quantity > 0 ? ', proposed' : ''}`,
          },
          { key: 'terms', header: 'Terms', cell: (way) => termsWords(way, currency) },
          { key: 'quantity', header: 'Order', numeric: true, cell: ({ quantity }) => quantity || 'none' },
          {
            key: 'price',
            header: 'Price',
            numeric: true,
            cell: (way) => priceWords(way, currency),
          },
          {
            key: 'by',
            header: 'Order by',
            cell: ({ orderByInDays }) => byWords(orderByInDays, facts.today),
          },
          {
            key: 'sure',
            header: 'Ordered today, in time',
            cell: ({ inTimeToday }) => (inTimeToday === null ? 'not known' : chanceWords(inTimeToday)),
          },
        ]}
      />
    </Panel>
  );
}

/** What the order costs; where nothing need be ordered, what one piece costs. */
function priceWords({ priceMinor, quantity, offer }: BuyingWay, currency: string): string {
  if (quantity > 0 && priceMinor !== null) return money(priceMinor, currency);
  return offer.priceMinor === null ? 'not known' : `${money(offer.priceMinor, currency)} each`;
}

function byWords(inDays: number | null, today: string): string {
  if (inDays === null) return 'no lead time on record';
  if (!Number.isFinite(inDays)) return 'nothing needed';
  return inDays <= 0 ? 'today' : dayText(addDays(today, inDays), today);
}

function termsWords({ offer: { leadTimeDays, terms } }: BuyingWay, currency: string): string {
  const { packSize, minQuantity, priceBreaks } = terms;
  return [
    leadTimeDays === null ? '' : `quoted ${count(leadTimeDays, 'day')}`,
    packSize > 1 ? `in packs of ${packSize}` : '',
    minQuantity > 1 ? `at least ${minQuantity}` : '',
    ...priceBreaks.map(
      ({ fromQuantity, priceMinor }) => `${money(priceMinor, currency)} from ${fromQuantity}`,
    ),
  ]
    .filter((words) => words !== '')
    .join('; ');
}
