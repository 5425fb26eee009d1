import { Button } from '@/app/_shared/ui';
import { DUE_KIND_LABEL } from '@/app/_shared/words/due-words';
import { DUE_KINDS, type DueKind } from '@/lib/due-dates/due-date';
import styles from './calendar.module.css';
import { DueMark } from './due-mark';

interface FilterProps {
  readonly month: string;
  readonly kinds: readonly DueKind[];
}

/** Which kinds are shown; works without script. */
export function Filter({ month, kinds }: FilterProps) {
  return (
    <form action="/calendar" className={`${styles.filter} no-print`} aria-label="What is shown">
      <input type="hidden" name="month" value={month} />
      {DUE_KINDS.map((kind) => (
        <label key={kind} className="check">
          <input type="checkbox" name="kind" value={kind} defaultChecked={kinds.includes(kind)} />
          <DueMark kind={kind} />
          {DUE_KIND_LABEL[kind]}
        </label>
      ))}
      <Button type="submit">Show these</Button>
    </form>
  );
}
