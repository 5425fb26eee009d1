/** A key made from a name: "Tech 2" becomes "tech-2", "Jörg" "jorg"; a name in another script becomes its letters' numbers. */
export function keyFromName(name: string): string {
  const plain = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  const letters = [...name].map((letter) => (letter.codePointAt(0) ?? 0).toString(36)).join('');
  return (/[a-z]/.test(plain) ? plain : `p-${letters}`).slice(0, 60);
}
