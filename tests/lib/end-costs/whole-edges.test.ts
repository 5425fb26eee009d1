import { expect, it } from 'vitest';
import { wholeEdges } from '@/lib/end-costs/whole-edges';
import type { LogEvent, RowCut } from '@/lib/score/log-event';

const began = (toolId: string, startKnown = true): LogEvent => ({
  ...{ type: 'began', toolId, edgeNo: 1, kind: 'die', partId: 'die', odIn: 0.5, regrinds: 0, startKnown },
});
const cut = (toolId: string): RowCut => ({
  ...{
    type: 'cut',
    toolId,
    edgeNo: 1,
    atMs: 0,
    connectionId: 'S',
    materialId: 'M',
    dry: false,
    rework: false,
  },
  ...{ ends: 4, goodEnds: 4, exposurePerEnd: 10 },
});

// source: hand. D ended, E still cuts, F cut nothing, of G nobody knows the beginning.
it('gathers the edges of a log', () => {
  const worn: LogEvent = { type: 'ended', toolId: 'D', edgeNo: 1, atMs: 1, how: 'worn' };
  const events = [
    began('D'),
    began('E'),
    began('F'),
    began('G', false),
    cut('D'),
    cut('E'),
    cut('D'),
    cut('G'),
    worn,
  ];
  const found = wholeEdges(events);
  expect(found.map(({ toolId, rows, ended }) => [toolId, rows.length, ended?.how])).toEqual([
    ['D', 2, 'worn'],
    ['E', 1, undefined],
  ]);
});
