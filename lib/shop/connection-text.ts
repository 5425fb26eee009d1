import { sizeLabel } from './size';
import { SERVICE_LABEL, type Service } from './vocabulary';

/** A connection in shop words: "9⁄16 high pressure". */
export function connectionText(connection: { odNum: number; odDen: number; service: Service }): string {
  return `${sizeLabel({ num: connection.odNum, den: connection.odDen })} ${SERVICE_LABEL[connection.service]}`;
}

/** The key of a connection: size and service, fit for an address: "9-16-high", "1-medium". */
export function connectionKey(size: { num: number; den: number }, service: Service): string {
  return size.den === 1 ? `${size.num}-${service}` : `${size.num}-${size.den}-${service}`;
}

/** Reads a connection's key back, for a size that the shop may have no table row for; undefined if it is no such key. */
export function readConnectionKey(
  key: string,
): { odNum: number; odDen: number; service: Service } | undefined {
  const match = /^([1-9]\d{0,2})(?:-([1-9]\d?))?-(medium|high)$/.exec(key);
  if (match === null) return undefined;
  const odDen = match[2] === undefined ? 1 : Number(match[2]);
  return { odNum: Number(match[1]), odDen, service: match[3] as Service };
}
