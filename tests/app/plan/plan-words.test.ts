import { expect, it } from 'vitest';
import { wayLink } from '@/app/_shared/words/way-words';
import { chanceSentence, endsSentence, endsUnlessShort } from '@/app/plan/_parts/life-words';
import { lineLabeller, sizeTextOf } from '@/app/plan/_parts/plan-rows';
import { blankLine, draftOf } from '@/app/plan/jobs/_parts/job-draft';
import { slipWords } from '@/app/plan/orders/_parts/slip-words';
import type { LineRow } from '@/db/queries/jobs';
import { SHIPPED_CONNECTIONS } from '@/lib/shipped/connections';
import { blocker, lineFacts, orderFacts, setParts, TODAY, verdict } from '../../support/shop-record';

const row = (change: Partial<LineRow> = {}): LineRow => ({
  ...lineFacts(),
  jobTitle: 'Trial',
  jobStatus: 'open',
  lineNo: 1,
  heat: '',
  ...change,
});

// source: hand. What each sentence has to say follows from its own doc comment.
it('names a size with its unit, table row or not', () => {
  expect(sizeTextOf(SHIPPED_CONNECTIONS, '9-16-high')).toBe('9⁄16 in high pressure');
  expect(sizeTextOf(SHIPPED_CONNECTIONS, '1-high')).toBe('1 in high pressure');
  expect(sizeTextOf(SHIPPED_CONNECTIONS, 'pipe')).toBe('pipe');
});

it('names the line only where the job has several', () => {
  const rows = [row(), row({ id: 'J-2.1', jobId: 'J-2' }), row({ id: 'J-2.2', jobId: 'J-2', lineNo: 2 })];
  const label = lineLabeller(rows);
  expect(['J-1.1', 'J-2.2', 'J-9.1'].map(label)).toEqual(['job J-1', 'job J-2, line 2', 'job line J-9.1']);
});

it('gives figures about lives only where the edges are there', () => {
  const lives = verdict({ pMade: 0.7, safeEnds: 37.9, likelyEnds: 83 });
  expect(chanceSentence(lives)).toBe('about 7 in 10 that the edges last');
  expect(endsSentence(lives)).toBe('37 ends safe, 83 likely');
  expect(endsSentence({ ...lives, safeEnds: 0, likelyEnds: 12 })).toBe('no ends safe, 12 likely');
  for (const missing of [blocker({}), blocker({ role: null, kind: 'unknown-connection' })]) {
    expect(chanceSentence({ ...lives, blockers: [missing] })).toBe('');
    expect(endsSentence({ ...lives, blockers: [missing] })).toBe('');
  }
  expect(chanceSentence({ ...lives, blockers: [blocker({ role: 'go-ring' })] })).not.toBe('');
  expect(chanceSentence(verdict({ safeEnds: null }))).toBe('');
});

it('gives one figure of ends, not two that nearly agree', () => {
  const lives = verdict({ pMade: 0.7, safeEnds: 6, likelyEnds: 51 });
  const short = { kind: 'life-short', pMade: 0.7, safeEnds: 6, likelyEnds: 52 } as const;
  expect(endsUnlessShort(lives)).toBe('6 ends safe, 51 likely');
  expect(endsUnlessShort({ ...lives, blockers: [{ ...blocker({ hard: false }), ...short }] })).toBe('');
});

it('keeps the promised day in sight', () => {
  const words = (expectedOnDay: string) => slipWords({ promisedOnDay: '2026-12-07', expectedOnDay }, TODAY);
  expect(words('2026-12-07')).toBe('as promised');
  expect(words('2026-12-16')).toBe('promised Mon 7 Dec, slipped 9 days');
  expect(words('2026-12-06')).toBe('promised Mon 7 Dec, 1 day sooner');
});

it('drafts a line for the form, a size without a row where sizes are typed', () => {
  const known = ['3-8-medium'];
  expect(draftOf(row({ goodThreads: 1 }), known)).toMatchObject({
    connectionId: '3-8-medium',
    otherSize: '',
    ends: '24',
    begun: true,
  });
  expect(draftOf(row({ connectionId: '3-2-high', value: 'precious' }), known)).toMatchObject({
    connectionId: '',
    otherSize: '1 1⁄2',
    otherService: 'high',
    precious: true,
    begun: false,
  });
  expect(draftOf(row({ connectionId: 'pipe' }), known)).toMatchObject({
    connectionId: 'pipe',
    otherSize: '',
  });
  expect(blankLine(2, TODAY)).toMatchObject({
    lineNo: 2,
    ends: '',
    startOnDay: TODAY,
    cone: true,
    assemble: false,
  });
});

it('leads each way out somewhere, and says where', () => {
  const [part] = setParts();
  if (part === undefined) throw new Error('the set has parts');
  const order = orderFacts({ id: 'PO-1', partId: part.id });
  const links = [
    wayLink({ kind: 'place-order', part }, TODAY),
    wayLink({ kind: 'receive', part, orderId: null }, TODAY),
    wayLink({ kind: 'receive', part, orderId: 'PO-1' }, TODAY),
    wayLink({ kind: 'see-order', order, late: false }, TODAY),
    wayLink({ kind: 'see-tool', toolId: 'D-38-11' }, TODAY),
    wayLink({ kind: 'change-dates', jobId: 'J-1' }, TODAY),
    wayLink({ kind: 'add-size', connectionId: '1-high' }, TODAY),
    wayLink({ kind: 'add-material', materialId: 'x' }, TODAY),
    wayLink({ kind: 'add-part', role: 'die' }, TODAY),
  ];
  expect(links.map(({ href }) => href)).toEqual([
    `/plan/orders/new?part=${part.id}`,
    `/tools/receive?part=${part.id}`,
    '/tools/receive?order=PO-1',
    '/plan/orders#PO-1',
    '/tools/D-38-11',
    '/plan/jobs/J-1',
    '/sizes/new?size=1&service=high',
    '/sizes/materials/new',
    '/parts/new?kind=die',
  ]);
  expect(links[3]?.label).toBe('Order PO-1: expected in 12 days, Sat 14 Mar');
});
