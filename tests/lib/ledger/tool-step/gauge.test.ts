import { expect, it } from 'vitest';
import {
  gaugeCertificateFiled,
  gaugeChecked,
  gaugeDropped,
  gaugeIntervalSet,
} from '@/lib/ledger/tool-step/gauge';
import { must, sentence } from '../../../support/db';
import { entry, ISSUE, move, toolAfter } from '../../../support/entry';

const passed = { onDay: '2026-03-02', result: 'pass', dueOnDay: '2027-03-01', certificate: '' } as const;
const calibrated = entry('gauge-calibrated', 'T-1', passed);

const check = { onDay: '2026-03-02', result: 'pass', againstToolId: 'SP-56-1', qualifies: true } as const;
const checked = (over = {}) => entry('gauge-checked', 'T-1', { ...check, ...over }, { id: 'entry-checked' });
const dropped = entry('gauge-dropped', 'T-1', { onDay: '2026-03-02' });
const calibratedAs = (over = {}) => entry('gauge-calibrated', 'T-1', { ...passed, ...over });

it('dropped: set aside at once, whoever holds it; a check that passes brings it back, with the record', () => {
  const aside = toolAfter('go-ring', ISSUE, dropped);
  expect(aside).toMatchObject({ state: 'quarantined', holderId: null, dropped: { onDay: '2026-03-02' } });
  const back = toolAfter('go-ring', ISSUE, dropped, checked());
  expect(back).toMatchObject({ state: 'in-crib', dropped: null });
  expect(back.evidence).toMatchObject([{ kind: 'interim', asFound: 'in', againstToolId: 'SP-56-1' }]);
});

it('a check that does not count brings nothing back, one that fails sets aside', () => {
  expect(toolAfter('go-ring', dropped, checked({ qualifies: false })).state).toBe('quarantined');
  expect(toolAfter('go-ring', checked({ result: 'fail' }))).toMatchObject({
    state: 'quarantined',
    evidence: [{ asFound: 'out', asLeft: 'out' }],
  });
});

it('no check in the shop overrules a failed calibration', () => {
  const failed = calibratedAs({ result: 'fail', dueOnDay: null });
  expect(toolAfter('go-ring', failed, checked()).state).toBe('quarantined');
});

it('a calibration that finds it good clears the knock', () => {
  const tool = toolAfter('go-ring', dropped, calibratedAs({ asFound: 'in' }));
  expect(tool).toMatchObject({ state: 'in-crib', dropped: null });
});

// source: hand. Calibrated on 2 March 2026 and due 1 March 2027; 200 days after 2 March 2026 is 18 September 2026.
it('a shorter interval moves the due day up, a longer one does not move it', () => {
  const set = (intervalDays: number) =>
    entry('gauge-interval-set', 'T-1', { intervalDays, intervalEnds: null, method: 'shorter' });
  expect(toolAfter('go-ring', calibrated, set(200)).dueOnDay).toBe('2026-09-18');
  expect(toolAfter('go-ring', calibrated, set(700)).dueOnDay).toBe('2027-03-01');
  expect(toolAfter('go-ring', set(200))).toMatchObject({ dueOnDay: null, interval: { intervalDays: 200 } });
});

it('a certificate is filed with the calibration it belongs to', () => {
  const file = { sha256: 'a'.repeat(64), name: 'PM-1.pdf', type: 'application/pdf', sizeBytes: 9 } as const;
  const tool = toolAfter('go-ring', calibrated);
  const filed = must(gaugeCertificateFiled(tool, { calibrationId: 'entry-under-test', ...file }, calibrated));
  expect(filed.evidence[0]?.file).toEqual(file);
  expect(sentence(gaugeCertificateFiled(tool, { calibrationId: 'entry-other', ...file }, calibrated))).toBe(
    'T-1 has no such calibration to file it with.',
  );
});

it('refuses what cannot be', () => {
  const lost = toolAfter('go-ring', move('lost'));
  const aside = toolAfter('go-ring', dropped);
  expect([
    sentence(gaugeChecked(toolAfter('brush'), check, calibrated)),
    sentence(gaugeChecked(lost, check, calibrated)),
    sentence(gaugeChecked(toolAfter('go-ring'), { ...check, againstToolId: 'T-1' }, calibrated)),
    sentence(gaugeDropped(aside, { onDay: '2026-03-02' }, dropped)),
    sentence(gaugeDropped(lost, { onDay: '2026-03-02' }, dropped)),
    sentence(
      gaugeIntervalSet(toolAfter('die'), { intervalDays: 9, intervalEnds: null, method: 'shorter' }, dropped),
    ),
  ]).toEqual([
    'T-1 is not kept under calibration.',
    'T-1 is lost; it cannot have been checked.',
    'A gauge cannot be checked on itself.',
    'T-1 is set aside already.',
    'T-1 is lost; it cannot be set aside.',
    'T-1 is not kept under calibration.',
  ]);
});
