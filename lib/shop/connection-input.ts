import { z } from 'zod';
import { ok, type Result, refuse } from '../result';
import { type LengthWindow, readLength } from '../units/doubt-length';
import { rationalInToMm } from '../units/inch-mm';
import { parseInches } from '../units/parse-inches';
import { connectionKey } from './connection-text';
import { stamped } from './entry-fields';
import { textField } from './field';
import { type Connection, ConnectionSchema } from './noun';
import { HANDS, SERVICES } from './vocabulary';

/** A row of the size table as it is typed: lengths with the unit chosen beside them. */
export const ConnectionInput = z.object({
  ...stamped,
  size: textField('The tube size', 24),
  service: z.enum(SERVICES, { error: 'The service must be medium or high.' }),
  tpi: z.number({ error: 'Threads per inch must be a number.' }),
  hand: z.enum(HANDS, { error: 'The hand must be LH or RH.' }),
  threadClass: textField('The thread class', 8),
  threadLength: textField('The thread length', 24),
  nose: textField('The nose diameter', 24),
  unit: z.enum(['in', 'mm'], { error: 'Choose in or mm.' }),
  coneAngleDeg: z.number({ error: 'The cone angle must be a number.' }),
  notGoTurnsMax: z.number({ error: 'NOT GO turns must be a number.' }).nullable(),
  confirmed: z.boolean(),
  inUse: z.boolean(),
});
export type ConnectionTyped = z.output<typeof ConnectionInput>;

/** How long a tube's thread and how wide its nose can be at all, in tube diameters. Common practice, no source. */
const THREAD_IN_DIAMETERS = [0.3, 6] as const;
const NOSE_IN_DIAMETERS = [0.1, 1] as const;

/** The row that was typed, lengths in mm; or what is wrong with it, and in which field. */
export function connectionOfTyped(typed: ConnectionTyped): Result<Connection> {
  const size = parseInches(typed.size);
  if (!size.ok) return refuse(size.refusal.code, size.refusal.sentence, 'size');
  const odMm = rationalInToMm(size.value);
  const lengths = { text: typed.threadLength, unit: typed.unit, field: 'threadLength' };
  const threadLength = readLength(lengths, windowOf(odMm, THREAD_IN_DIAMETERS));
  if (!threadLength.ok) return threadLength;
  const noses = { text: typed.nose, unit: typed.unit, field: 'nose' };
  const nose = readLength(noses, windowOf(odMm, NOSE_IN_DIAMETERS));
  if (!nose.ok) return nose;
  const { service, tpi, hand, threadClass, coneAngleDeg, notGoTurnsMax, confirmed, inUse } = typed;
  const parsed = ConnectionSchema.safeParse({
    ...{ service, tpi, hand, threadClass, coneAngleDeg, notGoTurnsMax, confirmed, inUse },
    id: connectionKey(size.value, service),
    odNum: size.value.num,
    odDen: size.value.den,
    threadLengthMm: threadLength.value.lengthMm,
    noseMm: nose.value.lengthMm,
  });
  if (parsed.success) return ok(parsed.data);
  const issue = parsed.error.issues[0];
  return refuse(
    'connection',
    issue?.message ?? 'This row cannot be kept.',
    FIELD[String(issue?.path[0])] ?? String(issue?.path[0]),
  );
}

function windowOf(odMm: number, [least, most]: readonly [number, number]): LengthWindow {
  return { leastMm: least * odMm, mostMm: most * odMm };
}

/** The field in which a stored figure was typed. */
const FIELD: Readonly<Record<string, string>> = {
  odNum: 'size',
  odDen: 'size',
  threadLengthMm: 'threadLength',
  noseMm: 'nose',
};
