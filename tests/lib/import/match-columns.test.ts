import { describe, expect, it } from 'vitest';
import { judgeMapping, matchColumns } from '@/lib/import/match-columns';

describe('matchColumns', () => {
  it('finds our columns under other names and in any order', () => {
    const match = matchColumns('cuts', ['Material', 'Cones', 'Date', 'Die', 'OD', 'Pressure', 'Weather']);
    expect(match.mapping).toEqual(['material', 'ends', 'cut_on', 'tool_id', 'size', 'service', null]);
    expect(match.unread).toEqual(['Weather']);
    expect(match.missing).toEqual([]);
  });

  it('names what is missing', () => {
    const { missing } = matchColumns('jobs', ['job', 'size', 'ends', 'due']);
    expect(missing.map((column) => column.key)).toEqual(['service', 'material', 'start_on']);
  });

  it('prefers our own header to another name, and the first of two equal ones', () => {
    expect(matchColumns('tools', ['id', 'tool_id', 'kind', 'Kind']).mapping).toEqual([
      null,
      'tool_id',
      'kind',
      null,
    ]);
  });

  it('is not led astray by headers that are names of built-in things', () => {
    const header = ['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'tool_id', 'kind'];
    const match = matchColumns('tools', header);
    expect(match.mapping).toEqual([null, null, null, null, 'tool_id', 'kind']);
    expect(match.unread).toEqual(header.slice(0, 4));
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });
});

describe('judgeMapping', () => {
  const header = ['a', 'b', 'c'];

  it('takes a mapping that a person chose', () => {
    expect(judgeMapping('tools', header, ['kind', 'tool_id', null])).toMatchObject({
      missing: [],
      doubled: [],
      unread: ['c'],
    });
  });

  it('says what is read twice and passes over keys that are none of ours', () => {
    expect(judgeMapping('tools', header, ['tool_id', 'tool_id', 'kind']).doubled).toEqual(['tool_id']);
    expect(judgeMapping('tools', header, ['tool_id', 'kind', '__proto__']).mapping).toEqual([
      'tool_id',
      'kind',
      null,
    ]);
    expect(judgeMapping('tools', header, []).mapping).toEqual([null, null, null]);
  });
});
