const entities: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"' }

/** Title and description that an SVG of the room of figures carries for people who hear it, as plain text. */
export function descriptionOf(svg: string): string {
  const found = ['title', 'desc'].map((name) => new RegExp(`<${name}[^>]*>([^<]*)</${name}>`).exec(svg)?.[1] ?? '')
  return found
    .filter((text) => text !== '')
    .map((text) => text.replace(/&(amp|lt|gt|quot);/g, (_, name: string) => entities[name]))
    .join('. ')
}
