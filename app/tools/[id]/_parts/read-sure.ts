/** How sure safe ends may be asked to be, in per cent. */
export const SURE_PERCENTS = [80, 90, 95] as const;

/** The confidence that the address asks for; undefined where it asks for none of those offered. */
export function readSure(asked: string | string[] | undefined): number | undefined {
  const percent = SURE_PERCENTS.find((known) => String(known) === asked);
  return percent === undefined ? undefined : percent / 100;
}
