import { inches } from '@/app/_shared/format';
import type { Connection } from '@/lib/shop/noun';
import { fractionAscii } from '@/lib/units/fraction-text';
import { mmToIn } from '@/lib/units/inch-mm';
import type { ConnectionDraft } from './connection-form';

/** A row of the table as it would be typed, in the shop's unit: exact in mm, fractions where they are ones in inches. */
export function draftOf(connection: Connection, unit: 'in' | 'mm'): ConnectionDraft {
  const { odNum, odDen, service, tpi, hand, threadClass, threadLengthMm, noseMm, coneAngleDeg } = connection;
  const length = (mm: number) => (unit === 'mm' ? plain(mm) : inchText(mmToIn(mm)));
  return {
    isNew: false,
    size: fractionAscii({ num: odNum, den: odDen }),
    ...{ service, hand, threadClass, unit },
    tpi: plain(tpi),
    threadLength: length(threadLengthMm),
    nose: length(noseMm),
    coneAngleDeg: plain(coneAngleDeg),
    notGoTurnsMax: connection.notGoTurnsMax === null ? '' : plain(connection.notGoTurnsMax),
    confirmed: connection.confirmed,
    inUse: connection.inUse,
  };
}

/** An empty row: the trade's usual hand, class and angle, no dimensions. */
export function emptyDraft(unit: 'in' | 'mm', size: string, service: string): ConnectionDraft {
  return {
    isNew: true,
    ...{ size, service, unit },
    tpi: '',
    hand: 'LH',
    threadClass: '2A',
    threadLength: '',
    nose: '',
    coneAngleDeg: '59',
    notGoTurnsMax: '',
    confirmed: false,
    inUse: true,
  };
}

function inchText(value: number): string {
  const shown = inches(value);
  return shown.includes('\u2044') ? shown.replace('\u2044', '/') : plain(value);
}

/** A number without the tail that binary fractions grow: at most six decimals. */
function plain(value: number): string {
  return String(Number(value.toFixed(6)));
}
