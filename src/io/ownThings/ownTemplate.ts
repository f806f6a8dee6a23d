import type { Key, Section } from '../setup/keyKinds.ts'
import { keyLines } from '../setup/keyLines.ts'
import { bodyKeys } from './bodyKeys.ts'
import { liquidKeys } from './liquidKeys.ts'

/** What a file may begin with. */
export const ownStarters = ['body', 'liquid', 'flow-curve'] as const

/** One of these. */
export type OwnStarter = (typeof ownStarters)[number]

const opening = [
  'A body or a liquid of your own, for Kufe. Every value is an example: put in your own, with its unit.',
  'A key behind a # without a blank is switched off; take the # away to use it.',
]

/** Keys that are switched on although a file may do without them. */
const on: Readonly<Record<OwnStarter, readonly string[]>> = {
  body: ['elasticModulus', 'poissonRatio'],
  liquid: ['viscosities'],
  'flow-curve': ['flowCurve'],
}

/** A file to start from. */
export function ownTemplate(starter: OwnStarter, schema = 'material.schema.json'): string {
  const section = starter === 'body' ? bodyKeys : liquidKeys
  const keys = Object.fromEntries(
    Object.entries(section.keys).map(([name, key]): [string, Key] => [
      name,
      on[starter].includes(name) ? { ...key, required: true } : key,
    ]),
  )
  const whole: Section = { ...section, required: true, keys }
  const head = [`# yaml-language-server: $schema=${schema}`, ...opening.map((line) => `# ${line}`)]
  const lines = keyLines(starter === 'body' ? 'body' : 'liquid', whole, { kind: '', indent: '' })
  return `${[...head, '', ...lines].join('\n')}\n`
}
