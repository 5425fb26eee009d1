import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { shopView } from '@/app/_server/outlook';
import { FiguresNote } from '@/app/_shared/figures-note';
import { aboutBand, count, whole } from '@/app/_shared/format';
import { Breadcrumb, TitleBlock } from '@/app/_shared/ui';
import { againstGuess } from '@/app/_shared/words/wear-words';
import { partWears } from '@/lib/outlook/part-wear';
import { wearCurve } from '@/lib/outlook/wear-curve';
import { connectionText } from '@/lib/shop/connection-text';
import { CurvePanel } from './_parts/curve-panel';
import { EdgeTable } from './_parts/edge-table';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Wear of a part' };

/** One part: the share of its edges still cutting against ends, the model beside the shop's own edges, and the edges. */
export default async function PartWearPage({ params }: PageProps<'/wear/[partId]'>) {
  const partId = decodeURIComponent((await params).partId);
  const { outlook, asOfMs } = await shopView();
  const wear = partWears(outlook).find(({ part }) => part.id === partId);
  const curve = wearCurve(outlook, partId);
  if (wear === undefined || curve === undefined) notFound();
  const { part, counts, guess, connection } = wear;
  const noun = wear.kind === 'blade' ? 'cones' : 'threads';
  const said = againstGuess(wear);
  return (
    <div className="page">
      <FiguresNote asOfMs={asOfMs} />
      <Breadcrumb trail={[{ href: '/wear', label: 'Wear' }]} here={part.name} />
      <TitleBlock
        title={part.name}
        lead={`A new one lasts ${aboutBand(wear.typicalEnds)} ${noun} of ${connectionText(connection)} in the reference material; half last longer.`}
        cells={[
          {
            label: 'First guess',
            value:
              guess === undefined ? 'none typed' : `${whole(guess.ends)}${said === '' ? '' : `, ${said}`}`,
          },
          { label: 'Worn out', value: count(counts.worn, 'edge') },
          { label: 'Accidents', value: count(counts.incident, 'edge') },
          { label: 'Taken out good', value: count(counts.removedWorking, 'edge') },
          { label: 'Still cutting', value: count(counts.inService, 'edge') },
        ]}
      />
      <CurvePanel curve={curve} noun={noun} connectionName={connectionText(connection)} />
      <EdgeTable lives={curve.lives} noun={noun} connectionName={connectionText(connection)} />
    </div>
  );
}
