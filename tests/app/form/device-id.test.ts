import { expect, it } from 'vitest';
import { newDeviceId } from '@/app/_shared/form/device-id';
import { entryIdField } from '@/lib/shop/field';

// source: identity. What a device makes must be what the door takes.
it('makes entry IDs that the door accepts and that do not repeat', () => {
  const ids = Array.from({ length: 2000 }, newDeviceId);
  for (const id of ids) expect(entryIdField.safeParse(id).success, id).toBe(true);
  expect(new Set(ids).size).toBe(ids.length);
});
