import { type CheckedSetup, type FilledSetup, fixtureInWords } from '../../bench/index.ts'
import { printQuantity } from '../../core/quantity/index.ts'
import { schemaVersion } from '../../core/terms/index.ts'

/** What a setup that holds together comes to, in the numbers that turn torque into friction. */
export function setupInWords(file: string, { setup, geometry }: CheckedSetup): string {
  const lever = printQuantity(geometry.lever, 'length')
  const path = printQuantity(geometry.pathPerTurn, 'length')
  const unsure = printQuantity(geometry.leverLoadUncertainty, 'ratio', { digits: 2 })
  return [
    `${file} holds together.`,
    `  ${fixtureInWords(setup)}: ${setup.pair.upper.name} on ${setup.pair.lower.name}`,
    `  lever arm ${lever}, load factor ${Number(geometry.loadFactor.toPrecision(6))}, ${path} of sliding a turn`,
    `  lever arm and load factor together known to ${unsure} (standard uncertainty)`,
    ...unsaid(setup),
    '',
  ].join('\n')
}

/** What nobody said, and so what no answer can be had about. */
function unsaid({ rig, run, liquid }: CheckedSetup['setup']): readonly string[] {
  const missing = [
    rig.torque.floor === undefined ? 'torque floor' : '',
    rig.torque.ceiling === undefined ? 'torque ceiling' : '',
    rig.inertia === undefined ? 'inertia' : '',
    rig.torsionalStiffness === undefined ? 'torsional stiffness' : '',
    run.axialForce === undefined ? 'commanded axial force' : '',
    liquid !== undefined && liquid.viscosity === undefined ? 'viscosity' : '',
  ].filter((name) => name !== '')
  return missing.length === 0 ? [] : [`  not said, and so not judged: ${missing.join(', ')}`]
}

/** The starter itself, or where it was written and what to do with it. */
export function setupWritten(starter: string, { out, json }: { readonly out?: string; readonly json?: true }): string {
  if (json === true) return `${JSON.stringify({ schemaVersion, file: out ?? null, setup: starter }, null, 2)}\n`
  if (out === undefined) return starter
  return `Wrote ${out}. Put in your own values, then: kufe setup --check ${out}\n`
}

/** A filled setup itself, or where it was written and what was taken over. */
export function filledInWords(
  { text, taken }: FilledSetup,
  { out, json }: { readonly out?: string; readonly json?: true },
): string {
  if (json === true) return `${JSON.stringify({ schemaVersion, file: out ?? null, taken, setup: text }, null, 2)}\n`
  if (out === undefined) return text
  const told = taken.length === 0 ? ['Nothing was lacking that a table knows.'] : taken
  return `Wrote ${out}.\n${told.map((sentence) => `  ${sentence}\n`).join('')}`
}
