import { expect, it } from 'vitest';
import { changeLine, newLine } from '@/lib/what-if/changed-line';
import { toolFacts } from '../../support/shop-record';
import { whatIfFacts } from '../../support/what-if-shop';

// source: hand. A new line is coned and threaded, with nothing made of it yet.
it('newLine is a line of a job of its own', () => {
  const line = newLine(
    {
      kind: 'add-line',
      connectionId: '3-8-medium',
      materialId: '2507',
      ends: 8,
      startOnDay: '2026-03-03',
      dueOnDay: '2026-03-05',
      value: 'ordinary',
    },
    'what-if-1',
  );
  expect(line).toMatchObject({ id: '~what-if-1', ends: 8, operations: ['cone', 'thread'], goodThreads: 0 });
});

// source: hand. A job that falls away frees what was out on it and what was kept for it; nothing else moves.
it('changeLine: dropping a line frees its tools', () => {
  const tools = [
    toolFacts({ id: 'D-1', role: 'die', state: 'issued', jobLineId: 'J-1.1', backOnDay: '2026-03-13' }),
    toolFacts({ id: 'D-2', role: 'die', reservation: { jobLineId: 'J-1.1', untilDay: '2026-03-13' } }),
    toolFacts({ id: 'D-3', role: 'die', state: 'issued', jobLineId: 'J-9.1' }),
  ];
  const facts = whatIfFacts({ tools });
  const dropped = changeLine(facts, { kind: 'drop-line', lineId: 'J-1.1' });
  if (!dropped.ok) throw new Error(dropped.refusal.sentence);
  const [out, kept, other] = dropped.value.tools;
  expect(out).toMatchObject({ state: 'in-crib', jobLineId: null, backOnDay: null });
  expect(kept?.reservation).toBeNull();
  expect(other).toBe(tools[2]);
});
