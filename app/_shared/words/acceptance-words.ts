import type { EntryView } from '@/db/queries/entries';
import {
  DISPOSITION_LABEL,
  type Disposition,
  RECALL_CAUSE_LABEL,
  type RecallCause,
  type Suspect,
} from '@/lib/shop/recall';
import { REJECT_CAUSES } from '@/lib/shop/vocabulary';
import { count } from '../format';
import { payloadDay } from './payload-day';

type Payload = EntryView['payload'];

/** What the entries about accepted ends and recalls say, in shop words. */
export const ACCEPTANCE_WORDS: Readonly<Record<string, (payload: Payload) => string>> = {
  'job-shipped': (p) => `left the house on ${payloadDay(p.onDay)}`,
  'ends-accepted': looked,
  'recall-opened': (p) =>
    `recall opened: ${p.gaugeId} ${RECALL_CAUSE_LABEL[p.cause as RecallCause] ?? 'found out'}, ${suspectEnds(p)} to look at`,
  'recall-extended': (p) => `recall extended: ${suspectEnds(p)} more to look at`,
  'suspect-disposed': (p) =>
    `${count(Number(p.endCount), 'suspect end')}: ${DISPOSITION_LABEL[p.how as Disposition] ?? String(p.how)}${p.gaugeId ? `, with ${p.gaugeId}` : ''}${p.evidence ? ` (${p.evidence})` : ''}`,
  'recall-closed': (p) => `recall closed: ${p.conclusion}`,
};

function looked(p: Payload): string {
  const ends = count(Number(p.endCount), 'end');
  const gauges = ((p.gauges ?? []) as { toolId: string; verdict: string }[])
    .filter(({ verdict }) => verdict !== 'not-used')
    .map(({ toolId }) => toolId);
  const with_ = gauges.length === 0 ? 'no gauge recorded' : `with ${gauges.join(', ')}`;
  const again = p.regaugesId === null ? '' : 'gauged again, ';
  const line = p.jobLineId === null ? '' : `, line ${p.jobLineId}`;
  return p.decision === 'accepted'
    ? `${again}${ends} accepted${line}, ${with_}`
    : `${again}${ends} refused${line}: ${causeLabel(p.cause)}`;
}

function causeLabel(cause: unknown): string {
  return REJECT_CAUSES.find(({ code }) => code === cause)?.label ?? String(cause);
}

function suspectEnds(p: Payload): string {
  return count(
    ((p.suspects ?? []) as Suspect[]).reduce((sum, { endCount }) => sum + endCount, 0),
    'end',
  );
}
