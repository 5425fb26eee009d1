import { ok, type Result, refuse } from '@/lib/result';
import { HANDS, type Hand } from '@/lib/shop/vocabulary';
import { checkThread } from '@/lib/thread/check-thread';
import { EXTERNAL_CLASSES, type ExternalClass } from '@/lib/thread/limits';
import { isUsableWire, wireRangeMm } from '@/lib/thread/three-wire';
import { readLength } from '@/lib/units/doubt-length';
import { parseInches } from '@/lib/units/parse-inches';
import type { LengthUnit } from '@/lib/units/parse-length';
import type { Rational } from '@/lib/units/rational';

/** A thread to work out, as the address asks for it. */
export interface ThreadQuestion {
  readonly sizeIn: Rational;
  readonly tpi: number;
  readonly threadClass: ExternalClass;
  readonly hand: Hand;
}

type Asked = Readonly<Record<string, string | string[] | undefined>>;

const first = (asked: Asked, name: string): string => {
  const value = asked[name];
  return typeof value === 'string' ? value.trim() : '';
};

/** The fields as they stand in the address, for the form to show again. */
export function askedFields(asked: Asked): Record<'size' | 'tpi' | 'class' | 'hand', string> {
  return {
    size: first(asked, 'size'),
    tpi: first(asked, 'tpi'),
    class: first(asked, 'class') || '2A',
    hand: first(asked, 'hand') || 'LH',
  };
}

/** The thread that is asked for; undefined where nothing is, a refusal where it is no thread that the tables are made for. */
export function threadQuestion(asked: Asked): Result<ThreadQuestion> | undefined {
  const fields = askedFields(asked);
  if (fields.size === '' && fields.tpi === '') return undefined;
  const size = parseInches(fields.size);
  if (!size.ok) return refuse(size.refusal.code, size.refusal.sentence, 'size');
  const thread = checkThread({ sizeIn: size.value, tpi: Number(fields.tpi) });
  if (!thread.ok) return thread;
  const threadClass = EXTERNAL_CLASSES.find((known) => known === fields.class) ?? '2A';
  const hand = HANDS.find((known) => known === fields.hand) ?? 'LH';
  return ok({ ...thread.value, threadClass, hand });
}

/** What is asked of the wires: their diameter, and a measurement over them where one was read. */
export interface WireQuestion {
  readonly wireMm: number;
  readonly overWiresMm: number | undefined;
}

/**
 * The wires that the address names, or the best ones; a measurement whose unit has slipped, or wires that do not seat, are refused.
 * `expectedOverMm`: what the thread would measure over its best wires.
 */
export function wireQuestion(
  asked: Asked,
  { tpi, bestMm, expectedMm }: { readonly tpi: number; readonly bestMm: number; readonly expectedMm: number },
): Result<WireQuestion> {
  const wire = lengthOf(asked, 'wire', {
    leastMm: wireRangeMm(tpi).leastMm,
    mostMm: wireRangeMm(tpi).mostMm,
  });
  if (wire !== undefined && !wire.ok) return wire;
  const wireMm = wire?.value ?? bestMm;
  if (!isUsableWire({ tpi, wireMm }))
    return refuse(
      'wires',
      'Wires of this size do not seat in this thread. Take one from the range below.',
      'wire',
    );
  const about = expectedMm + 3 * (wireMm - bestMm);
  const over = lengthOf(asked, 'over', { leastMm: about * 0.9, mostMm: about * 1.1 });
  if (over !== undefined && !over.ok) return over;
  if (over !== undefined && Math.abs(over.value - about) > about * 0.1)
    return refuse(
      'far',
      'That measurement belongs to no thread of this size and pitch. Check the figure.',
      'over',
    );
  return ok({ wireMm, overWiresMm: over?.value });
}

function lengthOf(
  asked: Asked,
  name: string,
  window: { leastMm: number; mostMm: number },
): Result<number> | undefined {
  const text = first(asked, name);
  if (text === '') return undefined;
  const unit: LengthUnit = first(asked, `${name}Unit`) === 'mm' ? 'mm' : 'in';
  const length = readLength({ text, unit, field: name }, window);
  return length.ok ? ok(length.value.lengthMm) : length;
}
