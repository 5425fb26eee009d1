import { checked, text, textOrNull } from '@/app/_server/form-fields';
import { GHS_CODES } from '@/lib/shop/ghs';

/** What a form says of a lot; zod judges it afterwards. Hazard statements stand one to a line. */
export function fluidLotOfForm(form: FormData): Record<string, unknown> {
  return {
    partId: text(form, 'partId'),
    lot: text(form, 'lot'),
    shelfLife: text(form, 'shelfLife'),
    chlorinated: text(form, 'chlorinated'),
    supplierAnswer: text(form, 'supplierAnswer'),
    productIdentifier: text(form, 'productIdentifier'),
    sdsRevision: text(form, 'sdsRevision'),
    sdsOnDay: textOrNull(form, 'sdsOnDay'),
    sdsKeptAt: text(form, 'sdsKeptAt'),
    signal: textOrNull(form, 'signal'),
    pictograms: GHS_CODES.filter((code) => checked(form, `pictogram-${code}`)),
    hazards: linesOf(text(form, 'hazards')),
    usedAt: text(form, 'usedAt'),
    storage: text(form, 'storage'),
    firstAid: text(form, 'firstAid'),
    disposal: text(form, 'disposal'),
    reviewOnDay: textOrNull(form, 'reviewOnDay'),
  };
}

function linesOf(typed: string): string[] {
  return typed
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter((line) => line !== '');
}
