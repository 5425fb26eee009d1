import { count, dayText } from '@/app/_shared/format';
import { Panel } from '@/app/_shared/ui';
import { SizeWords } from '@/app/plan/_parts/size-drawing';
import { verdictReasons } from '@/lib/capability/verdict-headline';
import type { WeekCell, WeekRow } from '@/lib/capability/week-grid';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import { cellState } from './shop-weeks';
import styles from './weeks.module.css';

/** Why a size is not free in some weeks: weeks that are alike share a sentence. For phones, and for whoever asks why. */
export function WeekNotes({ rows, facts }: { readonly rows: readonly WeekRow[]; readonly facts: ShopFacts }) {
  const notes = rows.flatMap((row) => {
    const spans = troubledSpans(row.cells);
    return spans.length === 0 ? [] : [{ row, spans }];
  });
  if (notes.length === 0) return null;
  return (
    <Panel title="Why not">
      <dl className={styles.notes}>
        {notes.map(({ row: { connectionId }, spans }) => (
          <div key={connectionId}>
            <dt>
              <SizeWords
                connection={facts.connections.find(({ id }) => id === connectionId)}
                connectionId={connectionId}
              />
            </dt>
            {spans.map((span) => (
              <dd key={span.first}>{spanSentence(span, facts.today)}</dd>
            ))}
          </div>
        ))}
      </dl>
    </Panel>
  );
}

interface Span {
  readonly first: string;
  readonly weeks: number;
  readonly words: string;
}

function spanSentence({ first, weeks, words }: Span, today: string): string {
  const when =
    weeks === 1
      ? `Week of ${dayText(first, today)}`
      : `${count(weeks, 'week')} from ${dayText(first, today)}`;
  return `${when}: ${words}.`;
}

/** Weeks in a row that are not free for the same reasons. */
function troubledSpans(cells: readonly WeekCell[]): Span[] {
  const spans: Span[] = [];
  let last: string | undefined;
  for (const cell of cells) {
    const words = cellWords(cell);
    const known = spans.at(-1);
    if (words !== undefined && words === last && known)
      spans[spans.length - 1] = { ...known, weeks: known.weeks + 1 };
    else if (words !== undefined) spans.push({ first: cell.weekStartOnDay, weeks: 1, words });
    last = words;
  }
  return spans;
}

function cellWords(cell: WeekCell): string | undefined {
  const state = cellState(cell);
  if (state === 'can-make') return undefined;
  if (state === 'in-use') return 'in use all week for the plan';
  return `${state === 'at-risk' ? 'at risk' : 'cannot be made'}: ${verdictReasons(cell)}`;
}
