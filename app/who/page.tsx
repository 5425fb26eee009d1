import type { Metadata } from 'next';
import Link from 'next/link';
import { currentActor } from '@/app/_server/session';
import { EmptyState, TitleBlock } from '@/app/_shared/ui';
import { shopDb } from '@/db/client';
import { listPeople } from '@/db/queries/shop';
import { chooseAction } from './actions';
import styles from './who.module.css';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Who is acting' };

/** Choose your name at a shared tablet: every entry carries it. */
export default async function WhoPage({ searchParams }: PageProps<'/who'>) {
  const people = listPeople(shopDb());
  const actor = await currentActor();
  const { back } = await searchParams;
  return (
    <div className="page">
      <TitleBlock
        title="Who is acting"
        lead="Choose your name. Everything entered at this device carries it until someone else chooses."
      />
      {people.length === 0 ? (
        <EmptyState title="The shop knows nobody yet" action={<Link href="/setup">Set up the shop</Link>}>
          Add the people who will use it, then choose your name here.
        </EmptyState>
      ) : (
        <form action={chooseAction} className={styles.names}>
          <input type="hidden" name="back" value={typeof back === 'string' ? back : ''} />
          {people.map((person) => (
            <button
              key={person.id}
              type="submit"
              name="personId"
              value={person.id}
              className={styles.name}
              aria-pressed={actor?.personId === person.id}
            >
              <span>{person.name}</span>
              <span className="quiet">{person.role}</span>
            </button>
          ))}
        </form>
      )}
    </div>
  );
}
