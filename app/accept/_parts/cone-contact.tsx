import type { ConeContact } from '@/lib/shop/acceptance';
import styles from './accept.module.css';

/**
 * The nose of a cone seen from the side, with what the blueing shows: a thin ring near the nose is good, a broken ring or
 * blue at the large end is not. A drawing of ours; the words beside it say the same.
 */
export function ConeContactDrawing({ contact }: { readonly contact: ConeContact }) {
  return (
    <svg
      className={styles.drawing}
      viewBox="0 0 64 44"
      width="64"
      height="44"
      aria-hidden="true"
      focusable="false"
    >
      <path className={styles.cone} d="M4 4H30L56 15V29L30 40H4Z" />
      {contact === 'nose-ring' ? <path className={styles.blue} d="M49.5 12.2V31.8" /> : null}
      {contact === 'broken' ? (
        <path className={styles.blue} d="M49.5 12.2V17M49.5 22.5V26M49.5 30V31.8" />
      ) : null}
      {contact === 'large-end' ? <path className={styles.blue} d="M33 5.2V38.8" /> : null}
      {contact === 'not-checked' ? <path className={styles.dash} d="M10 22H60" /> : null}
    </svg>
  );
}
