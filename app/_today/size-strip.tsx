import type { Route } from 'next';
import Link from 'next/link';
import { ConnectionEnd } from '@/app/_shared/drawing/connection-end';
import { count } from '@/app/_shared/format';
import { Panel, SizeText, StateMark, VerdictMark } from '@/app/_shared/ui';
import { endsSentence } from '@/app/plan/_parts/life-words';
import { dayLabel } from '@/lib/calendar';
import type { SizeStatus } from '@/lib/capability/size-status';
import type { Outlook } from '@/lib/outlook/outlook';
import type { Connection } from '@/lib/shop/noun';
import { isOutOnWork, shortReasons } from './size-words';
import styles from './today.module.css';

/** One scale for the whole strip, so that a 3⁄8 is recognised before it is read. */
const PX_PER_IN = 44;

/** Every size in use as its own tube end: can one be made and accepted today, and how many more are in the edges. */
export function SizeStrip({ outlook }: { readonly outlook: Outlook }) {
  const { connections, materials } = outlook.facts;
  const reference = materials.find(({ isReference }) => isReference);
  const tiles = outlook.sizes.flatMap((status) => {
    const connection = connections.find(({ id }) => id === status.connectionId);
    return connection === undefined ? [] : [{ connection, status }];
  });
  if (tiles.length === 0) return null;
  const makeable = tiles.filter(({ status }) => status.verdict === 'can-make').length;
  return (
    <Panel title="Sizes in use" aside={`${makeable} of ${count(tiles.length, 'size')} makeable today`}>
      <ul className={styles.sizes}>
        {tiles.map(({ connection, status }) => (
          <SizeTile key={connection.id} connection={connection} status={status} />
        ))}
      </ul>
      <p className="fine">
        Each size asked on its own, as if nothing else were planned
        {reference
          ? `, in ${reference.name}${reference.condition === '' ? '' : ` ${reference.condition}`}`
          : ''}
        . Drawn to one scale from the size table; confirm in the fitting maker’s manual.
      </p>
    </Panel>
  );
}

function SizeTile({ connection, status }: { readonly connection: Connection; readonly status: SizeStatus }) {
  return (
    <li>
      <Link href={`/tools?size=${encodeURIComponent(connection.id)}` as Route} prefetch={false}>
        <ConnectionEnd connection={connection} pxPerIn={PX_PER_IN} framed decorative />
        <span className={styles.sizeName}>
          <SizeText odIn={connection.odNum / connection.odDen} service={connection.service} unit />
        </span>
        <SizeAnswer status={status} />
      </Link>
    </li>
  );
}

function SizeAnswer({ status }: { readonly status: SizeStatus }) {
  if (status.verdict === 'can-make')
    return (
      <>
        <VerdictMark verdict="can-make">makeable</VerdictMark>
        <span className={styles.sizeNote}>{endsSentence(status)}</span>
      </>
    );
  if (isOutOnWork(status.blockers))
    return (
      <>
        <StateMark state="issued">out on a job</StateMark>
        <span className={styles.sizeNote}>
          {status.clearsOnDay === null ? 'no known date' : `free ${dayLabel(status.clearsOnDay)}`}
        </span>
      </>
    );
  return (
    <>
      <VerdictMark verdict={status.verdict}>not now</VerdictMark>
      <span className={styles.sizeNote}>{shortReasons(status)}</span>
    </>
  );
}
