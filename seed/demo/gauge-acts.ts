import { fileCertificate } from '../../db/commands/file-certificate';
import { checkGauge, dropGauge, setGaugeInterval } from '../../db/commands/keep-gauge';
import type { Db } from '../../db/open';
import { invariant } from '../../lib/invariant';
import type { IntervalMethod } from '../../lib/shop/gauge-entry';
import { type Act, act } from './act';
import type { Deed } from './crib-acts';
import { actorOf } from './people';

function when(what: string, { atMs, by, toolId, reason = '', mark = '' }: Deed) {
  return { atMs, by: actorOf(by), name: `${what} ${toolId} ${mark}`, reason };
}

/** A documented check that passed. */
export function checkPassed(deed: Deed, againstToolId: string, onDay: string): Act {
  const check = { onDay, result: 'pass', qualifies: true, againstToolId, toolId: deed.toolId } as const;
  return act(when('pass a check', deed), 'check-gauge', (db, permit, entered, env) =>
    checkGauge(db, permit, { ...entered, ...check }, env),
  );
}

/** Set aside after a knock. */
export function knock(deed: Deed, onDay: string): Act {
  return act(when('knock', deed), 'set-aside-gauge', (db, permit, entered, env) =>
    dropGauge(db, permit, { ...entered, toolId: deed.toolId, onDay }, env),
  );
}

/** A decision about an interval. */
export function setInterval(
  deed: Deed,
  interval: { intervalDays: number | null; intervalEnds: number | null; method: IntervalMethod },
): Act {
  return act(when('set interval', deed), 'set-gauge-interval', (db, permit, entered, env) =>
    setGaugeInterval(db, permit, { ...entered, ...interval, toolId: deed.toolId }, env),
  );
}

/** The paper of the latest calibration, filed beside it. */
export function fileLatest(deed: Deed, name: string, text: string): Act {
  return act(when('file the certificate of', deed), 'file-certificate', (db, permit, entered, env) => {
    const calibrationId = latestCalibration(db, deed.toolId);
    return fileCertificate(
      db,
      permit,
      { ...entered, toolId: deed.toolId, calibrationId, name, bytes: examplePdf(text) },
      env,
    );
  });
}

function latestCalibration(db: Db, toolId: string): string {
  const row = db.$client
    .prepare(
      `SELECT entry_id FROM gauge_evidence WHERE tool_id = ? AND kind = 'calibration' ORDER BY on_day DESC LIMIT 1`,
    )
    .pluck()
    .get(toolId);
  invariant(typeof row === 'string', `${toolId} has a calibration to file a certificate with`);
  return row;
}

/** A one-page PDF that says so little that it can be read whole. */
function examplePdf(text: string): Uint8Array {
  const stream = `BT /F1 14 Tf 60 760 Td (${text.replace(/[()\\]/g, '')}) Tj ET`;
  const objects = [
    '<< /Type /Catalog /Pages 2 0 R >>',
    '<< /Type /Pages /Kids [3 0 R] /Count 1 >>',
    '<< /Type /Page /Parent 2 0 R /MediaBox [0 0 595 842] /Contents 4 0 R /Resources << /Font << /F1 5 0 R >> >> >>',
    `<< /Length ${stream.length} >>\nstream\n${stream}\nendstream`,
    '<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>',
  ];
  let body = '%PDF-1.4\n';
  const starts = objects.map((object, at) => {
    const start = body.length;
    body += `${at + 1} 0 obj\n${object}\nendobj\n`;
    return start;
  });
  const rows = starts.map((start) => `${String(start).padStart(10, '0')} 00000 n \n`).join('');
  const table = `xref\n0 ${objects.length + 1}\n0000000000 65535 f \n${rows}`;
  const trailer = `trailer\n<< /Size ${objects.length + 1} /Root 1 0 R >>\nstartxref\n${body.length}\n%%EOF\n`;
  return new TextEncoder().encode(body + table + trailer);
}
