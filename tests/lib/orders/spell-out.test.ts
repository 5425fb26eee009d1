import { expect, it } from 'vitest';
import { lookAlikes, spellOut } from '@/lib/orders/spell-out';
import { completeSetParts } from '@/lib/shipped/complete-set-parts';
import { SHIPPED_CONNECTIONS } from '@/lib/shipped/connections';

const partOf = (connectionId: string, role: string) => {
  const connection = SHIPPED_CONNECTIONS.find(({ id }) => id === connectionId);
  const part = connection && completeSetParts(connection).find((known) => known.role === role);
  if (part === undefined) throw new Error(`no ${role} of ${connectionId}`);
  return part;
};

// source: published. ASME B1.1: 1-14 is a special thread, fine at 1 in is 12; 9/16 fine is 18. Left hand is always stated.
it('spells the designation and the hand out, and says what it is not', () => {
  expect(spellOut(partOf('9-16-medium', 'die'), SHIPPED_CONNECTIONS).text).toBe(
    '9/16-18 UNF-LH die, adjustable split — left hand',
  );
  expect(lookAlikes(partOf('1-medium', 'die'), SHIPPED_CONNECTIONS)).toEqual(
    expect.arrayContaining([
      'Not right hand: 1-14 UNS looks the same in the box.',
      '1-14 UNS-LH is not 1-12 UNF-LH.',
    ]),
  );
});

it('says when a designation leaves the pitch or the hand out', () => {
  const vague = { ...partOf('9-16-medium', 'die'), designation: '9/16 die' };
  expect(lookAlikes(vague, SHIPPED_CONNECTIONS).join(' ')).toMatch(
    /does not say the pitch.*does not say left hand/,
  );
});

// source: hand. The 16 of 9/16 is its size. A designation says the pitch where it stands as a figure of its own.
it('does not take a figure of the size for the pitch', () => {
  const die = partOf('9-16-medium', 'die');
  const coarse = SHIPPED_CONNECTIONS.map((row) => (row.id === '9-16-medium' ? { ...row, tpi: 16 } : row));
  const warns = (designation: string) =>
    lookAlikes({ ...die, designation }, coarse).some((warning) => warning.includes('does not say the pitch'));
  expect(warns('9/16 UN-LH die')).toBe(true);
  for (const said of ['9/16-16 UN-LH die', '9/16 x 16 LH', '9/16"-16UN-LH'])
    expect(warns(said), said).toBe(false);
});

it('a part without a hand has no look-alikes; one without a designation goes by its name', () => {
  const blade = { ...partOf('9-16-medium', 'blade'), designation: '' };
  expect(spellOut(blade, SHIPPED_CONNECTIONS)).toEqual({
    ...{ designation: blade.name, text: blade.name, handWords: null, warnings: [] },
  });
});
