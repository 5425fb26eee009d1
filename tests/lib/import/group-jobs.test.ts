import { describe, expect, it } from 'vitest';
import { groupJobs } from '@/lib/import/group-jobs';
import { makeShopIndex } from '@/lib/import/shop-index';
import { DIE, HIGH, MATERIALS, MEDIUM } from '@/tests/support/db';
import { jobRow } from '@/tests/support/import-rows';

const index = makeShopIndex({ connections: [MEDIUM, HIGH], materials: MATERIALS, people: [], parts: [DIE] });

describe('groupJobs', () => {
  it('puts the rows of a job together and numbers them where they have no numbers', () => {
    const groups = groupJobs(index, [
      jobRow({ title: 'Manifold' }),
      jobRow({ rowNo: 3, job: 'J-2', line: 7 }),
      jobRow({ rowNo: 4, ends: 6 }),
    ]);
    expect(groups.map(({ job }) => [job.id, job.title, job.lines.map((line) => line.lineNo)])).toEqual([
      ['J-1', 'Manifold', [1, 2]],
      ['J-2', '', [7]],
    ]);
    expect(groups[0]).toMatchObject({ rowNos: [2, 4], lineNos: [1, 2], faults: [], remarks: [] });
  });

  it('keeps a size and a material that the shop does not know, with a remark', () => {
    const [group] = groupJobs(index, [jobRow({ size: { num: 1, den: 1 }, material: 'Ti-2' })]);
    expect(group?.job.lines[0]).toMatchObject({ connectionId: '1-high', materialId: 'Ti-2' });
    expect(group?.remarks).toHaveLength(2);
    expect(groupJobs(index, [jobRow({ material: 'two words' })])[0]?.faults).toMatchObject([
      { key: 'material' },
    ]);
  });

  it('finds lines numbered twice or half, and rows that contradict each other', () => {
    const faults = (...rows: ReturnType<typeof jobRow>[]) =>
      groupJobs(index, rows)[0]?.faults.map(({ rowNo, key }) => [rowNo, key]);
    expect(faults(jobRow({ line: 1 }), jobRow({ rowNo: 3, line: 1 }))).toEqual([[3, 'line']]);
    expect(faults(jobRow({ line: 1 }), jobRow({ rowNo: 3 }))).toEqual([[3, 'line']]);
    expect(faults(jobRow({ title: 'a' }), jobRow({ rowNo: 3, title: 'b' }))).toEqual([[3, 'title']]);
    expect(faults(jobRow(), jobRow({ rowNo: 3, status: 'done' }))).toEqual([[3, 'status']]);
    expect(faults(...Array.from({ length: 201 }, (_, at) => jobRow({ rowNo: at + 2 })))).toEqual([
      [202, 'job'],
    ]);
  });
});
