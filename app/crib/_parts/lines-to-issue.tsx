import type { Route } from 'next';
import Link from 'next/link';
import { count, dayText } from '@/app/_shared/format';
import { ButtonLink, EmptyState } from '@/app/_shared/ui';
import type { Names } from '@/app/_shared/words/entry-words';
import { SizeDrawing, SizeWords } from '@/app/plan/_parts/size-drawing';
import type { KitRow } from '@/db/queries/kits';
import { addDays } from '@/lib/calendar/day';
import { endsToMake } from '@/lib/outlook/plan-facts';
import type { LineFacts, ShopFacts } from '@/lib/outlook/shop-facts';
import styles from './crib.module.css';

/** Lines that start within so many days are listed; the others are a scan away. */
const AHEAD_DAYS = 14;

/** Lines of the plan with work left and no kit out, those that start first on top: one press to their kit. */
export function LinesToIssue({
  facts,
  kits,
  names,
}: {
  readonly facts: ShopFacts;
  readonly kits: readonly KitRow[];
  readonly names: Names;
}) {
  const withKit = new Set(kits.map(({ jobLineId }) => jobLineId));
  const until = addDays(facts.today, AHEAD_DAYS);
  const lines = facts.lines.filter(
    (line) => !withKit.has(line.id) && endsToMake(line) > 0 && line.startOnDay <= until,
  );
  if (lines.length === 0)
    return (
      <EmptyState title="Nothing waits for a kit">
        Every line that starts in the next two weeks has its kit, or nothing left to make.
      </EmptyState>
    );
  return (
    <ul className={styles.lines}>
      {lines.map((line) => (
        <LineToIssue key={line.id} line={line} facts={facts} names={names} />
      ))}
    </ul>
  );
}

function LineToIssue({
  line,
  facts,
  names,
}: {
  readonly line: LineFacts;
  readonly facts: ShopFacts;
  readonly names: Names;
}) {
  const connection = facts.connections.find(({ id }) => id === line.connectionId);
  const href = `/crib/issue/${encodeURIComponent(line.id)}`;
  return (
    <li className={styles.line}>
      <SizeDrawing connection={connection} />
      <div>
        <h3>
          <Link href={href as Route} prefetch={false}>
            <SizeWords connection={connection} connectionId={line.connectionId} />
            <span className="vh">, line {line.id}</span>
          </Link>
        </h3>
        <p>
          {count(endsToMake(line), 'end')} in {names.material(line.materialId)}
        </p>
        <p className="fine">
          {line.id}, {dayText(line.startOnDay, facts.today)} to {dayText(line.dueOnDay, facts.today)}
        </p>
      </div>
      <ButtonLink href={href} aria-label={`Make the kit for ${line.id}`}>
        Make the kit
      </ButtonLink>
    </li>
  );
}
