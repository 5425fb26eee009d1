import { NumberField, type Option, Select } from '@/app/_shared/ui';
import { DUTIES, DUTY_LABEL } from '@/lib/shop/duty';
import type { Part } from '@/lib/shop/part';
import { Ticks } from './ticks';

const CHLORINATED = [
  { value: 'unknown', label: 'not known: ask the supplier' },
  { value: 'no', label: 'no' },
  { value: 'yes', label: 'yes' },
];

/** What a cutting fluid may be used on, and how long it keeps. */
export function FluidPart({
  part,
  materials,
}: {
  readonly part: Part | null;
  readonly materials: readonly Option[];
}) {
  const permitted = part?.permittedMaterialIds ?? [];
  const shown = (value: number | null | undefined) =>
    value === null || value === undefined ? '' : String(value);
  return (
    <>
      <label className="check">
        <input type="checkbox" name="permitsAll" defaultChecked={permitted === 'all'} /> Permitted on every
        material
      </label>
      <Ticks
        legend="Or permitted on"
        name="permits"
        options={materials}
        ticked={permitted === 'all' ? [] : permitted}
      />
      <Ticks
        legend="Permitted for"
        name="duties"
        options={DUTIES.map((duty) => ({ value: duty, label: DUTY_LABEL[duty] }))}
        ticked={part?.permittedDuties ?? ['ordinary']}
      />
      <p className="fine">
        What its safety data sheet and the job’s own rules permit. Titanium and oxygen service need a fluid
        that says so.
      </p>
      <div className="columns">
        <Select
          name="chlorinated"
          label="Contains chlorinated paraffins"
          options={CHLORINATED}
          defaultValue={part?.chlorinated ?? 'unknown'}
        />
        <NumberField
          name="openedLifeDays"
          label="Keeps, once opened"
          unit="days"
          optional
          defaultValue={shown(part?.openedLifeDays)}
          answers="part.openedLifeDays"
        />
        <NumberField
          name="shelfLifeDays"
          label="Keeps, closed"
          unit="days"
          optional
          defaultValue={shown(part?.shelfLifeDays)}
          answers="part.shelfLifeDays"
        />
        <NumberField
          name="dropsPerMl"
          label="Drops in a millilitre"
          hint="Count 100 drops into a measure: oils give 34 to 68"
          entry="decimal"
          unit="drops"
          optional
          defaultValue={shown(part?.dropsPerMl)}
          answers="part.dropsPerMl"
        />
        <NumberField
          name="containerMl"
          label="One container holds"
          entry="decimal"
          unit="mL"
          optional
          defaultValue={shown(part?.containerMl)}
          answers="part.containerMl"
        />
      </div>
    </>
  );
}
