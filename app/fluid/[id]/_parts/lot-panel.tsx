import Link from 'next/link';
import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { KeyValue, Panel } from '@/app/_shared/ui';
import { GhsPictogram } from '@/app/_shared/ui/ghs-pictogram';
import { CHLORINATED_WORDS } from '@/app/_shared/words/fluid-words';
import { HAZARDS_UNKNOWN, sdsWords } from '@/lib/fluid/label';
import { type FluidLot, fluidLotId, SHELF_LIFE_LABEL } from '@/lib/shop/fluid-lot';
import type { AboutBottle } from './about-bottle';
import { LotForm } from './lot-form';

/** What is written down of its lot. A lot without a sheet asks for one: a new lot brings a new revision. */
export function LotPanel({ bottle, facts, stamp }: AboutBottle & { readonly stamp: EntryStamp }) {
  const { lotFacts: lot } = bottle;
  const before = olderRevision(facts.fluidLots ?? [], bottle.part.id, lot);
  return (
    <Panel title={bottle.lot === '' ? 'Its lot' : `Lot ${bottle.lot}`}>
      <div className="stack">
        {lot === undefined ? (
          <p>
            <strong>Nothing is written down of this lot.</strong> A new lot brings a new SDS revision: copy it
            from the sheet, and ask the supplier about chlorinated paraffins.
          </p>
        ) : (
          <LotFacts lot={lot} />
        )}
        {before && lot ? (
          <p className="quiet">
            The sheet changed: rev {before.sdsRevision} for lot {before.lot}, rev {lot.sdsRevision} for this
            one. Use the old lot up first, and see after some twenty ends whether edges last alike.
          </p>
        ) : null}
        <p>
          <Link href="/wear">Do edges last alike with each lot of fluid?</Link>
        </p>
        <details open={lot === undefined}>
          <summary>{lot === undefined ? 'Write it down' : 'Change what is written down'}</summary>
          <LotForm
            toolId={bottle.toolId}
            partId={bottle.part.id}
            lot={bottle.lot}
            facts={lot ?? null}
            stamp={stamp}
          />
        </details>
      </div>
    </Panel>
  );
}

function LotFacts({ lot }: { readonly lot: FluidLot }) {
  return (
    <KeyValue
      items={[
        { label: 'Sheet', value: sdsWords(lot) },
        {
          label: 'Hazards',
          value:
            lot.signal === null && lot.hazards.length === 0 && lot.pictograms.length === 0 ? (
              HAZARDS_UNKNOWN
            ) : (
              <span className="stack-tight">
                <span className="cluster">
                  {lot.pictograms.map((code) => (
                    <GhsPictogram key={code} code={code} size={36} />
                  ))}
                </span>
                {lot.signal === null || lot.signal === 'none' ? null : <b>{lot.signal.toUpperCase()}</b>}
                {lot.hazards.join('; ')}
              </span>
            ),
        },
        {
          label: 'Chlorinated paraffins',
          value: `${CHLORINATED_WORDS[lot.chlorinated]}${lot.supplierAnswer === '' ? '' : ` (${lot.supplierAnswer})`}`,
        },
        { label: 'Shelf life', value: SHELF_LIFE_LABEL[lot.shelfLife] },
      ]}
    />
  );
}

/** Another lot of the same fluid with another sheet. */
function olderRevision(
  lots: readonly FluidLot[],
  partId: string,
  lot: FluidLot | undefined,
): FluidLot | undefined {
  if (lot === undefined || lot.sdsRevision === '') return undefined;
  return lots.find(
    (other) =>
      other.partId === partId &&
      fluidLotId(other) !== fluidLotId(lot) &&
      other.sdsRevision !== '' &&
      other.sdsRevision !== lot.sdsRevision &&
      (other.sdsOnDay ?? '') < (lot.sdsOnDay ?? ''),
  );
}
