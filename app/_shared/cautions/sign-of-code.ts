import type { SignName } from '@/app/_shared/ui/safety-sign-drawings';
import type { SignCode } from '@/lib/cautions';

/** Our drawing of each registered sign that a caution names. */
export const SIGN_OF_CODE: Record<SignCode, SignName> = {
  M001: 'general-must',
  M002: 'read-manual',
  M004: 'eye-protection',
  M009: 'hand-protection',
  M011: 'wash-hands',
  M022: 'skin-cream',
  P001: 'general-prohibition',
  P011: 'no-water-on-fire',
  P028: 'no-gloves',
  W001: 'general-warning',
  W021: 'flammable',
  W022: 'sharp',
  W028: 'oxidizing',
  W029: 'pressure',
};
