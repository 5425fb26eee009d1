import type { EntryView } from '@/db/queries/entries';
import type { Finding } from '@/lib/reading/reading';
import { END_CAUSES, ROLE_LABEL, type Role, TOOL_STATE_LABEL, type ToolState } from '@/lib/shop/vocabulary';
import { count } from '../format';
import { findingWords } from './finding-words';

/** Names that an entry's words need: people, sizes and materials by key. */
export interface Names {
  readonly person: (id: string) => string;
  readonly connection: (id: string) => string;
  readonly material: (id: string) => string;
}

type Payload = EntryView['payload'];
type Words = (payload: Payload, names: Names) => string;

const RETURNED: Record<string, string> = {
  ok: 'came back in order',
  dull: 'came back dull, set aside',
  damaged: 'came back damaged, set aside',
  unsure: 'came back, nobody sure of it, set aside',
};

const WORDS: Record<string, Words> = {
  'tool-received': (p) =>
    `received: ${ROLE_LABEL[p.role as Role] ?? 'tool'}${p.lot ? `, lot ${p.lot}` : ''}${opening(p)}`,
  'cut-logged': (p, names) => cut(p, names),
  'tool-issued': (p, names) =>
    `issued to ${names.person(String(p.toPersonId))}${p.jobLineId ? ` for job ${p.jobLineId}` : ' on loan'}${p.bench ? `, bench ${p.bench}` : ''}`,
  'tool-returned': (p) => RETURNED[String(p.condition)] ?? 'came back',
  'tool-moved': (p) =>
    `now ${TOOL_STATE_LABEL[p.to as ToolState] ?? String(p.to)}${p.backOnDay ? `, expected back ${p.backOnDay}` : ''}`,
  'edge-ended': (p) =>
    `edge out of service: ${END_CAUSES.find(({ code }) => code === p.cause)?.label ?? String(p.cause)}`,
  'edge-renewed': () => 'back from regrind with a new edge, counted from zero',
  'edge-read': (p) => `read on ${p.onDay}: ${findingWords(p.finding as Finding)}`,
  'gauge-calibrated': (p) =>
    p.result === 'pass'
      ? `calibrated, due ${p.dueOnDay}${p.certificate ? `, certificate ${p.certificate}` : ''}`
      : 'failed its calibration, set aside',
  'fluid-opened': (p) => `opened on ${p.onDay}`,
  'fluid-level-read': (p) => `level ${p.levelMl} mL`,
  'shop-set': (p) => `shop settings: ${p.name}`,
  'person-set': (p) => `person: ${p.name}, ${p.role}`,
  'connection-set': (p, names) => `size table row: ${names.connection(String(p.id))}`,
  'material-set': (p) => `material: ${p.name}`,
  'part-set': (p) => `part: ${p.name}`,
  'life-guess-set': (p) => `first guess: about ${p.ends} ends, give or take a factor of ${p.giveOrTake}`,
  'belief-set': (p) => `what is believed of ${p.kind === 'blade' ? 'blades' : 'dies'} before the log`,
  'costs-set': () => 'what things cost the shop',
  'job-set': (p) => `job planned: ${p.title || p.id}, ${count((p.lines as unknown[]).length, 'line')}`,
  'job-closed': (p) => `job ${p.how}`,
  'order-placed': (p) => `ordered ${p.quantity}, expected ${p.expectedOnDay}`,
  'order-slipped': (p) => `order slipped to ${p.expectedOnDay}`,
  'order-received': (p) => `received ${p.quantity} of the order`,
  'entry-reversed': () => 'took an entry back',
};

/** What an entry says, in shop words. */
export function entryWords(entry: Pick<EntryView, 'kind' | 'payload'>, names: Names): string {
  return WORDS[entry.kind]?.(entry.payload, names) ?? entry.kind;
}

function cut(p: Payload, names: Names): string {
  const what = count(Number(p.ends), p.operation === 'cone' ? 'cone' : 'thread');
  const bad = Number(p.ends) - Number(p.goodEnds);
  const notes = [
    bad > 0 ? `${bad} not good` : '',
    p.threadLengthTyped ? `${p.threadLengthTyped} long` : '',
    p.dry ? 'cut dry' : '',
    p.rework ? 'recut' : '',
    p.heat ? `heat ${p.heat}` : '',
    p.jobLineId ? `job ${p.jobLineId}` : '',
  ].filter((note) => note !== '');
  const where = `${names.connection(String(p.connectionId))} in ${names.material(String(p.materialId))}`;
  return `${what}, ${where}${notes.length > 0 ? ` (${notes.join(', ')})` : ''}`;
}

function opening(p: Payload): string {
  const known = p.opening as { known: string; ends?: number };
  if (known.known === 'unknown') return ', use before this unknown';
  return known.known === 'counted' ? `, ${count(known.ends ?? 0, 'end')} cut before` : '';
}
