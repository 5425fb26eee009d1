/**
 * A sentence begun: the words with their first letter large, the rest as it is.
 *
 * A first character that has no capital (a digit, a fraction sign, a bracket) is left alone, so "9⁄16 die" stays so.
 *
 * @example capital('coning gauge') // => 'Coning gauge'
 * @example capital('NOT GO ring') // => 'NOT GO ring'
 */
export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
