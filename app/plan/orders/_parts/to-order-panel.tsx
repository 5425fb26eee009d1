import type { Route } from 'next';
import Link from 'next/link';
import { newStamp } from '@/app/_server/entry-stamp';
import { count, listWords, money, sizeName } from '@/app/_shared/format';
import { ButtonLink, EmptyState, HandText, Panel } from '@/app/_shared/ui';
import type { OrderBook, OrderLine } from '@/lib/orders/order-lines';
import { lookAlikes } from '@/lib/orders/spell-out';
import type { Outlook } from '@/lib/outlook/outlook';
import { readConnectionKey } from '@/lib/shop/connection-text';
import { ROLE_LABEL } from '@/lib/shop/vocabulary';
import { DraftForm } from './draft-form';
import styles from './orders.module.css';
import { byWhenWords, ifNotWords, inTimeWords, whyWords } from './proposal-words';

interface ToOrderProps {
  readonly book: OrderBook;
  readonly outlook: Outlook;
  readonly horizonQuery: string;
}

/** What to order, how many, by when, why and what if not: ticked and drafted at once. */
export function ToOrderPanel({ book, outlook, horizonQuery }: ToOrderProps) {
  const { facts } = outlook;
  const currency = facts.shop?.currency ?? 'USD';
  const total = book.toOrder.reduce((sum, { priceMinor }) => sum + (priceMinor ?? 0), 0);
  if (book.toOrder.length === 0)
    return (
      <Panel title="Orders to place">
        <EmptyState title="Nothing need be ordered">
          {(facts.drafts ?? []).length > 0
            ? 'With the drafts below, what is here and on order is enough for the days looked at.'
            : 'What is here and on order is enough for the days looked at, as surely as the shop asks.'}
        </EmptyState>
        <Unlisted book={book} />
      </Panel>
    );
  return (
    <Panel
      title="Orders to place"
      aside={`${count(book.toOrder.length, 'line')}, about ${money(total, currency)} in all`}
    >
      <DraftForm
        stamp={newStamp()}
        horizonQuery={horizonQuery}
        rows={book.toOrder.map((line) => ({
          partId: line.part.id,
          name: line.part.name,
          quantity: line.quantity,
          unit: line.part.role === 'fluid' ? 'containers' : 'pieces',
          what: <What line={line} outlook={outlook} />,
          cost: line.priceMinor === null ? 'no price on record' : money(line.priceMinor, currency),
          from: fromWords(line),
          byWhen: byWhenWords(line, facts.today),
          inTime: inTimeWords(line, facts.today),
          why: whyWords(line, facts.today),
          lines: <LineLinks lineIds={line.lineIds} />,
          ifNot: ifNotWords(line, facts.today, currency),
        }))}
      />
      <Unlisted book={book} />
    </Panel>
  );
}

function fromWords({ offer, quantity, priceMinor }: OrderLine): string {
  const supplier = offer.supplier === '' ? 'no supplier on record' : offer.supplier;
  const broken = priceMinor !== null && offer.priceMinor !== null && priceMinor < offer.priceMinor * quantity;
  return broken ? `${supplier}, at the price for ${quantity}` : supplier;
}

function What({ line, outlook }: { readonly line: OrderLine; readonly outlook: Outlook }) {
  const { part } = line;
  const pitch = lookAlikes(part, outlook.facts.connections).find((warning) => warning.includes(' is not '));
  return (
    <span className="stack-tight">
      <span className={styles.partName}>
        {line.because.kind === 'edge' ? (
          <Link href={`/plan/orders/need/${encodeURIComponent(part.id)}` as Route} prefetch={false}>
            {part.name}
          </Link>
        ) : (
          part.name
        )}
      </span>
      {part.designation === '' ? null : <span className="quiet">{part.designation}</span>}
      {part.hand === null ? null : <HandText hand={part.hand} />}
      {pitch === undefined ? null : <span className="fine">{pitch}</span>}
    </span>
  );
}

function LineLinks({ lineIds }: { readonly lineIds: readonly string[] }) {
  if (lineIds.length === 0) return null;
  return (
    <span className="fine">
      For{' '}
      {lineIds.map((id, at) => (
        <span key={id}>
          {at > 0 ? ', ' : ''}
          <Link href={`/plan/lines/${encodeURIComponent(id)}` as Route} prefetch={false}>
            {id}
          </Link>
        </span>
      ))}
    </span>
  );
}

function sizeWords(connectionId: string): string {
  const size = readConnectionKey(connectionId);
  return size === undefined ? connectionId : `${sizeName(size.odNum / size.odDen, size.service)}`;
}

/** What is missing and not in the shop's list of parts: it cannot be ordered before it is entered. */
function Unlisted({ book }: { readonly book: OrderBook }) {
  if (book.unlisted.length === 0) return null;
  const sizes = new Map<string, string[]>();
  for (const { role, connectionId } of book.unlisted)
    sizes.set(connectionId, [...(sizes.get(connectionId) ?? []), ROLE_LABEL[role]]);
  const words = [...sizes].map(([connectionId, roles]) => `${sizeWords(connectionId)}: ${listWords(roles)}`);
  return (
    <div className="cluster">
      <p>
        Missing, and not in the list of parts. {words.join('. ')}. No dimensions are made up: enter the parts
        first.
      </p>
      <ButtonLink href="/parts">Parts</ButtonLink>
    </div>
  );
}
