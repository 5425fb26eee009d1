/**
 * For each taker, whether the pools that it is bound up with, directly or through other takers, reach nested or
 * disjoint sets of takers. There "from the pool that the fewest can reach" is an optimal way to share; elsewhere
 * takers may have to be moved. A die for one size and one that serves two cross only when a third serves just the other.
 */
export function nestedTakers(
  pools: readonly { readonly reach: readonly number[] }[],
  byTaker: readonly (readonly number[])[],
): boolean[] {
  const group = groupPools(pools, byTaker);
  const crossed = new Set<number>();
  const reaches = pools.map(({ reach }) => new Set(reach));
  for (let a = 0; a < pools.length; a++)
    for (let b = a + 1; b < pools.length; b++)
      if (group[a] === group[b] && crosses(reaches[a], reaches[b])) crossed.add(group[a] as number);
  return byTaker.map((mine) => mine[0] === undefined || !crossed.has(group[mine[0]] as number));
}

function crosses(a: ReadonlySet<number> | undefined, b: ReadonlySet<number> | undefined): boolean {
  if (a === undefined || b === undefined) return false;
  let shared = 0;
  for (const taker of a) if (b.has(taker)) shared++;
  return shared > 0 && shared < a.size && shared < b.size;
}

/** Pools bound together by common takers carry the same group number. */
function groupPools(
  pools: readonly { readonly reach: readonly number[] }[],
  byTaker: readonly (readonly number[])[],
): number[] {
  const group = pools.map(() => -1);
  for (let first = 0; first < pools.length; first++) {
    if (group[first] !== -1) continue;
    const open = [first];
    group[first] = first;
    for (let p = open.pop(); p !== undefined; p = open.pop())
      for (const taker of pools[p]?.reach ?? [])
        for (const q of byTaker[taker] ?? [])
          if (group[q] === -1) {
            group[q] = first;
            open.push(q);
          }
  }
  return group;
}
