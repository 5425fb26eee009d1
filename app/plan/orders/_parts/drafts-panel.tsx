import type { Route } from 'next';
import Link from 'next/link';
import { newStamp } from '@/app/_server/entry-stamp';
import { money } from '@/app/_shared/format';
import { ButtonLink, Panel } from '@/app/_shared/ui';
import type { OrderRow } from '@/db/queries/orders';
import { spellOut } from '@/lib/orders/spell-out';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import { ApproveForm } from './approve-form';

/** Drafts on their way to being orders: a lead approves, then each is placed and gets its promised day. */
export function DraftsPanel({
  drafts,
  facts,
}: {
  readonly drafts: readonly OrderRow[];
  readonly facts: ShopFacts;
}) {
  const currency = facts.shop?.currency ?? 'USD';
  const shown = drafts.map((draft) => {
    const part = facts.parts.find(({ id }) => id === draft.partId);
    const cost =
      draft.unitPriceMinor === null ? null : money(draft.unitPriceMinor * draft.quantity, currency);
    return {
      ...{ id: draft.id, quantity: draft.quantity, status: draft.status },
      text: part === undefined ? draft.partId : spellOut(part, facts.connections).text,
      detail: [draft.supplier, cost, draft.why].filter((text) => text).join(' · '),
      href: `/plan/orders/${encodeURIComponent(draft.id)}`,
    };
  });
  const waiting = shown.filter(({ status }) => status === 'drafted');
  const approved = shown.filter(({ status }) => status === 'approved');
  return (
    <Panel title="Drafts" aside={<a href="/export/orders-to-place.csv">as a CSV file</a>}>
      {waiting.length === 0 ? null : <ApproveForm rows={waiting} stamp={newStamp()} />}
      {approved.length === 0 ? null : (
        <div className="stack-tight">
          <h3>Approved: place these</h3>
          <ul className="stack-tight">
            {approved.map((row) => (
              <li key={row.id} className="cluster">
                <Link href={row.href as Route} prefetch={false} className="id">
                  {row.id}
                </Link>
                <span>
                  {row.quantity} × {row.text}
                </span>
                <span className="fine">{row.detail}</span>
                <ButtonLink href={row.href}>Print, send, place</ButtonLink>
              </li>
            ))}
          </ul>
        </div>
      )}
    </Panel>
  );
}
