import Link from 'next/link';
import { Panel } from '@/app/_shared/ui';
import { changeHref, changeWords } from '@/app/_shared/words/change-words';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import type { Change } from '@/lib/what-if/change';
import { whatIfHref } from './asked-changes';
import styles from './what-if.module.css';

/** What is being tried, each with the way to leave it out and the page where it would really be entered. */
export function ChangeList({
  changes,
  facts,
}: {
  readonly changes: readonly Change[];
  readonly facts: ShopFacts;
}) {
  if (changes.length === 0) return null;
  return (
    <Panel title="If this were so">
      <ol className={styles.changes}>
        {changes.map((change, at) => {
          const real = changeHref(change, facts);
          const words = changeWords(change, facts);
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: the same change may be tried twice
            <li key={`${at} ${words}`}>
              <span>{words}</span>
              <span className="cluster no-print">
                <Link href={whatIfHref(changes.filter((_, other) => other !== at))} prefetch={false}>
                  Leave out<span className="vh">: {words}</span>
                </Link>
                <Link href={real.href} prefetch={false}>
                  {real.label}
                </Link>
              </span>
            </li>
          );
        })}
      </ol>
    </Panel>
  );
}
