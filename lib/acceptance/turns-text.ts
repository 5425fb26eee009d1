const FRACTION: Readonly<Record<number, string>> = { 0: '', 0.25: '¼', 0.5: '½', 0.75: '¾' };

/**
 * Turns of a ring in words: quarters as true fractions, anything else as it was typed. For sentences at the vise.
 * Domain: turns >= 0.
 * @example turnsText(2.5) // => "2½ turns"
 * @example turnsText(1) // => "1 turn"
 * @example turnsText(0) // => "no turns"
 */
export function turnsText(turns: number): string {
  if (turns === 0) return 'no turns';
  const whole = Math.floor(turns);
  const part = FRACTION[turns - whole];
  const text = part === undefined ? String(turns) : `${whole === 0 ? '' : whole}${part}`;
  return `${text} ${turns <= 1 ? 'turn' : 'turns'}`;
}
