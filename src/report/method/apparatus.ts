import { fixtureInWords, pressureLawInWords } from '../words/fixtureInWords.ts'
import { capital, inWords, plain, printed } from '../words/printed.ts'
import type { Done } from './done.ts'

/** Rig, fixture and the formula that turns torque and axial force into friction. */
export function apparatus({ setup, geometry }: Done): string {
  const { lever, loadFactor, contacts } = geometry
  const shared =
    contacts === 1 ? 'One contact carries the load' : `${capital(inWords(contacts))} contacts share the load`
  const factor = loadFactor === 1 ? 'c = 1' : `c = ${plain(loadFactor, 5)}`
  return (
    `Friction was measured on a rotational rheometer (${setup.rig.name}) with ${fixtureInWords(setup.fixture)}. ` +
    'The coefficient of friction is µ = M/(c r F), where M is the torque and F the axial force, ' +
    `r = ${printed(lever, 'length', 5)} the lever arm, and ${factor} the sum of the normal forces of all contacts over the axial force; ` +
    `the sliding speed is v = Ω r at the angular velocity Ω. ${shared}.${pressureLawInWords(setup.fixture)}`
  )
}
