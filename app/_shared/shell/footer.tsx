/** The standing cautions (wording after TRADE §5) and the choice of paper. */
import styles from './shell.module.css';
import type { Theme } from './theme';
import { ThemeChoice } from './theme-choice';

export function Footer({ theme }: { readonly theme: Theme }) {
  return (
    <footer className={styles.footer}>
      <div className={styles.cautions}>
        <p>
          <strong>Edgekeep never says a joint is safe to pressurise.</strong> Only competent persons test, by
          a written safe system, with people kept clear.
        </p>
        <p>
          What an edge has left is an estimate from counts. It does not replace looking at the edge, the gauge
          or the drawing. Dimensions shipped here are examples: the fitting maker’s manual and the drawing
          rule.
        </p>
        <p>
          Design, acceptance and testing follow the code that applies to the owner’s system and local rules.
          This is a tooling record, not a code document.
        </p>
      </div>
      <ThemeChoice theme={theme} />
    </footer>
  );
}
