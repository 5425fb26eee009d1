'use client';

import { CameraScan } from './camera-scan';

/** The camera beside a box that is sent to an address: goes there with what was read, as the sent box would. */
export function CameraGo({ action, name }: { readonly action: string; readonly name: string }) {
  return (
    <CameraScan onScan={(text) => location.assign(`${action}?${new URLSearchParams({ [name]: text })}`)} />
  );
}
