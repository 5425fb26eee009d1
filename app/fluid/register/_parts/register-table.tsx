import Link from 'next/link';
import { dayText, volumeText } from '@/app/_shared/format';
import { EmptyState, Table } from '@/app/_shared/ui';
import { GhsPictogram } from '@/app/_shared/ui/ghs-pictogram';
import { CHLORINATED_WORDS } from '@/app/_shared/words/fluid-words';
import { HAZARDS_UNKNOWN, sdsWords } from '@/lib/fluid/label';
import type { ShopBottle } from '@/lib/outlook/fluid-facts';

interface RegisterRow {
  readonly key: string;
  readonly first: ShopBottle;
  readonly ids: readonly string[];
  readonly volumeMl: number;
}

/** One row a lot: product, supplier, hazards, sheet, where used, quantity, storage, first aid, disposal, review. */
export function RegisterTable({
  bottles,
  today,
}: {
  readonly bottles: readonly ShopBottle[];
  readonly today: string;
}) {
  return (
    <Table
      caption="Chemical register"
      rows={rowsOf(bottles)}
      rowKey={({ key }) => key}
      phone="cards"
      empty={<EmptyState title="No fluid here">Receive a bottle; its lot then stands here.</EmptyState>}
      columns={[
        { key: 'what', header: 'Product and lot', lead: true, cell: (row) => <Product row={row} /> },
        { key: 'hazards', header: 'Hazards', cell: ({ first }) => <Hazards bottle={first} /> },
        {
          key: 'sds',
          header: 'Sheet',
          cell: ({ first }) => (
            <TwoLines
              first={sdsWords(first.lotFacts)}
              then={`chlorinated: ${CHLORINATED_WORDS[first.chlorinated]}`}
            />
          ),
        },
        {
          key: 'where',
          header: 'Used at, storage',
          cell: ({ first }) => (
            <TwoLines first={said(first.lotFacts?.usedAt)} then={said(first.lotFacts?.storage)} />
          ),
        },
        { key: 'much', header: 'Here', numeric: true, cell: (row) => volumeText(row.volumeMl) },
        {
          key: 'aid',
          header: 'First aid, disposal',
          cell: ({ first }) => (
            <TwoLines first={said(first.lotFacts?.firstAid)} then={said(first.lotFacts?.disposal)} />
          ),
        },
        {
          key: 'review',
          header: 'Review',
          cell: ({ first }) =>
            first.lotFacts?.reviewOnDay ? dayText(first.lotFacts.reviewOnDay, today) : 'no day set',
        },
      ]}
    />
  );
}

function rowsOf(bottles: readonly ShopBottle[]): RegisterRow[] {
  const rows = new Map<string, RegisterRow>();
  for (const bottle of bottles) {
    const key = `${bottle.part.id}/${bottle.lot}`;
    const row = rows.get(key);
    const volumeMl = (row?.volumeMl ?? 0) + (bottle.levelMl ?? 0);
    rows.set(key, { key, first: row?.first ?? bottle, ids: [...(row?.ids ?? []), bottle.toolId], volumeMl });
  }
  return [...rows.values()];
}

function Product({ row: { first, ids } }: { readonly row: RegisterRow }) {
  return (
    <>
      {first.lotFacts?.productIdentifier || first.part.name}, lot {first.lot || 'not written down'},{' '}
      {first.part.supplier}
      {' ('}
      {ids.map((id, i) => (
        <span key={id}>
          {i > 0 ? ', ' : ''}
          <Link href={`/fluid/${encodeURIComponent(id)}`} prefetch={false}>
            {id}
          </Link>
        </span>
      ))}
      )
    </>
  );
}

function Hazards({ bottle: { lotFacts: lot } }: { readonly bottle: ShopBottle }) {
  if (lot === undefined || (lot.signal === null && lot.hazards.length === 0 && lot.pictograms.length === 0))
    return HAZARDS_UNKNOWN;
  return (
    <span className="stack-tight">
      <span className="cluster">
        {lot.pictograms.map((code) => (
          <GhsPictogram key={code} code={code} size={28} />
        ))}
      </span>
      {lot.signal === null || lot.signal === 'none' ? null : <b>{lot.signal.toUpperCase()}</b>}
      {lot.hazards.join('; ')}
    </span>
  );
}

/** Two facts in one cell, so that the register stays on the sheet. */
function TwoLines({ first, then }: Record<'first' | 'then', string>) {
  return (
    <>
      {first}
      <br />
      {then}
    </>
  );
}

function said(text: string | undefined): string {
  return text === undefined || text === '' ? 'not written down' : text;
}
