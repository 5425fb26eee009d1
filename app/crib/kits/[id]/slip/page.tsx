import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { timeZone, today } from '@/app/_server/clock';
import { shopNames } from '@/app/_server/names';
import { Breadcrumb } from '@/app/_shared/ui';
import { PrintButton } from '@/app/_shared/ui/print-button';
import { shopDb } from '@/db/client';
import { findLine } from '@/db/queries/jobs';
import { findKit } from '@/db/queries/kits';
import { KitSlip } from './_parts/kit-slip';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Kit slip' };

/** The slip that goes with a kit: what is in it, to tick out and in, with a code for each item and one for the kit. */
export default async function KitSlipPage({ params }: PageProps<'/crib/kits/[id]/slip'>) {
  const db = shopDb();
  const kit = findKit(db, decodeURIComponent((await params).id));
  if (kit === undefined) notFound();
  const names = shopNames();
  return (
    <div className="page">
      <div className="stack no-print">
        <Breadcrumb
          trail={[
            { href: '/crib', label: 'Crib' },
            { href: `/crib/kits/${encodeURIComponent(kit.id)}`, label: `Kit for ${kit.jobLineId}` },
          ]}
          here="Slip"
        />
        <div>
          <PrintButton />
        </div>
      </div>
      <KitSlip
        kit={kit}
        line={findLine(db, kit.jobLineId)}
        names={names}
        today={today()}
        timeZone={timeZone()}
      />
    </div>
  );
}
