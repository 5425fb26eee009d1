import type { Duty } from '../shop/duty';
import type { Chlorinated } from '../shop/fluid-lot';

/** What is to be cut: the material, whether it is titanium, and what the tube will carry. */
export interface FluidWork {
  readonly materialId: string;
  readonly titanium: boolean;
  readonly duty: Duty;
}

/**
 * The work of a line as the fluids see it: its material, whether that is titanium, and what the tube will carry; ordinary
 * service where nobody has said so. A material that is not in the shop's table is judged by its key.
 * @example fluidWorkOf({ materialId: 'ti-2' }, undefined).titanium // => true
 */
export function fluidWorkOf(
  { materialId, duty = 'ordinary' }: { readonly materialId: string; readonly duty?: Duty | undefined },
  material: { readonly id: string; readonly name: string } | undefined,
): FluidWork {
  return { materialId, titanium: isTitanium(material ?? { id: materialId, name: '' }), duty };
}

/** What a fluid is permitted on. */
export interface FluidPermit {
  readonly permittedMaterialIds: readonly string[] | 'all' | undefined;
  /** Absent: ordinary service only. */
  readonly permittedDuties?: readonly Duty[] | undefined;
  readonly chlorinated: Chlorinated;
}

/** Why a fluid may not be used: its list leaves the material out, chlorine on titanium, or the service is not flagged. */
export type FluidObjection = 'material' | 'titanium-chlorinated' | 'titanium-unknown' | 'duty';

/**
 * Why a fluid may not be used on the work; null where it may. Chlorinated fluids, and those of which nobody knows, are kept
 * off titanium (published practice notes; common practice). No list of materials permits nothing.
 * @example fluidObjection({ permittedMaterialIds: 'all', chlorinated: 'unknown' }, { materialId: 'ti-2', titanium: true, duty: 'ordinary' }) // => "titanium-unknown"
 */
export function fluidObjection(fluid: FluidPermit, work: FluidWork): FluidObjection | null {
  if (work.titanium && fluid.chlorinated === 'yes') return 'titanium-chlorinated';
  if (work.titanium && fluid.chlorinated === 'unknown') return 'titanium-unknown';
  if (!(fluid.permittedDuties ?? ['ordinary']).includes(work.duty)) return 'duty';
  const { permittedMaterialIds: materials } = fluid;
  if (materials === 'all' || materials?.includes(work.materialId)) return null;
  return 'material';
}

/**
 * Whether a material is titanium, by its key or name: "ti-2", "Titanium grade 2", "R50400".
 * @example isTitanium({ id: 'ti-2', name: 'Titanium grade 2' }) // => true
 */
export function isTitanium({ id, name }: { readonly id: string; readonly name: string }): boolean {
  return [id, name].some((text) => /titan/i.test(text) || /^ti\b/i.test(text) || /^r5\d{4}$/i.test(text));
}
