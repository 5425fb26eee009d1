import { CodeMark } from '@/app/_shared/codes/code-mark';
import { count, dayText, momentText } from '@/app/_shared/format';
import { ToolId } from '@/app/_shared/ui';
import type { Names } from '@/app/_shared/words/entry-words';
import styles from '@/app/crib/_parts/crib.module.css';
import type { LineRow } from '@/db/queries/jobs';
import type { KitItemRow, KitRow } from '@/db/queries/kits';
import { HAND_LABEL, ROLE_LABEL } from '@/lib/shop/vocabulary';
import slip from './slip.module.css';

interface KitSlipProps {
  readonly kit: KitRow;
  /** The line it is for; undefined where the job was planned anew without it. */
  readonly line: LineRow | undefined;
  readonly names: Names;
  readonly today: string;
  readonly timeZone: string;
}

/** One kit on paper: for whom, for what, until when; every item in large letters with a box for out and one for in. */
export function KitSlip({ kit, line, names, today, timeZone }: KitSlipProps) {
  return (
    <article className={`${styles.slip} ${slip.paper}`} aria-labelledby="slip-head">
      <header className={slip.head}>
        <div className={slip.words}>
          <h1 id="slip-head">Kit for {kit.jobLineId}</h1>
          {line === undefined ? null : (
            <p>
              {line.jobTitle === '' ? '' : `${line.jobTitle}. `}
              {count(line.ends, 'end')}, {names.connection(line.connectionId)} in{' '}
              {names.material(line.materialId)}.
            </p>
          )}
          <dl className={slip.facts}>
            <Fact label="To" value={names.person(kit.toPersonId)} />
            <Fact label="Bench" value={kit.bench === '' ? 'none' : kit.bench} />
            <Fact label="Out" value={momentText(kit.issuedAtMs, timeZone, today)} />
            <Fact label="Line due" value={line === undefined ? 'no day' : dayText(line.dueOnDay, today)} />
          </dl>
        </div>
        <figure className={slip.kitCode}>
          <CodeMark kind="qr" text={kit.id} sideMm={30} />
          <figcaption>this kit</figcaption>
        </figure>
      </header>
      <div className={slip.columnHeads} aria-hidden="true">
        <span>out</span>
        <span>in</span>
      </div>
      <ul className={styles.slipRows}>
        {kit.itemsNow.map((item) => (
          <SlipRow key={item.tool.id} item={item} />
        ))}
      </ul>
      <p className={slip.signed}>
        {count(kit.items.length, 'item')}. Counted out by <span className={slip.line} /> Counted in by{' '}
        <span className={slip.line} />
      </p>
      <p className="fine">
        Anything broken: stop, keep every piece, and say so at the counter. No blame; the pieces must be
        found.
      </p>
    </article>
  );
}

function Fact({ label, value }: { readonly label: string; readonly value: string }) {
  return (
    <div>
      <dt>{label}</dt>
      <dd>{value}</dd>
    </div>
  );
}

/** One item. The hand stands in words: a left-hand die looks like any other on paper. */
function SlipRow({ item: { tool } }: { readonly item: KitItemRow }) {
  return (
    <li>
      <span className={styles.slipBox} aria-hidden="true" />
      <span className={slip.item}>
        <span className={slip.id}>
          <ToolId id={tool.id} />
        </span>
        <span>
          {ROLE_LABEL[tool.role]}
          {tool.hand === null ? '' : `, ${HAND_LABEL[tool.hand]}`}
          {tool.dueOnDay === null ? '' : `, good to the end of ${dayText(tool.dueOnDay)}`}
        </span>
      </span>
      <span className={styles.slipBox} aria-hidden="true" />
      <CodeMark kind="data-matrix" text={tool.id} sideMm={14} />
    </li>
  );
}
