import type { ConeHeldBy } from '@/lib/cone/angle-error';
import { inToMm } from '@/lib/units/inch-mm';

/** What is asked of a cone in the address: how far out the blade's angle is, and the nose; all three may be left out. */
export interface ConeQuestion {
  readonly angleErrorDeg: number;
  readonly noseErrorMm: number;
  readonly heldBy: ConeHeldBy;
}

type Asked = Readonly<Record<string, string | string[] | undefined>>;

/** Reads the question; figures that cannot be read count as no error. */
export function coneQuestion(asked: Asked, unit: 'in' | 'mm'): ConeQuestion {
  const nose = figure(asked.nose);
  return {
    angleErrorDeg: figure(asked.angle),
    noseErrorMm: unit === 'in' ? inToMm(nose) : nose,
    heldBy: asked.held === 'length' ? 'length' : 'nose',
  };
}

function figure(value: string | string[] | undefined): number {
  const text = typeof value === 'string' ? value.trim().replace('−', '-') : '';
  const read = Number(text);
  return text !== '' && Number.isFinite(read) ? read : 0;
}
