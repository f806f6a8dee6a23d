import { fixtureGeometry } from '../fixture/index.ts'
import { randomFrom } from '../numeric/index.ts'
import type { PascalSecond, Setup } from '../terms/index.ts'
import { familyLaw } from './familyLaw.ts'
import { between, evenInLog } from './sampleNumbers.ts'
import { exactSetup, threeBallsOf } from './sampleOneStep.ts'
import { usualColumns, type VirtualRun } from './virtualRun.ts'

/** One liquid of a virtual series: its record, what the setup says of its viscosity, and what that truly is. */
export interface SampledLiquid {
  readonly run: VirtualRun
  readonly setup: Setup
  readonly trueViscosity: PascalSecond
  readonly seed: number
}

/** Several liquids on one pair for the coverage study, on one true curve over ηv. */
export interface SampledMaster {
  readonly liquids: readonly SampledLiquid[]
  readonly viscosityUncertainty: number
}

/**
 * Three to five liquids of 1 mPa·s to a few Pa·s, each swept over two decades of speed, on one Stribeck curve over ηv; viscosities are told with an error
 * of 1 to 10 % (standard), torque and force with noise that remembers.
 */
export function sampleMaster(seed: number, index: number): SampledMaster {
  const random = randomFrom(seed, index)
  const fixture = threeBallsOf(6.35e-3)
  const { lever, loadFactor } = fixtureGeometry(fixture)
  const axialForce = evenInLog(random, 1, 5)
  const count = 3 + random.integer(3)
  const apart = evenInLog(random, 3, 8)
  const viscosityUncertainty = evenInLog(random, 0.01, 0.1)
  const [h, n, m] = [between(random, 0.2, 0.5), between(random, 0.3, 0.6), between(random, 1, 1.8)]
  // The transition lies in the middle of what all liquids reach together.
  const middle = 1e-3 * Math.sqrt(apart) ** (count - 1) * 0.02
  const k = (h * between(random, 0.05, 0.2)) / (middle * 3) ** n
  const seconds = 8
  const liquids = Array.from({ length: count }, (_, i): SampledLiquid => {
    const trueViscosity = 1e-3 * apart ** i
    const friction = familyLaw('stribeck', { k: k * trueViscosity ** n, n, h, x0: middle / trueViscosity, m })
    const torque = h * loadFactor * lever * axialForce
    const told = trueViscosity * Math.exp(viscosityUncertainty * random.normal())
    const noise = torque * evenInLog(random, 3e-4, 5e-3)
    const run: VirtualRun = {
      fixture,
      rig: {
        noise: {
          torque: { white: noise, correlated: noise, correlation: between(random, 0, 0.8) },
          axialForce: { white: 2e-3 * axialForce },
        },
        riseTime: 0.1,
      },
      sheet: {
        speeds: { kind: 'range', slowest: 2e-3, fastest: 0.2, perDecade: 5, direction: 'up' },
        dwell: { kind: 'time', seconds },
        samplingRate: 15,
        axialForce,
        temperature: 298.15,
        gap: 0,
        blankBefore: false,
        blankAfter: false,
        lift: 1e-3,
      },
      friction,
      disturbances: {},
      columns: usualColumns,
    }
    const setup: Setup = {
      ...exactSetup(fixture, axialForce),
      liquid: {
        name: `liquid ${i + 1}`,
        viscosity: told,
        viscosityUncertainty: viscosityUncertainty * told,
      },
    }
    return { run, setup, trueViscosity, seed: random.integer(4294967296) }
  })
  return { liquids, viscosityUncertainty }
}
