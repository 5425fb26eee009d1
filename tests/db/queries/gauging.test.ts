import { expect, it } from 'vitest';
import { recordCalibration } from '@/db/commands/record-calibration';
import { readGauging } from '@/db/queries/gauging';
import { RecordCalibrationInput } from '@/lib/shop/command-input';
import { acceptSender, acceptShop, CONE, GO, NG } from '../../support/accept-shop';
import { ENV, entered, HIGH, may, must } from '../../support/db';

function calibrate(db: ReturnType<typeof acceptShop>, toolId: string, onDay: string) {
  const fields = {
    result: 'pass',
    asFound: 'in',
    adjusted: false,
    certificate: `C-${onDay}`,
    laboratory: 'Plumbgate',
  };
  const input = RecordCalibrationInput.parse({
    ...{ ...entered(), toolId, onDay, ...fields },
    ...{ dueOnDay: '2026-12-30', features: [] },
  });
  return recordCalibration(db, may('record-calibration'), input, ENV);
}

// source: hand. 5 and 3 ends accepted with the first ring, 4 refused; one calibration before the first of them, one on its day.
it('reads calibrations and accepted ends', () => {
  const db = acceptShop();
  const { accept } = acceptSender(db);
  must(calibrate(db, 'G-56-GO-1', '2026-01-10'));
  must(accept(5));
  must(accept(3));
  must(accept(4, { gauges: [{ ...GO, verdict: 'fail' }, NG, CONE] }));
  must(calibrate(db, 'G-56-GO-1', '2026-03-02'));
  const { calibrations, looks, accepted } = readGauging(db);
  const times = Object.fromEntries(calibrations.map(({ toolId, calibrations: of }) => [toolId, of]));
  expect(times).toMatchObject({ 'G-56-GO-1': 1, 'G-56-GO-2': 0, 'CG-56H-1': 0 });
  expect(calibrations.find(({ toolId }) => toolId === 'CG-56H-1')?.fitsConnectionIds).toEqual([HIGH.id]);
  expect(looks).toContainEqual({ toolId: 'G-56-GO-1', connectionId: HIGH.id, ends: 8 });
  expect([...accepted]).toEqual([[HIGH.id, 8]]);
});

// source: hand. Nothing accepted: nothing to spread over.
it('is empty where nothing was accepted', () => {
  const { looks, accepted } = readGauging(acceptShop());
  expect([looks, [...accepted]]).toEqual([[], []]);
});
