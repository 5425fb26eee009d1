import type { Connection } from '../shop/noun';
import type { Part } from '../shop/part';
import { HAND_LABEL } from '../shop/vocabulary';
import { threadDesignation } from '../thread/designation';
import { rational } from '../units/rational';

/** What an order line says of a part: its designation and its hand in words, so that nobody can take one for another. */
export interface SpelledPart {
  /** e.g. "9/16-18 UNF-LH die, adjustable split". */
  readonly designation: string;
  /** "left hand", "right hand"; null where the part has none. */
  readonly handWords: string | null;
  /** Both, as one line of an order. */
  readonly text: string;
  readonly warnings: readonly string[];
}

/** The part spelled out for an order, with what it is easily taken for. Designations with true fractions are for screens. */
export function spellOut(part: Part, connections: readonly Connection[]): SpelledPart {
  const designation = part.designation === '' ? part.name : part.designation;
  const handWords = part.hand === null ? null : HAND_LABEL[part.hand];
  return {
    designation,
    handWords,
    text: handWords === null ? designation : `${designation} — ${handWords}`,
    warnings: part.hand === null ? [] : lookAlikes(part, connections),
  };
}

/**
 * What a threaded part is easily taken for: the other hand of the same thread; the same tube size at the other pitch that
 * is common for it (1-12 for 1-14); and a designation that says neither pitch nor hand.
 */
export function lookAlikes(part: Part, connections: readonly Connection[]): string[] {
  const [fit] = connections.filter(({ id }) => part.fitsConnectionIds.includes(id));
  if (fit === undefined || part.hand === null) return [];
  const sizeIn = rational(fit.odNum, fit.odDen);
  const own = threadDesignation({ sizeIn, tpi: fit.tpi, hand: part.hand });
  const warnings: string[] = [];
  if (part.hand === 'LH')
    warnings.push(`Not right hand: ${own.text.replace(/-LH$/, '')} looks the same in the box.`);
  for (const tpi of OTHER_PITCHES[`${sizeIn.num}/${sizeIn.den}`] ?? []) {
    if (tpi === fit.tpi) continue;
    const other = threadDesignation({ sizeIn, tpi, hand: part.hand });
    warnings.push(`${own.text} is not ${other.text}.`);
  }
  if (!saysPitch(part.designation, fit.tpi))
    warnings.push(`The designation does not say the pitch: it should read ${own.text}.`);
  if (part.hand === 'LH' && !/\bLH\b|left/i.test(part.designation))
    warnings.push(
      'The designation does not say left hand: a supplier sends right hand where nothing is said.',
    );
  return warnings;
}

/** Whether a designation holds the pitch as a figure of its own: the 16 of "9/16" is not one. */
function saysPitch(designation: string, tpi: number): boolean {
  return designation.split(/[^\d./⁄]+/).includes(String(tpi));
}

/** Pitches sold for the same nominal size, threads per inch: unified fine, coarse and special. Source: ASME B1.1 series. */
const OTHER_PITCHES: Readonly<Record<string, readonly number[]>> = {
  '1/4': [28, 20],
  '3/8': [24, 16],
  '9/16': [18, 12],
  '3/4': [16, 10],
  '1/1': [14, 12, 8],
};
