import { useLastSending } from '@/app/_shared/form/given-back';
import { Field, NumberField, Select } from '@/app/_shared/ui';
import type { Offer } from '@/lib/shop/offer';
import type { Part } from '@/lib/shop/part';
import { breaksText, OTHER_SUPPLIERS } from './price-breaks';

const BREAK_KINDS = [
  { value: 'all-units', label: 'for every piece of the order' },
  { value: 'incremental', label: 'only for the pieces from there on' },
];

type Terms = Pick<Part, 'packSize' | 'minQuantity' | 'breakKind' | 'priceBreaks'>;

/** How the first supplier sells the part, and who else sells it. */
export function OfferFields({ part }: { readonly part: Part | null }) {
  const isRefused = useLastSending().status === 'refused';
  const others = part?.offers ?? [];
  const open = others.length > 0 || (part?.priceBreaks ?? []).length > 0 || isRefused;
  return (
    <details open={open}>
      <summary>Packs, price breaks, other suppliers</summary>
      <div className="stack">
        <TermFields prefix="" terms={part} />
        {Array.from({ length: OTHER_SUPPLIERS }, (_, at) => (
          <OtherSupplier key={others[at]?.supplier ?? `none-${String(at)}`} at={at} offer={others[at]} />
        ))}
      </div>
    </details>
  );
}

function OtherSupplier({ at, offer }: { readonly at: number; readonly offer: Offer | undefined }) {
  const prefix = `offer${at}.`;
  const shown = (value: number | null | undefined, share = 1) =>
    value === null || value === undefined ? '' : String(value / share);
  return (
    <fieldset>
      <legend>Another supplier</legend>
      <div className="stack">
        <div className="columns">
          <Field
            name={`${prefix}supplier`}
            label="Supplier"
            optional
            maxLength={80}
            defaultValue={offer?.supplier ?? ''}
            answers={`part.offers.${at}.supplier`}
          />
          <NumberField
            name={`${prefix}price`}
            label="Price"
            entry="decimal"
            unit="each"
            optional
            defaultValue={shown(offer?.priceMinor, 100)}
            answers={`part.offers.${at}.priceMinor`}
          />
          <NumberField
            name={`${prefix}leadTimeDays`}
            label="Lead time"
            unit="days"
            optional
            defaultValue={shown(offer?.leadTimeDays)}
            answers={`part.offers.${at}.leadTimeDays`}
          />
        </div>
        <TermFields prefix={prefix} terms={offer ?? null} />
      </div>
    </fieldset>
  );
}

function TermFields({ prefix, terms }: { readonly prefix: string; readonly terms: Terms | null }) {
  const at = /^offer(\d)\.$/.exec(prefix)?.[1];
  const path = at === undefined ? 'part.' : `part.offers.${at}.`;
  return (
    <div className="columns">
      <NumberField
        name={`${prefix}packSize`}
        label="Sold in packs of"
        unit="pieces"
        optional
        defaultValue={String(terms?.packSize ?? 1)}
        answers={`${path}packSize`}
      />
      <NumberField
        name={`${prefix}minQuantity`}
        label="Least order"
        unit="pieces"
        optional
        defaultValue={String(terms?.minQuantity ?? 1)}
        answers={`${path}minQuantity`}
      />
      <Field
        name={`${prefix}breaks`}
        label="Price breaks"
        hint="As 5: 95, 10: 88.50"
        optional
        maxLength={120}
        defaultValue={breaksText(terms?.priceBreaks ?? [])}
        answers={`${path}priceBreaks`}
      />
      <Select
        name={`${prefix}breakKind`}
        label="A break counts"
        options={BREAK_KINDS}
        defaultValue={terms?.breakKind ?? 'all-units'}
      />
    </div>
  );
}
