import type { Metadata } from 'next';
import { shopView } from '@/app/_server/outlook';
import { dayText } from '@/app/_shared/format';
import { Breadcrumb, Panel, TitleBlock } from '@/app/_shared/ui';
import { PrintButton } from '@/app/_shared/ui/print-button';
import { shopBottles } from '@/lib/outlook/fluid-facts';
import { RegisterTable } from './_parts/register-table';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Chemical register' };

/** The chemical register of the cutting fluids, lot by lot, to print and pin up. */
export default async function RegisterPage() {
  const { facts } = (await shopView()).outlook;
  const bottles = shopBottles(facts);
  return (
    <div className="page">
      <div className="page no-print">
        <Breadcrumb trail={[{ href: '/fluid', label: 'Fluid' }]} here="Chemical register" />
      </div>
      <TitleBlock
        title="Chemical register"
        lead={`Cutting fluids as of ${dayText(facts.today)}. What is not written down says so. The safety data sheet rules.`}
        actions={<PrintButton />}
      />
      <Panel title="Fluids by lot">
        <RegisterTable bottles={bottles} today={facts.today} />
      </Panel>
    </div>
  );
}
