import { ok, type Refusal, type Result, refuse } from '../result';
import { parseInches } from '../units/parse-inches';
import { connectionKey } from './connection-text';
import type { Service } from './vocabulary';

/** Tube sizes are named in inch fractions down to this. Common practice, no source. */
const FINEST_DEN = 64;
const LARGEST_IN = 6;

/**
 * The key of a size that is typed because the shop's table has no row for it: "1" with high pressure gives "1-high".
 * Only names the size; nothing about its thread or cone is assumed. Refused: what is no figure, what is no fraction of
 * an inch in halves to 64ths, more than 6 in.
 */
export function typedConnectionKey(sizeText: string, service: Service): Result<string, Refusal> {
  const size = parseInches(sizeText);
  if (!size.ok) return size;
  const { num, den } = size.value;
  if (FINEST_DEN % den !== 0)
    return refuse('size-fraction', 'Write the tube size as an inch fraction, such as 9/16 or 1 1/2.');
  if (num > LARGEST_IN * den)
    return refuse('size-large', `A tube size above ${LARGEST_IN} in is outside what this is for. Check it.`);
  return ok(connectionKey(size.value, service));
}
