import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { newStamp } from '@/app/_server/entry-stamp';
import { shopNames } from '@/app/_server/names';
import { shopView } from '@/app/_server/outlook';
import { Cautions } from '@/app/_shared/cautions';
import { ConnectionEnd } from '@/app/_shared/drawing/connection-end';
import { FiguresNote } from '@/app/_shared/figures-note';
import { count, dayText } from '@/app/_shared/format';
import { Breadcrumb, SizeText, TitleBlock } from '@/app/_shared/ui';
import { KitCounter } from '@/app/crib/_parts/kit-counter';
import { kitNeed } from '@/app/crib/_parts/kit-need';
import { kitRows } from '@/app/crib/_parts/kit-rows';
import { NoKit } from '@/app/crib/_parts/no-kit';
import { shopDb } from '@/db/client';
import { findLine } from '@/db/queries/jobs';
import { listPeople } from '@/db/queries/shop';
import { HAND_LABEL } from '@/lib/shop/vocabulary';

export const dynamic = 'force-dynamic';

export async function generateMetadata({ params }: PageProps<'/crib/issue/[lineId]'>): Promise<Metadata> {
  return { title: `Kit for ${decodeURIComponent((await params).lineId)}` };
}

/** The kit of one line: the exact tools, why these, each confirmed by a scan, out to one person at one bench. */
export default async function IssueKitPage({ params }: PageProps<'/crib/issue/[lineId]'>) {
  const lineId = decodeURIComponent((await params).lineId);
  const db = shopDb();
  const line = findLine(db, lineId);
  if (line === undefined) notFound();
  const asked = kitNeed(db, lineId);
  if (asked === undefined) return <NoKit line={line} />;
  const { need } = asked;
  const { connection } = need;
  // The figures may be a moment behind; what lies in the crib and who has what is read as it stands now.
  const { outlook, asOfMs } = await shopView();
  return (
    <div className="page">
      <FiguresNote asOfMs={asOfMs} />
      <Breadcrumb trail={[{ href: '/crib', label: 'Crib' }]} here={`Kit for ${lineId}`} />
      <TitleBlock
        title={
          <>
            <SizeText odIn={connection.odNum / connection.odDen} service={connection.service} unit />,{' '}
            {HAND_LABEL[connection.hand]}
          </>
        }
        lead={`${count(line.ends, 'end')} in ${shopNames().material(line.materialId)}, due ${dayText(line.dueOnDay, need.today)}`}
        drawing={<ConnectionEnd connection={connection} pxPerIn={112} />}
      />
      <KitCounter
        lineId={lineId}
        rows={kitRows(db, line, need, outlook)}
        people={listPeople(db).map(({ id, name, role }) => ({ id, name, role }))}
        stamp={newStamp()}
      />
      <Cautions at="blade" />
    </div>
  );
}
