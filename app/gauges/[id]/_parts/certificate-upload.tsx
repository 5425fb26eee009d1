'use client';

import { useRouter } from 'next/navigation';
import { useId, useState } from 'react';
import { newDeviceId } from '@/app/_shared/form/device-id';
import styles from './certificate-upload.module.css';

interface CertificateUploadProps {
  readonly toolId: string;
  readonly calibrationId: string;
}

/** Files a scan or PDF of a certificate. Needs script: the bytes are sent as they are. */
export function CertificateUpload({ toolId, calibrationId }: CertificateUploadProps) {
  const router = useRouter();
  const id = useId();
  const [said, setSaid] = useState('');

  async function send(file: File) {
    setSaid('Filing…');
    const asked = new URLSearchParams({
      ...{ gauge: toolId, calibration: calibrationId, name: file.name },
      ...{ entryId: newDeviceId(), deviceAtMs: String(Date.now()) },
    });
    const answer = await fetch(`/gauges/upload?${asked}`, {
      method: 'POST',
      headers: { 'content-type': 'application/octet-stream' },
      body: file,
    }).catch(() => undefined);
    if (answer?.ok) {
      setSaid('Filed.');
      router.refresh();
      return;
    }
    const told = (await answer?.json().catch(() => undefined)) as { sentence?: string } | undefined;
    setSaid(told?.sentence ?? 'It could not be sent. Try again.');
  }

  return (
    <div className="stack-tight">
      <label htmlFor={id}>File the certificate</label>
      <input
        className={styles.file}
        id={id}
        type="file"
        accept="application/pdf,image/png,image/jpeg"
        onChange={(event) => {
          const file = event.currentTarget.files?.[0];
          if (file) void send(file);
        }}
      />
      <span className="fine" role="status">
        {said === '' ? 'PDF, PNG or JPEG, up to 5 MB' : said}
      </span>
    </div>
  );
}
