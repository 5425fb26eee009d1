import Link from 'next/link';
import { Panel } from '@/app/_shared/ui';
import type { PartReplacement } from '@/lib/replacement/part-replacement';
import type { Costs } from '@/lib/shop/costs';
import type { Part } from '@/lib/shop/part';
import { RegrindTable } from './regrind-table';
import { SizeTable } from './size-table';

interface MoneyPanelsProps {
  readonly parts: readonly PartReplacement[];
  readonly unpriced: readonly Part[];
  readonly costs: Costs;
  readonly currency: string;
}

/** The ages by part with their money, and regrind or buy. */
export function MoneyPanels({ parts, unpriced, costs, currency }: MoneyPanelsProps) {
  const reground = parts.filter(({ regrind }) => regrind !== null);
  return (
    <>
      {parts.length === 0 ? null : (
        <Panel title="By part">
          <SizeTable parts={parts} currency={currency} />
        </Panel>
      )}
      {unpriced.length === 0 ? null : (
        <p>
          Without a price, nothing is said in money of {unpriced.map(({ name }) => name).join(', ')}.{' '}
          <Link href="/parts">Give them one</Link>.
        </p>
      )}
      {reground.length === 0 ? null : (
        <Panel title="Regrind or buy" aside={`a regrind takes ${costs.regrindDays} days`}>
          <RegrindTable parts={reground} currency={currency} />
        </Panel>
      )}
    </>
  );
}
