import type { Route } from 'next';
import Link from 'next/link';
import { Panel, ToolId } from '@/app/_shared/ui';
import type { OrderProposal } from '@/lib/orders/order-proposals';
import { regrindWords } from './proposal-words';

/** Blades that need not be bought because they are reground, and the worn ones that can go out today. */
export function RegroundPanel({
  covered,
  today,
}: {
  readonly covered: readonly OrderProposal[];
  readonly today: string;
}) {
  const reground = covered.filter(({ regrinds }) => regrinds !== null);
  if (reground.length === 0) return null;
  return (
    <Panel title="Reground instead of bought" aside={<Link href="/plan/replace">regrind or buy</Link>}>
      <ul className="stack">
        {reground.map((proposal) => (
          <li key={proposal.part.id}>
            <Link
              href={`/plan/orders/need/${encodeURIComponent(proposal.part.id)}` as Route}
              prefetch={false}
            >
              {proposal.part.name}
            </Link>
            :{regrindWords(proposal, today)}
            {proposal.regrinds?.wornIds.map((id) => (
              <span key={id}>
                {' '}
                <Link href={`/tools/${encodeURIComponent(id)}` as Route} prefetch={false}>
                  <ToolId id={id} />
                </Link>
              </span>
            ))}
          </li>
        ))}
      </ul>
      <p className="fine">
        Counted as often as a regrind costs less than a new edge, within what the part allows, and each taken
        to come back usable. The plan check does not count on them until they are sent.
      </p>
    </Panel>
  );
}
