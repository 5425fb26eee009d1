import type { ToolRow } from '@/db/queries/tools';
import { TOOL_STATE_LABEL } from '@/lib/shop/vocabulary';

/**
 * Why a tool may not be put to work as it stands, whatever its counts say: its pieces are missing, it is set aside or away,
 * or its first end has not been gauged. Undefined where nothing but its life decides.
 */
export function notNow({
  state,
  pieces,
  firstOffOwed,
}: Pick<ToolRow, 'state' | 'pieces' | 'firstOffOwed'>): string | undefined {
  if (pieces === 'owed') return 'something broke off it, and the pieces are to be found first';
  if (state !== 'in-crib' && state !== 'issued') return `it is ${TOOL_STATE_LABEL[state]}`;
  return firstOffOwed ? 'its first end has not passed the gauges yet' : undefined;
}
