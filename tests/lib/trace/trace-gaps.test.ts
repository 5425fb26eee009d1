import { expect, it } from 'vitest';
import type { Certificate, EndTrace, TracedLook } from '@/lib/trace/end-trace';
import { traceGaps } from '@/lib/trace/trace-gaps';
import type { TracedCut } from '@/lib/trace/traced-cut';

const certificate: Certificate = {
  ...{ number: 'PM-7', laboratory: 'Plumbgate', onDay: '2026-01-05', dueOnDay: '2026-12-31', result: 'pass' },
  file: { sha256: 'a'.repeat(64), name: 'PM-7.pdf' },
};
const usedThen = { edgeNo: 1, ends: 4, exposureMicro: 42_000_000 };
const look: TracedLook = {
  ...{ acceptanceId: 'a1', personId: 'ash', gaugedAtMs: 0, gaugedOnDay: '2026-03-02', checkKind: 'each' },
  ...{ decision: 'accepted', cause: null, finish: 'smooth', coneContact: 'nose-ring', exposedThreads: 1 },
  rule: { notGoTurnsMax: 2, whose: 'shop', source: 'shop' },
  ...{ boreClear: true, independentCheck: 'no' },
  gauges: [{ toolId: 'G-1', role: 'go-ring', verdict: 'pass', turns: null, certificate }],
  gaugesMissing: [],
  die: { toolId: 'D-1', lot: '', usedThen },
  blade: { toolId: 'B-1', lot: '', usedThen },
  fluid: { toolId: 'F-1', lot: 'L1' },
};
const trace: EndTrace = {
  ...{ jobId: 'J-1', jobLineId: 'J-1.1', endNo: 2, mark: 'S-18 end 2', connectionId: '9-16-high' },
  ...{ materialId: '316', heat: 'C4407', shippedOnDay: null, operations: ['cone', 'thread'] },
  ...{ looks: [look], refusedBefore: [], recalls: [] },
};
const cut = (operation: 'cone' | 'thread', toolId: string): TracedCut => ({
  ...{ operation, toolId, entryId: operation, personId: 'lee', cutAtMs: 0, ends: 4, goodEnds: 4, dry: false },
});
const cuts = [cut('cone', 'B-1'), cut('thread', 'D-1')];
const seenAs = (over: Partial<TracedLook>) => traceGaps({ ...trace, looks: [{ ...look, ...over }] }, cuts);

// source: hand. Everything is on record; then one thing after another is taken away, and is named.
it('Q31: a full record leaves nothing unsaid', () => {
  expect(traceGaps(trace, cuts)).toEqual([]);
});

it('names what is missing of gauges and certificates', () => {
  expect(seenAs({ gauges: [] })).toEqual([{ kind: 'gauges' }]);
  const [ring] = look.gauges;
  const unused = look.gauges.map((gauge) => ({ ...gauge, verdict: 'not-used' as const }));
  expect(seenAs({ gauges: unused })).toEqual([{ kind: 'gauges' }]);
  const lapsed = look.gauges.map((gauge) => ({ ...gauge, certificate: null }));
  expect(seenAs({ gauges: lapsed })).toEqual([{ kind: 'certificate', toolId: ring?.toolId }]);
  const unfiled = look.gauges.map((gauge) => ({ ...gauge, certificate: { ...certificate, file: null } }));
  expect(seenAs({ gauges: unfiled })).toEqual([{ kind: 'certificate-file', toolId: ring?.toolId }]);
});

it('a gauge that the work asks for and nobody recorded is named, until a later look passed it', () => {
  const partly = { ...look, gaugesMissing: ['not-go-ring' as const] };
  expect(traceGaps({ ...trace, looks: [partly] }, cuts)).toEqual([
    { kind: 'gauge-missing', role: 'not-go-ring' },
  ]);
  expect(traceGaps({ ...trace, looks: [partly, look] }, cuts)).toEqual([]);
  expect(traceGaps({ ...trace, looks: [partly, { ...look, decision: 'refused' }] }, cuts)).toHaveLength(1);
});

it('names what is missing of tools, fluid and what was looked at', () => {
  expect(seenAs({ die: null })).toEqual([{ kind: 'edge', role: 'die' }]);
  expect(seenAs({ blade: { toolId: 'B-1', lot: '', usedThen: null } })).toEqual([
    { kind: 'edge-use', toolId: 'B-1' },
  ]);
  expect(seenAs({ fluid: null, rule: null, coneContact: 'not-checked', exposedThreads: null })).toEqual([
    { kind: 'rule' },
    { kind: 'fluid' },
    { kind: 'cone-contact' },
    { kind: 'exposed-threads' },
  ]);
  expect(traceGaps({ ...trace, heat: '', mark: null, endNo: null }, cuts)).toEqual([
    { kind: 'place' },
    { kind: 'heat' },
  ]);
});

it('says where the cut log is silent, or names another tool', () => {
  expect(traceGaps(trace, [cut('cone', 'B-1')])).toEqual([{ kind: 'cut', operation: 'thread' }]);
  expect(traceGaps(trace, [cut('cone', 'B-1'), cut('thread', 'D-9')])).toEqual([
    { kind: 'cut-differs', toolId: 'D-1', loggedId: 'D-9' },
  ]);
  const refusedBefore = [{ acceptanceId: 'r', endCount: 2, cause: 'go-tight' }] as const;
  expect(traceGaps({ ...trace, refusedBefore }, cuts)).toEqual([{ kind: 'which-refused', ends: 2 }]);
});

it('asks nothing of a thread where only cones were looked at', () => {
  const coned = {
    ...trace,
    operations: ['cone' as const],
    looks: [{ ...look, die: null, exposedThreads: null }],
  };
  expect(traceGaps(coned, [cut('cone', 'B-1')])).toEqual([]);
});
