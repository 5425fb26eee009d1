/** An entry ID made on the device: 26 characters of 130 random bits. Works on plain http, where randomUUID does not. */
export function newDeviceId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(26));
  return Array.from(bytes, (byte) => ALPHABET[byte % 32]).join('');
}

/** 32 letters and figures, without i, l, o and u. */
const ALPHABET = '0123456789abcdefghjkmnpqrstvwxyz';
