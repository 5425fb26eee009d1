import { z } from 'zod';
import { ok, type Result, refuse } from '../result';
import { parseInches } from '../units/parse-inches';
import { parseLength } from '../units/parse-length';
import { connectionKey } from './connection-text';
import { entryIdField, momentField, textField } from './field';
import { type Connection, ConnectionSchema } from './noun';
import { HANDS, SERVICES } from './vocabulary';

/** A row of the size table as it is typed: lengths with the unit chosen beside them. */
export const ConnectionInput = z.object({
  entryId: entryIdField,
  deviceAtMs: momentField('The device’s clock'),
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

/** The row that was typed, lengths in mm; or what is wrong with it, and in which field. */
export function connectionOfTyped(typed: ConnectionTyped): Result<Connection> {
  const size = parseInches(typed.size);
  if (!size.ok) return refuse(size.refusal.code, size.refusal.sentence, 'size');
  const threadLength = parseLength(typed.threadLength, typed.unit);
  if (!threadLength.ok)
    return refuse(threadLength.refusal.code, threadLength.refusal.sentence, 'threadLength');
  const nose = parseLength(typed.nose, typed.unit);
  if (!nose.ok) return refuse(nose.refusal.code, nose.refusal.sentence, 'nose');
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

/** The field in which a stored figure was typed. */
const FIELD: Readonly<Record<string, string>> = {
  odNum: 'size',
  odDen: 'size',
  threadLengthMm: 'threadLength',
  noseMm: 'nose',
};
