import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { ButtonLink, Panel, SizeText } from '@/app/_shared/ui';
import type { Connection } from '@/lib/shop/noun';
import { AddSizesForm } from './add-sizes-form';
import type { SizeTile } from './size-tiles';

/** The sizes in use, and those that can be added. */
export function SizesPanel({
  connections,
  offered,
  stamp,
}: {
  connections: readonly Connection[];
  offered: readonly SizeTile[];
  stamp: EntryStamp;
}) {
  const unconfirmed = connections.filter(({ confirmed }) => !confirmed).length;
  return (
    <Panel
      title="Sizes and parts"
      aside={
        <>
          <ButtonLink href="/sizes">Size table</ButtonLink> <ButtonLink href="/parts">Parts</ButtonLink>
        </>
      }
    >
      <div className="stack">
        <p className="cluster">
          {connections.map((connection) => (
            <span key={connection.id}>
              <SizeText odIn={connection.odNum / connection.odDen} service={connection.service} />
            </span>
          ))}
        </p>
        {unconfirmed > 0 ? (
          <p className="quiet">
            {unconfirmed} of {connections.length} rows still carry example dimensions: confirm them in the
            fitting maker’s manual, on the size table.
          </p>
        ) : null}
        {offered.length > 0 ? (
          <details>
            <summary>Add sizes</summary>
            <AddSizesForm offered={offered} stamp={stamp} />
          </details>
        ) : null}
      </div>
    </Panel>
  );
}
