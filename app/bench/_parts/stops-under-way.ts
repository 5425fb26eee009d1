import { STOPS, type Stop } from '@/lib/shop/bench-input';
import type { BenchState } from '../_offline/bench-store';

/** A tool that was stopped here, and with what. */
export interface StoppedTool {
  readonly toolId: string;
  readonly how: Stop;
  /** Not sent yet: the record does not know of it. */
  readonly waiting?: boolean;
}

/** Stops that wait to be sent, or were sent and are in no snapshot yet: what the device shows of the tool may not say go. */
export function stopsUnderWay({ outbox, sent }: Pick<BenchState, 'outbox' | 'sent'>): StoppedTool[] {
  return [
    ...outbox.flatMap(({ entry }) =>
      entry.kind === 'stop' ? [{ toolId: entry.toolId, how: entry.how, waiting: true }] : [],
    ),
    ...sent.flatMap(({ toolId, stopped }) => (stopped === undefined ? [] : [{ toolId, how: stopped }])),
  ];
}

/** Whether pieces are to be found after such a stop. */
export function losesPieces({ how }: StoppedTool): boolean {
  return STOPS.some(({ code, pieces }) => code === how && pieces);
}
