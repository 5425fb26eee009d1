/**
 * <TitleBlock title="Plan" lead="…" cells={[{ label: 'Sheet', value: '1 of 3' }]} drawing={…} actions={…} />
 * The head of every page, drawn as the title block of a sheet: the page's only <h1>, one sentence, small labelled cells
 * (at most five), an optional drawing (the size's tube end) and the page's main actions. It is what prints on top.
 */
import type { ReactNode } from 'react';
import styles from './title-block.module.css';

export interface TitleCell {
  readonly label: string;
  readonly value: ReactNode;
}

interface TitleBlockProps {
  readonly title: ReactNode;
  readonly lead?: ReactNode;
  readonly cells?: readonly TitleCell[];
  readonly drawing?: ReactNode;
  readonly actions?: ReactNode;
}

export function TitleBlock({ title, lead, cells = [], drawing, actions }: TitleBlockProps) {
  return (
    <header className={styles.block}>
      <div className={styles.main}>
        <div className={styles.words}>
          <h1>{title}</h1>
          {lead ? <p className={styles.lead}>{lead}</p> : null}
          {actions ? <div className={`${styles.actions} cluster no-print`}>{actions}</div> : null}
        </div>
        {drawing ? <div className={styles.drawing}>{drawing}</div> : null}
      </div>

      {cells.length > 0 ? (
        <dl className={styles.cells}>
          {cells.map((cell) => (
            <div key={cell.label}>
              <dt>{cell.label}</dt>
              <dd>{cell.value}</dd>
            </div>
          ))}
        </dl>
      ) : null}
    </header>
  );
}
