/** An identifier out of a name: small letters, digits and hyphens. */
export function identifierOf(name: string): string {
  const plain = name
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '')
    .slice(0, 60)
    .replace(/-+$/, '')
  return plain === '' ? 'without-letters' : plain
}
