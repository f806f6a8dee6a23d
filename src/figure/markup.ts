/** SVG as text, built from the inside out. Text is escaped and numbers are rounded here, so that equal data give equal bytes. */
export type Markup = string

type Attributes = Readonly<Record<string, string | number | undefined>>

/** One element. Attributes that are undefined are left out. */
export function element(name: string, attributes: Attributes, ...children: readonly Markup[]): Markup {
  let head = name
  for (const [key, value] of Object.entries(attributes)) {
    if (value === undefined) continue
    head += ` ${key}="${typeof value === 'number' ? rounded(value) : escaped(value)}"`
  }
  return children.length === 0 ? `<${head}/>` : `<${head}>${children.join('')}</${name}>`
}

/** A hundredth of a pixel is finer than any eye or printer. */
export const rounded = (value: number): string => {
  const text = value.toFixed(2).replace(/\.?0+$/, '')
  return text === '-0' ? '0' : text
}

/** Text for an element or an attribute. Characters that XML refuses are dropped. */
export function escaped(text: string): string {
  if (!suspicious.test(text)) return text
  return [...text]
    .filter(allowed)
    .join('')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
}

/** Whatever may need a closer look; paths of ten thousand letters hold nothing of it. */
const suspicious = /[^\u0020-\ud7ff]|[&<>"]/

/** XML 1.0, production 2 (Char). A lone surrogate is no character. */
function allowed(character: string): boolean {
  const code = character.codePointAt(0) ?? 0
  if (code < 0x20) return code === 0x9 || code === 0xa || code === 0xd
  return !(code >= 0xd800 && code <= 0xdfff) && code !== 0xfffe && code !== 0xffff
}
