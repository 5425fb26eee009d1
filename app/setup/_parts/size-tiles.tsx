import type { ReactNode } from 'react';
import { ConnectionEnd } from '@/app/_shared/drawing/connection-end';
import { SizeText } from '@/app/_shared/ui';
import type { Connection } from '@/lib/shop/noun';

/** A size as a tile to tick: its key and what is drawn and written on it. */
export interface SizeTile {
  readonly id: string;
  readonly face: ReactNode;
}

/** The shipped sizes as tiles, each its own tube end drawn to one scale. */
export function sizeTiles(connections: readonly Connection[]): SizeTile[] {
  return connections.map((connection) => ({
    id: connection.id,
    face: (
      <>
        <ConnectionEnd connection={connection} framed decorative />
        <SizeText odIn={connection.odNum / connection.odDen} service={connection.service} />
      </>
    ),
  }));
}
