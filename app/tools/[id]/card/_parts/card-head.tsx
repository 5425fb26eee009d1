import type { Route } from 'next';
import { count, dayText, momentText, money as moneyText } from '@/app/_shared/format';
import { Breadcrumb, HandText, StateMark, TitleBlock, ToolId } from '@/app/_shared/ui';
import { PrintButton } from '@/app/_shared/ui/print-button';
import type { ToolRow } from '@/db/queries/tools';
import type { EdgeCard } from '@/lib/outlook/tool-card';
import type { Part } from '@/lib/shop/part';
import { ROLE_LABEL } from '@/lib/shop/vocabulary';

interface CardHeadProps {
  readonly tool: ToolRow;
  readonly part: Part;
  readonly edges: readonly EdgeCard[];
  readonly money: { readonly currency: string; readonly regrindMinor: number };
  readonly nowMs: number;
  readonly timeZone: string;
}

/** The card's head: ID, what it is, lot, received, where it stands, and what it has made in all. */
export function CardHead({ tool, part, edges, money, nowMs, timeZone }: CardHeadProps) {
  const ends = edges.reduce((sum, edge) => sum + edge.ends, 0);
  const good = edges.reduce((sum, edge) => sum + edge.goodEnds, 0);
  const regrinds = Math.max(0, edges.length - 1);
  const price = part.priceMinor === null ? null : part.priceMinor + regrinds * money.regrindMinor;
  const perEnd = price === null || good === 0 ? null : moneyText(Math.ceil(price / good), money.currency);
  const before = tool.opening.known === 'new' ? '' : ' Use before it was entered here is not in these sums.';
  return (
    <>
      <Breadcrumb
        trail={[
          { href: '/tools', label: 'Tools' },
          { href: `/tools/${encodeURIComponent(tool.id)}` as Route, label: tool.id },
        ]}
        here="History card"
      />
      <TitleBlock
        title={<ToolId id={tool.id} />}
        lead={`${part.designation === '' ? part.name : `${part.name}, ${part.designation}`}. Card as of ${momentText(nowMs, timeZone)}.${before}`}
        cells={[
          { label: 'Kind', value: tool.hand ? <HandText hand={tool.hand} /> : ROLE_LABEL[tool.role] },
          { label: 'Lot', value: tool.lot === '' ? 'not written down' : tool.lot },
          { label: 'Received', value: dayText(tool.receivedOnDay) },
          { label: 'Stands', value: <StateMark state={tool.state} /> },
          ...(edges.length === 0
            ? []
            : [
                {
                  label: 'In all',
                  value: `${count(ends, 'end')}, ${good} good${regrinds > 0 ? `, ${count(regrinds, 'regrind')}` : ''}${perEnd === null ? '' : `, ${perEnd} a good end so far`}`,
                },
              ]),
        ]}
        actions={<PrintButton />}
      />
    </>
  );
}
