import type { Metadata } from 'next';
import { headers } from 'next/headers';
import { fingerprintLines, servedHttps } from '@/app/_server/served-https';
import { Breadcrumb, TitleBlock } from '@/app/_shared/ui';
import { HttpsOff } from './_parts/https-off';
import { OnlyHere } from './_parts/only-here';
import { tabletAddresses } from './_parts/tablet-addresses';
import { TrustSteps } from './_parts/trust-steps';
import { WhatWorks } from './_parts/what-works';

export const dynamic = 'force-dynamic';
export const metadata: Metadata = { title: 'Tablets' };

/** Walks a tablet to the address that opens without network and lends the camera. */
export default async function TrustPage() {
  const https = servedHttps();
  const [address, ...others] =
    https === undefined ? [] : tabletAddresses(https, (await headers()).get('host'));
  return (
    <div className="page">
      <Breadcrumb trail={[{ href: '/rooms', label: 'All pages' }]} here="Tablets" />
      <TitleBlock
        title="Tablets"
        lead="The shop’s https address opens the bench where there is no network, and reads codes with the camera. Each tablet must once be told to trust it."
      />
      {https === undefined ? (
        <HttpsOff />
      ) : address === undefined ? (
        <OnlyHere port={https.port} />
      ) : (
        <TrustSteps address={address} others={others} fingerprint={fingerprintLines(https.authority)} />
      )}
      <WhatWorks />
    </div>
  );
}
