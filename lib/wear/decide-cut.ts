import { invariant } from '../invariant';
import type { ToolRecord } from '../ledger/tool-record';
import { ok, type Refusal, type Result, refuse } from '../result';
import type { LogCut } from '../shop/command-input';
import { connectionText } from '../shop/connection-text';
import { type Cut, CutSchema } from '../shop/cut';
import type { Connection, Material } from '../shop/noun';
import type { Part } from '../shop/part';
import { readLength } from '../units/doubt-length';
import { looksLikeUnitSlip } from '../units/unit-slip';
import { rowExposureMicro } from './connection-exposure';

/** What a row of the cut log is decided from: what was typed, and the records that it names. */
export interface CutFacts {
  readonly input: Omit<LogCut, 'entryId' | 'deviceAtMs' | 'reason'>;
  readonly cutAtMs: number;
  readonly tool: ToolRecord | undefined;
  readonly part: Part | undefined;
  readonly connection: Connection | undefined;
  readonly material: Material | undefined;
  /** The bottle that the row names, if it names one and it is in the record. */
  readonly fluid?: Pick<ToolRecord, 'id' | 'role'> | undefined;
  /** The entry that this one replaces. */
  readonly correctsId?: string;
}

/**
 * Decides one row of the cut log: which operation it is (a blade cones, a die threads), that the tool serves the
 * connection and matches its hand, that the length has a unit and is believable, and what the row costs the edge.
 */
export function decideCut(facts: CutFacts): Result<Cut, Refusal> {
  const { input, cutAtMs, tool, part, connection, material } = facts;
  if (tool === undefined)
    return refuse('unknown-tool', `No tool ${input.toolId} is in the record.`, 'toolId');
  invariant(part !== undefined, 'a tool in the record has its part in the record');
  if (connection === undefined)
    return refuse(
      'unknown-connection',
      'The shop has no table row for this size and service. Add it from the fitting maker’s manual first.',
      'connectionId',
    );
  if (material === undefined)
    return refuse('unknown-material', 'The shop does not know this material. Add it first.', 'materialId');
  const suited = checkSuited(tool, part, connection);
  if (!suited.ok) return suited;
  const bottle = checkFluid(facts);
  if (!bottle.ok) return bottle;
  const operation = tool.role === 'blade' ? 'cone' : 'thread';
  const length = threadLengthMm(input.threadLength, connection, operation);
  if (!length.ok) return length;
  const { connectionId, materialId, heat, ends, goodEnds, dry, rework, rejects, jobLineId } = input;
  const exposure = rowExposureMicro({ operation, connection, lengthMm: length.value, ends });
  if (!exposure.ok) return exposure;
  const parsed = CutSchema.safeParse({
    ...{
      operation,
      connectionId,
      materialId,
      heat,
      ends,
      goodEnds,
      dry,
      rework,
      rejects,
      jobLineId,
      cutAtMs,
    },
    threadLengthMm: length.value,
    threadLengthTyped: length.value === null ? '' : typedLength(input.threadLength),
    exposureMicro: exposure.value,
    ...(bottle.value === null ? {} : { fluidId: bottle.value }),
    correctsId: facts.correctsId ?? null,
  });
  if (parsed.success) return ok(parsed.data);
  const issue = parsed.error.issues[0];
  return refuse('cut', issue?.message ?? 'This row cannot be logged.', String(issue?.path[0] ?? ''));
}

/** The bottle that a row was cut with: a fluid of the shop, and none where it was cut dry. */
function checkFluid({ input, fluid }: CutFacts): Result<string | null, Refusal> {
  const named = input.fluidId ?? '';
  if (named === '') return ok(null);
  if (input.dry)
    return refuse(
      'dry',
      'Cut dry means without fluid: name no bottle, or say that it was not dry.',
      'fluidId',
    );
  if (fluid === undefined)
    return refuse('unknown-fluid', `No bottle ${named} is in the record. Receive it first.`, 'fluidId');
  return fluid.role === 'fluid'
    ? ok(fluid.id)
    : refuse('fluid', `${fluid.id} is not a fluid: choose the bottle it was cut with.`, 'fluidId');
}

/** A thread length as it was typed, with the unit of its field unless it was typed with one: "11.1 mm". */
export function typedLength(length: LogCut['threadLength']): string {
  if (length === null || length.typed === '') return '';
  return /[\p{L}"″”']$/u.test(length.typed) ? length.typed : `${length.typed} ${length.unit}`;
}

function checkSuited(tool: ToolRecord, part: Part, connection: Connection): Result<null, Refusal> {
  if (tool.role !== 'blade' && tool.role !== 'die') {
    return refuse(
      'role',
      `${tool.id} is not a blade or a die; cones and threads are logged on those.`,
      'toolId',
    );
  }
  if (!part.fitsConnectionIds.includes(connection.id)) {
    return refuse('fit', `${tool.id} does not serve ${connectionText(connection)}.`, 'connectionId');
  }
  if (tool.role === 'die' && tool.hand !== connection.hand) {
    return refuse(
      'hand',
      `${tool.id} is ${tool.hand ?? 'of no marked hand'}; ${connectionText(connection)} needs ${connection.hand}.`,
      'toolId',
    );
  }
  return ok(null);
}

function threadLengthMm(
  typed: LogCut['threadLength'],
  connection: Connection,
  operation: 'cone' | 'thread',
): Result<number | null, Refusal> {
  if (typed === null || typed.typed === '' || operation === 'cone') return ok(null);
  const expectedLengthMm = connection.threadLengthMm;
  const window = { leastMm: expectedLengthMm / 2, mostMm: expectedLengthMm * 2 };
  const length = readLength({ text: typed.typed, unit: typed.unit, field: 'threadLength' }, window);
  if (!length.ok) return length;
  if (looksLikeUnitSlip({ typedLengthMm: length.value.lengthMm, expectedLengthMm }) !== undefined) {
    return refuse(
      'unit-slip',
      `A thread of ${typed.typed} ${typed.unit} is far from the ${expectedLengthMm.toFixed(1)} mm of this connection.`,
      'threadLength',
    );
  }
  return ok(length.value.lengthMm);
}
