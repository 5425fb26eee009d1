import { nowMs, timeZone } from '@/app/_server/clock';
import { momentText } from '@/app/_shared/format';
import styles from './paper.module.css';

/** On paper only: as of when the record said this. */
export function AsItStood() {
  return <p className={styles.printed}>From the record as it stood on {momentText(nowMs(), timeZone())}.</p>;
}
