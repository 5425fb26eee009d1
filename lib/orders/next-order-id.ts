/**
 * The next so many order numbers after those that the shop has: the last one that ends in figures, counted on, its leading
 * zeros kept. For drafts, which need a number of their own. PO-1 where there is none yet.
 */
export function nextOrderIds(existing: readonly string[], count: number): string[] {
  const taken = new Set(existing);
  const numbered = existing.flatMap((id) => {
    const match = /^(.*?)(\d{1,9})$/.exec(id);
    return match === null ? [] : [{ stem: match[1] ?? '', figures: match[2] ?? '' }];
  });
  const last = numbered.reduce<(typeof numbered)[number] | undefined>(
    (most, id) => (most === undefined || Number(id.figures) >= Number(most.figures) ? id : most),
    undefined,
  );
  const { stem, figures } = last ?? { stem: 'PO-', figures: '0' };
  const ids: string[] = [];
  for (let number = Number(figures) + 1; ids.length < count; number++) {
    const id = `${stem}${String(number).padStart(figures.length, '0')}`;
    if (!taken.has(id)) ids.push(id);
  }
  return ids;
}
