import { dayText, floorEnds, whole } from '@/app/_shared/format';
import { Panel } from '@/app/_shared/ui';
import { MARK_SHAPE } from '@/app/_shared/ui/mark-shapes';
import { SizeWords } from '@/app/plan/_parts/size-drawing';
import type { WeekCell, WeekRow } from '@/lib/capability/week-grid';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import { type CellState, cellState } from './shop-weeks';
import styles from './weeks.module.css';

const WORD: Record<CellState, string> = {
  'can-make': 'can',
  'at-risk': 'at risk',
  'cannot-make-now': 'cannot',
  'in-use': 'in use',
};

/** The heat of sizes by week: a real table, each cell with its word, its shape and the ends that are likely left. */
export function WeekTable({ rows, facts }: { readonly rows: readonly WeekRow[]; readonly facts: ShopFacts }) {
  const weeks = rows[0]?.cells ?? [];
  return (
    <Panel title="Sizes by week">
      <div className="stack">
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable by keyboard (WCAG 2.1.1) */}
        <section className={styles.scroll} aria-label="Table of sizes by week" tabIndex={0}>
          <table className={styles.table}>
            <caption className="vh">
              Whether one more end can be made, by size and week, with the ends likely left
            </caption>
            <thead>
              <tr>
                <th scope="col">Size</th>
                {weeks.map(({ weekStartOnDay }) => (
                  <th key={weekStartOnDay} scope="col">
                    <span className="vh">week of </span>
                    {dayText(weekStartOnDay, weekStartOnDay).slice(4)}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {rows.map(({ connectionId, cells }) => (
                <tr key={connectionId}>
                  <th scope="row">
                    <SizeWords
                      connection={facts.connections.find(({ id }) => id === connectionId)}
                      connectionId={connectionId}
                    />
                  </th>
                  {cells.map((cell) => (
                    <Cell key={cell.weekStartOnDay} cell={cell} />
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </section>
        <Legend />
      </div>
    </Panel>
  );
}

function Cell({ cell }: { readonly cell: WeekCell }) {
  const state = cellState(cell);
  const ends = cell.likelyEnds === null ? null : floorEnds(cell.likelyEnds);
  return (
    <td className={styles.cell} data-state={state}>
      <Shape state={state} />
      <span className={styles.word}>{WORD[state]}</span>
      <span className={styles.ends}>
        {ends === null || state === 'cannot-make-now' ? '\u00a0' : whole(ends)}
        {ends === null || state === 'cannot-make-now' ? null : <span className="vh"> ends likely left</span>}
      </span>
      {cell.lineIds.length > 0 ? (
        <span className={styles.planned}>
          <span className="vh">, work planned</span>
        </span>
      ) : null}
    </td>
  );
}

function Shape({ state }: { readonly state: CellState }) {
  return (
    <svg viewBox="0 0 20 20" width="16" height="16" aria-hidden="true" focusable="false">
      {MARK_SHAPE[state === 'in-use' ? 'issued' : state]}
    </svg>
  );
}

const MEANING: Record<CellState, string> = {
  'can-make': 'can: the set is there and the edges are likely to last',
  'in-use': 'in use: the set is out with planned work all week',
  'at-risk': 'at risk: the edges may not last',
  'cannot-make-now': 'cannot: something is missing or out of date',
};

function Legend() {
  return (
    <ul className={styles.legend}>
      {(['can-make', 'in-use', 'at-risk', 'cannot-make-now'] as const).map((state) => (
        <li key={state} className={styles.key} data-state={state}>
          <Shape state={state} /> {MEANING[state]}
        </li>
      ))}
      <li>
        <span className={styles.planned} /> a bar under a week: work of that size is planned in it
      </li>
      <li>The figure: ends likely left in the edges that week, the plan’s own taken off.</li>
    </ul>
  );
}
