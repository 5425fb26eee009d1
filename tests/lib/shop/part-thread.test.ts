import { expect, it } from 'vitest';
import { SHIPPED_CONNECTIONS } from '@/lib/shipped/connections';
import { threadOfPart } from '@/lib/shop/part-thread';

const find = (...fitsConnectionIds: string[]) => threadOfPart({ fitsConnectionIds }, SHIPPED_CONNECTIONS);

// source: hand. Medium and high of one size share their thread; two sizes do not.
it('finds the thread that a part is for', () => {
  expect(find('9-16-medium', '9-16-high')?.tpi).toBe(18);
  expect(find('3-4-medium')?.id).toBe('3-4-medium');
  expect(find('9-16-medium', '3-4-medium')).toBeUndefined();
  expect(find()).toBeUndefined();
});
