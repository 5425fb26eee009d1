import type { Connection } from './noun';
import { sizeCode } from './size';

/**
 * The size in a tool's short ID: "38", with H where it serves high pressure only ("56H"). Undefined where it serves
 * several tube sizes or none in particular.
 */
export function idSizeText(
  fits: readonly Pick<Connection, 'odNum' | 'odDen' | 'service'>[],
): string | undefined {
  const codes = new Set(fits.map(({ odNum, odDen }) => sizeCode({ num: odNum, den: odDen })));
  const [code] = codes;
  if (codes.size !== 1 || code === undefined) return undefined;
  return fits.every(({ service }) => service === 'high') ? `${code}H` : code;
}
