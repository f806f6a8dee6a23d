import { capDepthOfVolume, capVolume, scarDiameterOfDepth } from '../contact/index.ts'
import { fixtureGeometry, normalLoad } from '../fixture/index.ts'
import { type Random, randomFrom } from '../numeric/index.ts'
import type { Metre, ScarReading, Setup, WornSpec } from '../terms/index.ts'
import { familyLaw } from './familyLaw.ts'
import { between, evenInLog } from './sampleNumbers.ts'
import { exactSetup, oneStep, threeBallsOf } from './sampleOneStep.ts'
import { usualColumns, type VirtualRun } from './virtualRun.ts'
import { wornGap } from './wear.ts'

/** A worn test for the coverage study, with what its numbers should be. */
export interface SampledWear {
  readonly run: VirtualRun
  readonly setup: Setup
  readonly truth: {
    /** Of all balls together and of the track, m³. */
    readonly ballVolume: number
    readonly trackVolume: number
    /** Of the balls, m³/(N·m). */
    readonly rate: number
    /** Sinking of the shaft, m. */
    readonly depth: Metre
    /** Largest scar's volume over the smallest's. */
    readonly unlike: number
  }
  readonly seed: number
}

/**
 * Three balls on one track, worn by load and distance or by an even depth per distance, whose load is shared evenly or not; scars read twice each with
 * 2 to 10 µm, three to five profiles that scatter by 2 to 10 %, a gap with noise that remembers, run-out, and a shaft that warms by up to a kelvin with a known growth.
 */
export function sampleWear(seed: number, index: number): SampledWear {
  const random = randomFrom(seed, index)
  const fixture = threeBallsOf(evenInLog(random, 4e-3, 13e-3))
  const radius = fixture.ballDiameter / 2
  const axialForce = evenInLog(random, 2, 20)
  const speed = evenInLog(random, 0.02, 0.2)
  const seconds = evenInLog(random, 200, 1000)
  const geometry = fixtureGeometry(fixture)
  const load = normalLoad(geometry, axialForce)
  const distance = speed * seconds
  // A mean scar of 0.2 to 0.6 mm.
  const mean = capVolume(evenInLog(random, 2e-4, 6e-4), radius)
  const specificRate = mean / (load * distance)
  const wear =
    random.uniform() < 0.5
      ? ({ kind: 'archard', specificRate } as const)
      : ({ kind: 'perDistance', rate: capDepthOfVolume(mean, radius) / distance } as const)
  const uneven = random.uniform() < 0.5 ? 0 : between(random, 0.1, 0.4)
  const shares = [0, 1, 2].map(() => 1 + uneven * (2 * random.uniform() - 1))
  const whole = shares.reduce((a, b) => a + b, 0)
  const volumes = shares.map((share) => (3 * mean * share) / whole)
  const trackVolume = mean * evenInLog(random, 0.3, 30)
  const found = wornSpec(random, { volumes, radius, section: trackVolume / (2 * Math.PI * fixture.trackRadius) })
  const growth = between(random, 1e-6, 2e-6)
  const run: VirtualRun = {
    fixture,
    rig: {
      noise: {
        torque: { white: 1e-6 },
        axialForce: { white: 1e-3 * axialForce },
        gap: { white: 5e-8, correlated: evenInLog(random, 3e-8, 3e-7), correlation: between(random, 0, 0.9) },
        temperature: { white: 0.01 },
      },
      riseTime: 0,
    },
    sheet: oneStep({ speed, seconds, samplingRate: Math.max(2, Math.round(2000 / seconds)), axialForce }),
    friction: familyLaw('plateau', { h: 0.3 }),
    disturbances: {
      wear,
      gapRunOut: { amplitude: between(random, 0, 2e-6), phase: between(random, 0, 2 * Math.PI) },
      thermalDrift: { change: between(random, -1, 1), timeConstant: seconds * between(random, 0.5, 3), growth },
    },
    columns: usualColumns,
  }
  return {
    run,
    setup: {
      ...exactSetup(fixture, axialForce),
      worn: { ...found, growthPerKelvin: growth, growthUncertainty: 0 },
    },
    truth: {
      ballVolume: 3 * mean,
      trackVolume,
      rate: specificRate,
      depth: wornGap(wear, fixture, { distance, work: load * distance }),
      unlike: Math.max(...volumes) / Math.min(...volumes),
    },
    seed: random.integer(4294967296),
  }
}

/** What a microscope and a stylus would say of these bodies. */
function wornSpec(
  random: Random,
  { volumes, radius, section }: { volumes: readonly number[]; radius: Metre; section: number },
): WornSpec {
  const scarUncertainty = evenInLog(random, 2e-6, 10e-6)
  const reading = (diameter: Metre): Metre => diameter + scarUncertainty * random.normal()
  const scars = volumes.map((volume): ScarReading => {
    const diameter = scarDiameterOfDepth(capDepthOfVolume(volume, radius), radius)
    return { along: reading(diameter), across: reading(diameter) }
  })
  const scatter = between(random, 0.02, 0.1)
  const sections = Array.from({ length: 3 + random.integer(3) }, () => section * (1 + scatter * random.normal()))
  return { scars, scarUncertainty, sections }
}
