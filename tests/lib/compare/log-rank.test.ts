import { describe, expect, it } from 'vitest';
import { logRank } from '@/lib/compare/log-rank';
import { relativeMiss } from '@/tests/support/relative-miss';
import reference from '../../fixtures/compare/log-rank.json';

function grouped(group: readonly number[], time: readonly number[], worn: readonly number[]) {
  const ids = [...new Set(group)].sort((a, b) => a - b);
  return ids.map((id) => ({
    groupId: String(id),
    lives: time.flatMap((age, i) => (group[i] === id ? [{ age, worn: worn[i] === 1 }] : [])),
  }));
}

// source: other-software. R survival::survdiff, tests/fixtures/compare/generate.R: two to five groups, with and without ties.
it.each(reference.cases)('equals survdiff, $degreesOfFreedom degrees of freedom', (entry) => {
  const test = logRank(grouped(entry.group, entry.time, entry.worn));
  expect(relativeMiss(test.chi2, entry.chi2)).toBeLessThan(1e-10);
  expect(relativeMiss(test.p, entry.p)).toBeLessThan(1e-10);
  expect(test.degreesOfFreedom).toBe(entry.degreesOfFreedom);
  test.groups.forEach((group, i) => {
    expect(group.worn).toBe(entry.observed[i]);
    expect(relativeMiss(group.expected, entry.expected[i] ?? 0)).toBeLessThan(1e-10);
  });
});

// source: other-software. R survival::survdiff with strata(), tests/fixtures/compare/generate.R.
it.each(reference.stratified)('compares only within a stratum, as survdiff with strata does', (entry) => {
  const { group, stratum, time, worn } = entry;
  const ids = [...new Set(group)].sort((a, b) => a - b);
  const groups = ids.map((id) => ({
    groupId: String(id),
    lives: time.flatMap((age, i) =>
      group[i] === id ? [{ age, worn: worn[i] === 1, stratum: String(stratum[i]) }] : [],
    ),
  }));
  const within = logRank(groups);
  expect(relativeMiss(within.chi2, entry.chi2)).toBeLessThan(1e-10);
  expect(within.degreesOfFreedom).toBe(entry.degreesOfFreedom);
  within.groups.forEach((row, i) => {
    expect(relativeMiss(row.expected, entry.expected[i] ?? 0)).toBeLessThan(1e-10);
  });
  // Negative control: thrown together, sizes that last differently look like groups that do.
  const together = logRank(grouped(group, time, worn));
  expect(relativeMiss(together.chi2, entry.chi2)).toBeGreaterThan(0.01);
});

describe('without a difference to see', () => {
  const lives = [5, 7, 9].map((age) => ({ age, worn: true }));

  // source: identity. Two groups of the same lives differ by nothing.
  it('is 0 for groups that are alike', () => {
    const { chi2, p } = logRank([
      { groupId: 'a', lives },
      { groupId: 'b', lives },
    ]);
    expect(chi2).toBeLessThan(1e-20);
    expect(p).toBe(1);
  });

  it('has nothing to say where nothing wore out, or a group is empty', () => {
    const good = lives.map(({ age }) => ({ age, worn: false }));
    expect(
      logRank([
        { groupId: 'a', lives: good },
        { groupId: 'b', lives: good },
      ]).p,
    ).toBe(1);
    expect(
      logRank([
        { groupId: 'a', lives },
        { groupId: 'b', lives: [] },
      ]),
    ).toMatchObject({ chi2: 0, p: 1 });
  });

  it('needs two groups', () => {
    expect(() => logRank([{ groupId: 'a', lives }])).toThrow('two groups');
  });
});
