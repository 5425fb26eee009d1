import { expect, it } from 'vitest';
import { fluidObjection, fluidWorkOf, isTitanium } from '@/lib/fluid/permit-fluid';

const steel = { materialId: '316', titanium: false, duty: 'ordinary' } as const;
const titanium = { materialId: 'ti-2', titanium: true, duty: 'ordinary' } as const;
const oil = { permittedMaterialIds: 'all', chlorinated: 'no' } as const;

// source: published. Practice notes on titanium: chlorinated fluids are avoided; who does not know does not use it.
it('keeps chlorine, and what nobody knows of, off titanium only', () => {
  expect(fluidObjection({ ...oil, chlorinated: 'yes' }, titanium)).toBe('titanium-chlorinated');
  expect(fluidObjection({ ...oil, chlorinated: 'unknown' }, titanium)).toBe('titanium-unknown');
  expect(fluidObjection(oil, titanium)).toBeNull();
  expect(fluidObjection({ ...oil, chlorinated: 'yes' }, steel)).toBeNull();
});

// source: hand. Stated: a fluid is permitted where somebody has flagged it.
it('asks for the service to be flagged, and for the material', () => {
  expect(fluidObjection(oil, { ...steel, duty: 'oxygen' })).toBe('duty');
  expect(fluidObjection({ ...oil, permittedDuties: ['oxygen'] }, { ...steel, duty: 'oxygen' })).toBeNull();
  expect(fluidObjection({ ...oil, permittedDuties: ['oxygen'] }, steel)).toBe('duty');
  expect(fluidObjection({ ...oil, permittedMaterialIds: ['2507'] }, steel)).toBe('material');
  expect(fluidObjection({ ...oil, permittedMaterialIds: undefined }, steel)).toBe('material');
});

// source: published. UNS R50400 is titanium grade 2 (number from memory); the others are not titanium.
it('knows titanium by its key, name or UNS number', () => {
  expect(isTitanium({ id: 'ti-2', name: 'Titanium grade 2' })).toBe(true);
  expect(isTitanium({ id: 'x', name: 'Ti 6Al-4V' })).toBe(true);
  expect(isTitanium({ id: 'R50400', name: '' })).toBe(true);
  for (const name of ['316, cold-worked', '2507 super duplex', 'Alloy 625', 'C-276'])
    expect(isTitanium({ id: 'm', name })).toBe(false);
});

// source: hand. Ordinary service where nobody says; titanium by the material's name, or by its key where it is in no table.
it('sees a line by its material and its service', () => {
  expect(fluidWorkOf({ materialId: '316' }, { id: '316', name: '316, cold-worked' })).toEqual(steel);
  expect(fluidWorkOf({ materialId: 'm-7', duty: 'oxygen' }, { id: 'm-7', name: 'Titanium grade 2' })).toEqual(
    {
      ...{ materialId: 'm-7', titanium: true, duty: 'oxygen' },
    },
  );
  expect(fluidWorkOf({ materialId: 'ti-2' }, undefined).titanium).toBe(true);
});
