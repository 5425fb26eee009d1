/** <ConnectionEnd connection={…} />: the tube end of a row of the shop's size table. Props of <TubeEnd> pass through. */

import type { Connection } from '@/lib/shop/noun';
import { mmToIn } from '@/lib/units/inch-mm';
import { TubeEnd, type TubeEndProps } from './tube-end';

type Passed = Pick<TubeEndProps, 'pxPerIn' | 'view' | 'unit' | 'framed' | 'decorative'>;

export function ConnectionEnd({ connection, ...passed }: Passed & { readonly connection: Connection }) {
  const { odNum, odDen, noseMm, threadLengthMm, tpi, hand, service, coneAngleDeg, confirmed } = connection;
  return (
    <TubeEnd
      odIn={odNum / odDen}
      noseIn={mmToIn(noseMm)}
      threadLengthIn={mmToIn(threadLengthMm)}
      {...{ tpi, hand, service, coneAngleDeg, confirmed }}
      {...passed}
    />
  );
}
