import type { PriceBreak } from '@/lib/shop/offer';

/** Further suppliers that can be entered beside the first. */
export const OTHER_SUPPLIERS = 2;

/** Price breaks as they are typed: "5: 95, 10: 88.5". */
export function breaksText(breaks: readonly PriceBreak[]): string {
  return breaks.map(({ fromQuantity, priceMinor }) => `${fromQuantity}: ${priceMinor / 100}`).join(', ');
}

/** Price breaks as typed; what cannot be read becomes no number, which zod refuses. */
export function readBreaks(typed: string): { fromQuantity: number; priceMinor: number }[] {
  return typed
    .split(/[,;](?=\s*\d+\s*[:=])/)
    .map((piece) => piece.trim())
    .filter((piece) => piece !== '')
    .map((piece) => {
      const [quantity, price] = piece.split(/[:=]/);
      return { fromQuantity: Number(quantity?.trim()), priceMinor: Math.round(Number(price?.trim()) * 100) };
    });
}
