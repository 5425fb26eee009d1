/**
 * <Notice level="caution" sign="eye-protection" title="Eyes on.">Safety glasses with side shields …</Notice>
 * A caution where the hand is about to do the thing, as a signal panel after ISO 3864-2 (signal word on its colour,
 * from memory): DANGER will kill or maim, WARNING could, CAUTION could injure moderately, NOTICE damage to things.
 * The caller gives the wording (TRADE §5). DANGER is red: use it sparingly, it counts as the screen's one red.
 * Signs are our own drawings from ISO 7010's general descriptions; see safety-sign.tsx.
 */
import type { ReactNode } from 'react';
import styles from './notice.module.css';
import { SafetySign, type SignName } from './safety-sign';

export type NoticeLevel = 'danger' | 'warning' | 'caution' | 'notice';

interface NoticeProps {
  readonly level: NoticeLevel;
  readonly title: ReactNode;
  readonly sign?: SignName;
  readonly children?: ReactNode;
}

export function Notice({ level, title, sign, children }: NoticeProps) {
  return (
    <div className={styles.frame} data-level={level} role="note">
      {' '}
      <div className={styles.notice}>
        <p className={styles.signal}>
          {level === 'notice' ? null : (
            <svg viewBox="0 0 24 22" width="22" height="20" aria-hidden="true" focusable="false">
              <path className={styles.alertField} d="M12 1.5L23 20.5H1Z" />
              <path className={styles.alertStroke} d="M10.9 8h2.2l-.4 6.2h-1.4Zm.1 7.4h2v2h-2Z" />
            </svg>
          )}
          {level.toUpperCase()}
        </p>
        <div className={styles.body}>
          {sign ? <SafetySign name={sign} /> : null}
          <p>
            <strong>{title}</strong> {children}
          </p>{' '}
        </div>{' '}
      </div>{' '}
    </div>
  );
}
