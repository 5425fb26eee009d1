import { ConnectionEnd } from '@/app/_shared/drawing/connection-end';
import { SizeText } from '@/app/_shared/ui';
import { readConnectionKey } from '@/lib/shop/connection-text';
import type { Connection } from '@/lib/shop/noun';
import styles from './plan.module.css';

/** One scale for all drawings of a page. */
const PX_PER_IN = 46;

/** The tube end of a line, drawn to scale; nothing is drawn for a size that the table has no row for. */
export function SizeDrawing({ connection }: { readonly connection: Connection | undefined }) {
  if (connection !== undefined)
    return <ConnectionEnd connection={connection} pxPerIn={PX_PER_IN} framed decorative />;
  return <span className={styles.undrawn}>not drawn: no table row</span>;
}

/** The size in words, from its table row or, without one, from its key alone. */
export function SizeWords({
  connection,
  connectionId,
}: {
  readonly connection: Connection | undefined;
  readonly connectionId: string;
}) {
  const size = connection ?? readConnectionKey(connectionId);
  return size === undefined ? (
    connectionId
  ) : (
    <SizeText odIn={size.odNum / size.odDen} service={size.service} unit />
  );
}
