import type { EntryView } from '@/db/queries/entries';
import { CODE_KIND_LABEL, type CodeKind } from '@/lib/labels/code-kind';
import type { Finding } from '@/lib/reading/reading';
import { DISPOSAL_LABEL, type Disposal } from '@/lib/shop/fluid-entry';
import { MARK_WAY_LABEL, type MarkWay } from '@/lib/shop/mark';
import type { Drawer } from '@/lib/shop/stock-count';
import { END_CAUSES, ROLE_LABEL, type Role, TOOL_STATE_LABEL, type ToolState } from '@/lib/shop/vocabulary';
import { count } from '../format';
import { ACCEPTANCE_WORDS } from './acceptance-words';
import { drawerWords } from './drawer-words';
import { findingWords } from './finding-words';
import { payloadDay } from './payload-day';

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
    `now ${TOOL_STATE_LABEL[p.to as ToolState] ?? String(p.to)}${p.backOnDay ? `, expected back ${payloadDay(p.backOnDay)}` : ''}`,
  'kit-issued': (p, names) =>
    `kit of ${count(listOf(p.items).length, 'item')} issued to ${names.person(String(p.toPersonId))} for job ${p.jobLineId}`,
  'kit-search-opened': (p) => `missing from the kit: ${listOf(p.toolIds).join(', ')}`,
  'stock-counted': (p, names) =>
    `stock-take${drawerOf(p, names)}: ${p.found} of ${p.expected} found${listOf(p.variances).length === 0 ? '' : `, ${count(listOf(p.variances).length, 'difference')}`}`,
  'conflict-raised': (p) => `could not be taken from the bench: ${p.what}. ${p.sentence}`,
  'conflict-settled': (p) => `conflict ${p.how === 'entered' ? 'entered by hand' : 'dropped'}: ${p.note}`,
  'kit-closed': (p) =>
    p.how === 'complete'
      ? 'kit put away complete'
      : `kit closed with a loss: ${listOf(p.lostToolIds).join(', ')}`,
  'tool-reserved': (p) => `kept for job ${p.jobLineId} until ${payloadDay(p.untilDay)}`,
  'tool-freed': () => 'no longer kept for a job',
  'pieces-accounted': (p) =>
    p.allFound ? `all pieces found: ${p.where}` : `pieces not all found; looked: ${p.where}`,
  'die-adjusted': (p) => `die ${p.direction} a touch${p.amount ? ` (${p.amount})` : ''}`,
  'first-off-checked': (p) =>
    p.result === 'not-gauged'
      ? 'first-off looked at, not gauged: still owed'
      : `first-off ${p.result === 'pass' ? 'passed the gauges' : 'failed, set aside'}${withGauges(p)}`,
  'edge-ended': (p) =>
    `edge out of service: ${END_CAUSES.find(({ code }) => code === p.cause)?.label ?? String(p.cause)}`,
  'edge-renewed': (p) =>
    `back from regrind with a new edge, counted from zero${p.firstOff === 'passed' ? `; first-off passed${withGauges(p)}` : ''}`,
  'tool-marked': (p) => markWords(p),
  'edge-read': (p) => `read on ${payloadDay(p.onDay)}: ${findingWords(p.finding as Finding)}`,
  'gauge-calibrated': calibrated,
  'gauge-checked': (p) =>
    `${p.result === 'pass' ? 'passed' : 'did not pass'} a check in the shop${p.againstToolId ? ` on ${p.againstToolId}` : ''}${p.result === 'pass' ? '' : ', set aside'}`,
  'gauge-dropped': () => 'set aside after a knock',
  'gauge-interval-set': (p) => `calibration interval: ${intervalWords(p)}`,
  'gauge-certificate-filed': (p) => `certificate filed: ${p.name || String(p.type)}`,
  'fluid-opened': (p) => `opened on ${payloadDay(p.onDay)}`,
  'fluid-level-read': (p) => `level ${p.levelMl} mL`,
  'fluid-drops-counted': (p) => `counted ${p.drops} drops in ${p.volumeMl} mL`,
  'fluid-extended': (p) => `life lengthened to ${payloadDay(p.untilDay)} after inspection: ${p.inspection}`,
  'fluid-disposed': (p) =>
    `${DISPOSAL_LABEL[p.how as Disposal] ?? 'disposed of'}, ${p.volumeMl} mL${p.transferNote ? `, note ${p.transferNote}` : ''}`,
  'fluid-lot-set': (p) =>
    `lot ${p.lot}: chlorinated ${p.chlorinated}${p.sdsRevision ? `, SDS rev ${p.sdsRevision}` : ', no SDS written down'}`,
  'line-cleaned': (p) =>
    `line ${p.lineNo} cleaned on ${payloadDay(p.onDay)} by ${p.procedure}: ${p.evidence}`,
  'shop-set': (p) => `shop settings: ${p.name}`,
  'person-set': (p) => `person: ${p.name}, ${p.role}`,
  'connection-set': (p, names) => `size table row: ${names.connection(String(p.id))}`,
  'material-set': (p) => `material: ${p.name}`,
  'part-set': (p) => `part: ${p.name}`,
  'life-guess-set': (p) => `first guess: about ${p.ends} ends, give or take a factor of ${p.giveOrTake}`,
  'belief-set': (p) => `what is believed of ${p.kind === 'blade' ? 'blades' : 'dies'} before the log`,
  'costs-set': () => 'what things cost the shop',
  'reading-settings-set': (p) => `how wear is read: a land of ${p.landLimitMm} mm is worn out`,
  'gauge-settings-set': (p) =>
    `how gauges are judged: ${Math.round(Number(p.targetReliability) * 1000) / 10} % still in at the end of their interval`,
  'job-set': (p) => `job planned: ${p.title || p.id}, ${count((p.lines as unknown[]).length, 'line')}`,
  'job-closed': (p) => `job ${p.how}`,
  'order-placed': (p) => `ordered ${p.quantity}, expected ${payloadDay(p.expectedOnDay)}`,
  'order-drafted': (p) => `order drafted: ${p.quantity}${p.why ? `, for ${p.why}` : ''}`,
  'order-approved': (p) => `order approved: ${p.quantity}`,
  'order-chased': (p) =>
    p.confirmedForDay
      ? `supplier asked: confirmed for ${payloadDay(p.confirmedForDay)}`
      : 'supplier asked: no answer yet',
  'order-cancelled': () => 'order cancelled',
  'order-slipped': (p) => `order slipped to ${payloadDay(p.expectedOnDay)}`,
  'order-received': (p) => `received ${p.quantity} of the order`,
  ...ACCEPTANCE_WORDS,
  'entry-reversed': () => 'took an entry back',
};

/** What an entry says, in shop words. */
export function entryWords(entry: Pick<EntryView, 'kind' | 'payload'>, names: Names): string {
  return WORDS[entry.kind]?.(entry.payload, names) ?? entry.kind;
}

function calibrated(p: Payload): string {
  // One that takes hold by its own day may have been filed late: what came of it stands with the gauge.
  const byDay = p.takesHold === 'by-day';
  if (p.result !== 'pass')
    return byDay ? `failed its calibration of ${payloadDay(p.onDay)}` : 'failed its calibration, set aside';
  const out = byDay
    ? `found out of limits on ${payloadDay(p.onDay)}, adjusted`
    : 'found out of limits, adjusted, set aside';
  const good = byDay ? `calibrated on ${payloadDay(p.onDay)}` : 'calibrated';
  const found = p.asFound === 'out' ? out : good;
  return `${found}, due ${payloadDay(p.dueOnDay)}${p.certificate ? `, certificate ${p.certificate}` : ''}`;
}

/** With which gauges, where they were named. */
function withGauges(p: Payload): string {
  const ids = listOf(p.gaugeIds);
  return ids.length === 0 ? '' : `, with ${ids.join(', ')}`;
}

function intervalWords(p: Payload): string {
  const days = p.intervalDays === null ? [] : [count(Number(p.intervalDays), 'day')];
  const ends = p.intervalEnds === null ? [] : [count(Number(p.intervalEnds), 'end')];
  return [...days, ...ends].join(' or ');
}

function markWords(p: Payload): string {
  const code = CODE_KIND_LABEL[p.codeKind as CodeKind];
  const way = MARK_WAY_LABEL[p.how as MarkWay] ?? 'marked';
  return `marked again: ${way}${code === undefined ? '' : `, ${code}`}${p.readBack ? ', read back' : ', not read back'}`;
}

function cut(p: Payload, names: Names): string {
  const what = count(Number(p.ends), p.operation === 'cone' ? 'cone' : 'thread');
  const bad = Number(p.ends) - Number(p.goodEnds);
  const notes = [
    bad > 0 ? `${bad} not good` : '',
    p.threadLengthTyped ? `${p.threadLengthTyped} long` : '',
    p.dry ? 'cut dry' : '',
    p.fluidId ? `with ${p.fluidId}` : '',
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

/** A list of an entry's content; empty where there is none. */
/** " of 9⁄16 high pressure dies", or nothing where all of them were counted. */
function drawerOf(p: Payload, names: Names): string {
  const words = drawerWords(p as Drawer, names);
  return words === '' ? '' : ` of ${words}`;
}

function listOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}
