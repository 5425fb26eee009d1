import type { Material } from '@/lib/shop/noun';

/** A material as the bench calls it, with its condition: "316 cold-worked". The name alone may mean several. */
export function materialWords({ name, condition }: Pick<Material, 'name' | 'condition'>): string {
  return condition === '' ? name : `${name} ${condition}`;
}
