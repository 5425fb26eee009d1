import { ConnectionEnd } from '@/app/_shared/drawing/connection-end';
import { count, listWords, money } from '@/app/_shared/format';
import { HandText, KeyValue, Panel } from '@/app/_shared/ui';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import { connectionText } from '@/lib/shop/connection-text';
import type { Part } from '@/lib/shop/part';

/** The part spelled out as the order must spell it: designation, hand in words, what it fits, supplier. */
export function PartFacts({ part, facts }: { readonly part: Part; readonly facts: ShopFacts }) {
  const { connections, shop } = facts;
  const fits = connections.filter(({ id }) => part.fitsConnectionIds.includes(id));
  const sizes = new Set(fits.map(({ odNum, odDen }) => odNum / odDen));
  const [first] = fits;
  const price = part.priceMinor === null ? null : money(part.priceMinor, shop?.currency ?? 'USD');
  return (
    <Panel title={part.name} aside="confirm with the fitting maker’s manual and the supplier">
      <div className="stack">
        {first && sizes.size === 1 ? <ConnectionEnd connection={first} pxPerIn={64} decorative /> : null}
        <KeyValue
          items={[
            { label: 'Designation', value: <b>{part.designation === '' ? part.name : part.designation}</b> },
            ...(part.hand === null ? [] : [{ label: 'Hand', value: <HandText hand={part.hand} /> }]),
            {
              label: 'Fits',
              value: fits.length === 0 ? 'no size in particular' : listWords(fits.map(connectionText)),
            },
            { label: 'Supplier', value: part.supplier === '' ? 'none on record' : part.supplier },
            {
              label: 'Lead time',
              value: part.leadTimeDays === null ? 'none on record' : count(part.leadTimeDays, 'day'),
            },
            ...(price === null ? [] : [{ label: 'Last known price', value: price }]),
          ]}
        />
      </div>
    </Panel>
  );
}
