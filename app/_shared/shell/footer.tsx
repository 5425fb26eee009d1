/** The standing cautions (lib/cautions, at the footer) and the choice of paper. */
import { cautionsAt } from '@/lib/cautions';
import styles from './footer.module.css';
import type { Theme } from './theme';
import { ThemeChoice } from './theme-choice';

export function Footer({ theme }: { readonly theme: Theme }) {
  return (
    <footer className={styles.footer}>
      <div className={styles.cautions}>
        {cautionsAt('footer').map(({ id, lead, text }) => (
          <p key={id}>
            <strong>{lead}</strong> {text}
          </p>
        ))}
      </div>
      <ThemeChoice theme={theme} />
    </footer>
  );
}
