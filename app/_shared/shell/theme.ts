/** The choice of paper: a cookie that the server reads, so the first paint is already right and needs no script. */
export const THEME_COOKIE = 'edgekeep-theme';
export const THEMES = ['auto', 'light', 'dark'] as const;
export type Theme = (typeof THEMES)[number];
export const THEME_LABEL: Record<Theme, string> = { auto: 'as the device', light: 'light', dark: 'dark' };

/** The theme that a cookie or a form names; anything else follows the device. */
export function parseTheme(value: unknown): Theme {
  return THEMES.find((theme) => theme === value) ?? 'auto';
}
