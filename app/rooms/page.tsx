import type { Metadata, Route } from 'next';
import Link from 'next/link';
import { Panel, TitleBlock } from '@/app/_shared/ui';
import { ROOMS } from './_parts/rooms';
import styles from './_parts/rooms.module.css';

export const metadata: Metadata = { title: 'All pages' };

/** Every page that can be gone to, by what one wants to do there. */
export default function RoomsPage() {
  return (
    <div className="page">
      <TitleBlock title="All pages" lead="By what you want to do." />
      <div className="columns">
        {ROOMS.map(({ title, pages }) => (
          <Panel key={title} title={title}>
            <ul className={styles.pages}>
              {pages.map(({ href, name, what }) => (
                <li key={href}>
                  <Link href={href as Route} prefetch={false}>
                    <b>{name}</b>
                    <span>{what}</span>
                  </Link>
                </li>
              ))}
            </ul>
          </Panel>
        ))}
      </div>
    </div>
  );
}
