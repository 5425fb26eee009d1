import Link from 'next/link';
import { wayLink } from '@/app/_shared/words/way-words';
import type { PlanRow } from '@/app/plan/_parts/plan-rows';
import type { Blocker } from '@/lib/capability/blocker';
import type { Outlook } from '@/lib/outlook/outlook';
import { waysOut } from '@/lib/outlook/ways-out';

interface WaysListProps {
  readonly blockers: readonly Blocker[];
  readonly row: PlanRow;
  readonly outlook: Outlook;
}

const SHOWN = 3;

/** What can be done about these blockers, each way once. Changing the dates stands on top of the page for all of them. */
export function WaysList({ blockers, row, outlook }: WaysListProps) {
  const links = new Map(
    blockers
      .flatMap((blocker) => waysOut(blocker, row.line, outlook.facts))
      .filter(({ kind }) => kind !== 'change-dates')
      .map((way) => wayLink(way, outlook.facts.today))
      .map((link) => [link.href, link.label]),
  );
  if (links.size === 0) return null;
  return (
    <div className="cluster no-print">
      {[...links].slice(0, SHOWN).map(([href, label]) => (
        <Link key={href} href={href} prefetch={false}>
          {label}
        </Link>
      ))}
    </div>
  );
}
