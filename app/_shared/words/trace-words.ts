import { type Looked, lookOutcome } from '@/lib/acceptance/look-outcome';
import { ROLE_LABEL } from '@/lib/shop/vocabulary';
import type { TracedEdge, TracedLook } from '@/lib/trace/end-trace';
import type { TraceGap } from '@/lib/trace/trace-gaps';
import { fromMicro } from '@/lib/units/micro';
import { count, exposureText } from '../format';

/** What an edge had cut by then: "edge 2, after 1 regrind: 31 ends, 12.4 cm³ cut by then". */
export function usedThenWords(kind: 'die' | 'blade', { usedThen }: Pick<TracedEdge, 'usedThen'>): string {
  if (usedThen === null) return 'what it had cut by then was not written down';
  const { edgeNo, ends, exposureMicro } = usedThen;
  const regrinds =
    edgeNo > 1
      ? `edge ${edgeNo}, after ${count(edgeNo - 1, 'regrind')}`
      : kind === 'blade'
        ? 'first edge'
        : '';
  const used = `${count(ends, 'end')}, ${exposureText(kind, fromMicro(exposureMicro))} cut by then`;
  return regrinds === '' ? used : `${regrinds}: ${used}`;
}

/** What the record does not say, one sentence each. */
export function gapWords(gap: TraceGap): string {
  switch (gap.kind) {
    case 'gauges':
      return 'No gauge was recorded: the end is not releasable on this record.';
    case 'gauge-missing':
      return `No ${ROLE_LABEL[gap.role]} was recorded: the end is not releasable on this record.`;
    case 'certificate':
      return `${gap.toolId} shows no certificate that was valid that day.`;
    case 'certificate-file':
      return `The certificate of ${gap.toolId} is on record, and no copy of it is filed here.`;
    case 'rule':
      return 'No rule for NOT GO was on record.';
    case 'place':
      return 'The end bears neither mark nor number: this is true of each of the ends looked at together.';
    case 'heat':
      return 'The heat of the tube was not written down.';
    case 'edge':
      return `Which ${gap.role} cut it was not written down.`;
    case 'edge-use':
      return `What ${gap.toolId} had cut by then was not written down.`;
    case 'fluid':
      return 'Which bottle of fluid was used was not written down.';
    case 'cut':
      return `Who cut the ${gap.operation} cannot be told from the cut log.`;
    case 'cut-differs':
      return `The look names ${gap.toolId}; by count the cut log names ${gap.loggedId}.`;
    case 'cone-contact':
      return 'The cone of this end was not blued.';
    case 'exposed-threads':
      return 'Threads between collar and cone were not counted.';
    case 'which-refused':
      return `${count(gap.ends, 'end')} of its line ${gap.ends === 1 ? 'was' : 'were'} refused before; whether this is one of them made again is not on record.`;
  }
}

/** What a look came to: an end looked at without its gauges has not passed. */
export function outcomeWords(look: Looked): string {
  return OUTCOME_WORDS[lookOutcome(look)];
}

const OUTCOME_WORDS = {
  passed: 'accepted',
  refused: 'refused',
  'not-gauged': 'looked at, gauges not all recorded: not releasable',
} as const;

/** Whether a second person or gauge looked. */
export const INDEPENDENT_WORDS: Record<TracedLook['independentCheck'], string> = {
  no: 'no second look',
  'another-person': 'checked by another person',
  'another-gauge': 'checked with another gauge',
};
