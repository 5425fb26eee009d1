import { tableInches, tableMm } from '@/app/_shared/format';
import type { Outlook } from '@/lib/outlook/outlook';
import { threadOfPart } from '@/lib/shop/part-thread';
import { connectionLimits } from '@/lib/thread/connection-limits';
import { threadDesignation } from '@/lib/thread/designation';
import { bestWireMm } from '@/lib/thread/three-wire';
import { mmToIn, rationalInToMm } from '@/lib/units/inch-mm';

/** What the reading forms know of a die's thread before anything is typed. */
export interface PitchThread {
  readonly designation: string;
  readonly threadClass: string;
  readonly majorMm: number;
  readonly tpi: number;
  /** As they would be typed, in inches and in mm; empty where the row's class is none that the formulas know. */
  readonly limits: Readonly<Record<'in' | 'mm', { readonly min: string; readonly max: string }>>;
  readonly bestWire: Readonly<Record<'in' | 'mm', string>>;
}

/** The thread of a tool's part, where the size table says. */
export function pitchThread(outlook: Outlook, toolId: string): PitchThread | undefined {
  const { tools, parts, connections } = outlook.facts;
  const partId = tools.find(({ id }) => id === toolId)?.partId;
  const part = parts.find(({ id }) => id === partId);
  const row = part && threadOfPart(part, connections);
  if (row === undefined) return undefined;
  const { odNum, odDen, tpi, hand, threadClass } = row;
  const sizeIn = { num: odNum, den: odDen };
  const limits = connectionLimits(row)?.limits;
  const wireMm = bestWireMm(tpi);
  return {
    designation: threadDesignation({ sizeIn, tpi, hand }).screenText,
    threadClass,
    majorMm: rationalInToMm(sizeIn),
    tpi,
    limits: {
      in: {
        min: limits ? tableInches(limits.pitchMinIn) : '',
        max: limits ? tableInches(limits.pitchMaxIn) : '',
      },
      mm: {
        min: limits ? tableMm(limits.pitchMinIn, 'min') : '',
        max: limits ? tableMm(limits.pitchMaxIn, 'max') : '',
      },
    },
    bestWire: { in: mmToIn(wireMm).toFixed(5), mm: wireMm.toFixed(3) },
  };
}
