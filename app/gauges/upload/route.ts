import { revalidatePath } from 'next/cache';
import { readBody } from '@/app/_import/read-body';
import { refusalResponse } from '@/app/_server/refusal-response';
import { fromOwnPages } from '@/app/_server/same-origin';
import { currentActor } from '@/app/_server/session';
import { shopDb } from '@/db/client';
import { fileCertificate } from '@/db/commands/file-certificate';
import { wallClock } from '@/db/wall-clock';
import { permit } from '@/lib/access/permit';
import { CERTIFICATE_BYTES_MAX } from '@/lib/gauge/certificate-type';
import { refuse } from '@/lib/result';
import { FileCertificateInput } from '@/lib/shop/gauge-input';

/** Files the bytes of a certificate with its calibration. Only our own pages may send them. */
export const POST = fromOwnPages(async (request: Request) => {
  const leave = permit(await currentActor(), 'file-certificate');
  if (!leave.ok) return refusalResponse(401, leave.refusal);
  const asked = new URL(request.url).searchParams;
  const input = FileCertificateInput.safeParse({
    entryId: asked.get('entryId'),
    deviceAtMs: Number(asked.get('deviceAtMs')),
    toolId: asked.get('gauge'),
    calibrationId: asked.get('calibration'),
    name: asked.get('name') ?? '',
  });
  if (!input.success)
    return refusalResponse(
      400,
      refuse('input', input.error.issues[0]?.message ?? 'It cannot be read.').refusal,
    );
  const bytes = await readBody(request, CERTIFICATE_BYTES_MAX);
  if (bytes === null)
    return refusalResponse(
      413,
      refuse('too-large', 'This file is larger than 5 MB. Scan it smaller.').refusal,
    );
  const done = fileCertificate(shopDb(), leave.value, { ...input.data, bytes }, wallClock());
  if (!done.ok) return refusalResponse(400, done.refusal);
  revalidatePath('/gauges', 'layout');
  return Response.json({ id: done.value.id }, { headers: { 'cache-control': 'no-store' } });
});
