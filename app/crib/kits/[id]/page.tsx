import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { timeZone, today } from '@/app/_server/clock';
import { newStamp } from '@/app/_server/entry-stamp';
import { shopNames } from '@/app/_server/names';
import { count, momentText } from '@/app/_shared/format';
import { Breadcrumb, ButtonLink, Panel, TitleBlock } from '@/app/_shared/ui';
import { KitClose } from '@/app/crib/_parts/kit-close';
import { KitDone } from '@/app/crib/_parts/kit-done';
import { KitItems } from '@/app/crib/_parts/kit-items';
import { KitReturn } from '@/app/crib/_parts/kit-return';
import { PiecesOwed } from '@/app/crib/_parts/pieces-owed';
import { shopDb } from '@/db/client';
import { findLine } from '@/db/queries/jobs';
import { findKit } from '@/db/queries/kits';
import { ROLE_LABEL } from '@/lib/shop/vocabulary';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Kit' };

/** One kit: what of it is back, what is missing and whose it is; back by scanning, put away when complete. */
export default async function KitPage({ params, searchParams }: PageProps<'/crib/kits/[id]'>) {
  const kit = findKit(shopDb(), decodeURIComponent((await params).id));
  if (kit === undefined) notFound();
  const { scan, done } = await searchParams;
  const names = shopNames();
  const out = kit.itemsNow.filter((item) => item.out).map(({ tool }) => tool);
  const holder = names.person(kit.toPersonId);
  const isOut = kit.status === 'out';
  const line = findLine(shopDb(), kit.jobLineId);
  const size =
    line === undefined ? '' : `${names.connection(line.connectionId)}, ${count(line.ends, 'end')}. `;
  return (
    <div className="page">
      <Breadcrumb trail={[{ href: '/crib', label: 'Crib' }]} here={`Kit for ${kit.jobLineId}`} />
      <TitleBlock
        title={`Kit for ${kit.jobLineId}`}
        lead={
          isOut
            ? `${size}With ${holder}${kit.bench === '' ? '' : ` at ${kit.bench}`}.`
            : `${size}Put away, ${kit.status === 'complete' ? 'complete' : `with a loss: ${kit.lostToolIds.join(', ')}`}.`
        }
        cells={[
          { label: 'Issued', value: momentText(kit.issuedAtMs, timeZone(), today()) },
          { label: 'Back', value: `${kit.items.length - out.length} of ${kit.items.length}` },
        ]}
        actions={
          <ButtonLink href={`/crib/kits/${encodeURIComponent(kit.id)}/slip`}>Print the slip</ButtonLink>
        }
      />
      <KitDone entryId={done} kitId={kit.id} />
      <PiecesOwed tools={kit.itemsNow.map(({ tool }) => tool)} />
      <div className={isOut ? 'columns-lead' : 'stack-loose'}>
        <div className="stack-loose">
          {isOut ? (
            <Panel title="Take it back">
              <KitReturn
                out={out.map(({ id, role }) => ({ id, label: ROLE_LABEL[role] }))}
                scanned={typeof scan === 'string' ? scan : undefined}
                stamp={newStamp()}
              />
            </Panel>
          ) : null}
          <Panel title="What went out">
            <KitItems kit={kit} holder={holder} />
          </Panel>
        </div>
        {isOut ? (
          <KitClose kitId={kit.id} outIds={out.map(({ id }) => id)} missing={kit.missingToolIds} />
        ) : null}
      </div>
    </div>
  );
}
