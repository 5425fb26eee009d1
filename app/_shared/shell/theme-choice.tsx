/** Paper: as the device, light, dark. Three plain buttons that post to a server action. */

import styles from './footer.module.css';
import { setTheme } from './set-theme';
import { THEME_LABEL, THEMES, type Theme } from './theme';

export function ThemeChoice({ theme }: { readonly theme: Theme }) {
  return (
    <form action={setTheme} className={`${styles.theme} no-print`}>
      <fieldset>
        <legend>Paper</legend>
        {THEMES.map((choice) => (
          <button key={choice} type="submit" name="theme" value={choice} aria-pressed={choice === theme}>
            {THEME_LABEL[choice]}
          </button>
        ))}
      </fieldset>
    </form>
  );
}
