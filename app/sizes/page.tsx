import type { Metadata } from 'next';
import { shopView } from '@/app/_server/outlook';
import { FiguresNote } from '@/app/_shared/figures-note';
import { ButtonLink, EmptyState, Notice, TitleBlock } from '@/app/_shared/ui';
import { MaterialTable } from './_parts/material-table';
import { SizeSheet } from './_parts/size-sheet';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Sizes' };

/** The size table: every size and service with its tube end drawn to scale, and the materials with their wear factors. */
export default async function SizesPage() {
  const { outlook, asOfMs } = await shopView();
  const { connections, shop } = outlook.facts;
  return (
    <div className="page">
      <FiguresNote asOfMs={asOfMs} />
      <TitleBlock
        title="Sizes"
        lead="Each size and service the shop works in, and the tube it cuts."
        actions={
          <>
            <ButtonLink href="/sizes/new">Add a size</ButtonLink>
            <ButtonLink href="/threads">Work a thread out</ButtonLink>
          </>
        }
      />
      <Notice level="notice" title="The dimensions that ship with a size are examples.">
        The fitting maker’s manual and the drawing rule. Confirm each row before anything is cut to it.
      </Notice>
      {connections.length === 0 ? (
        <EmptyState title="No sizes yet" action={<ButtonLink href="/setup">Set up the shop</ButtonLink>}>
          Say which sizes the shop works in; each comes with an example row to confirm.
        </EmptyState>
      ) : null}
      {connections.map((connection) => (
        <SizeSheet
          key={connection.id}
          connection={connection}
          status={outlook.sizes.find(({ connectionId }) => connectionId === connection.id)}
          unit={shop?.units ?? 'in'}
        />
      ))}
      <MaterialTable outlook={outlook} />
    </div>
  );
}
