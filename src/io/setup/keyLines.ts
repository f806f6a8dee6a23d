import type { Key, Section } from './keyKinds.ts'

/** The kind of fixture asked for, and how far in the lines stand. */
export interface Spot {
  readonly kind: string
  readonly indent: string
}

/** Longest line of a comment. */
const width = 100

/** The lines of one key: its words, and its example switched on where it is required. */
export function keyLines(name: string, key: Key, { kind, indent }: Spot): string[] {
  const spot = { kind, indent }
  const inner = `${indent}  `
  switch (key.is) {
    case 'section':
      return sectionLines(name, key, spot)
    case 'variants': {
      const variant = key.variants[kind]
      const words = Object.keys(key.variants).map((word) => `"${word}"`)
      const about = `${key.about} Kinds: ${words.join(', ')}. This one: ${variant.about}`
      return [...comment(about, indent), `${indent}${name}:`, ...innerLines(variant, { kind, indent: inner })]
    }
    case 'columns':
      return [
        ...comment(key.about, indent),
        `${indent}#${name}:`,
        `${inner}#"M [mNm]": { channel: torque, unit: mN·m }`,
      ]
    default: {
      const off = key.required === true ? '' : '#'
      const standard = key.is !== 'text' && key.default !== undefined ? ` Default: ${key.default}.` : ''
      return [...comment(key.about + standard, indent), `${indent}${off}${name}: ${key.example}`]
    }
  }
}

function sectionLines(name: string, section: Section, { kind, indent }: Spot): string[] {
  const needs = Object.values(section.keys).some((key) => key.required === true)
  const lines = innerLines(section, { kind, indent: `${indent}  ` })
  const whole = [`${indent}${name}:`, ...lines]
  // A section that may be left out but has required keys is switched off as a whole.
  const off =
    section.required !== true && needs ? whole.map((line) => line.replace(/^(\s*)(?=[a-z]\w*:)/i, '$1#')) : whole
  return [...comment(section.about, indent), ...off]
}

const innerLines = (section: Section, spot: Spot): string[] =>
  Object.entries(section.keys).flatMap(([name, key]) => keyLines(name, key, spot))

function comment(text: string, indent: string): string[] {
  const lines = ['']
  for (const word of text.split(' ')) {
    const last = lines[lines.length - 1]
    if (last !== '' && indent.length + last.length + word.length + 3 > width) lines.push(word)
    else lines[lines.length - 1] = last === '' ? word : `${last} ${word}`
  }
  return lines.map((line) => `${indent}# ${line}`)
}
