import { inletState, type ThinningLaw } from '../film/index.ts'

/** Logarithms of the viscosities of a thinning liquid over a plane; cell (speed i, load j) lies at `j·speeds + i`. */
export interface ThinnedPlane {
  /** Where the film is drawn in. */
  readonly inlet: Float64Array
  /** Within the film, where one body slides past the other. */
  readonly sliding: Float64Array
}

/** Places of a plane at which the film is solved for; between them the logarithm of viscosity is taken as straight. */
const nodes = { speeds: 33, loads: 7 } as const

/** Viscosities at all places of two rising axes of logarithms. */
export function thinnedPlane(law: ThinningLaw, lnSpeeds: Float64Array, lnLoads: Float64Array): ThinnedPlane {
  const speeds = places(lnSpeeds, nodes.speeds)
  const loads = places(lnLoads, nodes.loads)
  const known = solved(law, speeds.nodes, loads.nodes)
  return {
    inlet: spread(known.inlet, speeds, loads),
    sliding: spread(known.sliding, speeds, loads),
  }
}

function solved(law: ThinningLaw, speeds: Float64Array, loads: Float64Array): ThinnedPlane {
  const plane = {
    inlet: new Float64Array(speeds.length * loads.length),
    sliding: new Float64Array(speeds.length * loads.length),
  }
  for (let j = 0, k = 0; j < loads.length; j++) {
    for (let i = 0; i < speeds.length; i++, k++) {
      const { viscosity, slidingViscosity } = inletState(law, speeds[i], loads[j])
      plane.inlet[k] = Math.log(viscosity)
      plane.sliding[k] = Math.log(slidingViscosity)
    }
  }
  return plane
}

/** An axis and its nodes: for each place the node below it and how far on to the next. */
interface Places {
  readonly nodes: Float64Array
  readonly below: Uint32Array
  readonly share: Float64Array
}

function places(axis: Float64Array, most: number): Places {
  const [low, high] = [axis[0], axis[axis.length - 1]]
  const few = axis.length <= most
  const at = few ? axis : Float64Array.from({ length: most }, (_, i) => low + ((high - low) * i) / (most - 1))
  const below = new Uint32Array(axis.length)
  const share = new Float64Array(axis.length)
  for (let i = 0; i < axis.length; i++) {
    const place = few ? i : ((axis[i] - low) / (high - low)) * (most - 1)
    below[i] = Math.min(at.length - 1, Math.floor(place))
    share[i] = Math.max(0, place - below[i])
  }
  return { nodes: at, below, share }
}

function spread(known: Float64Array, speeds: Places, loads: Places): Float64Array {
  const width = speeds.nodes.length
  const plane = new Float64Array(speeds.below.length * loads.below.length)
  for (let j = 0, k = 0; j < loads.below.length; j++) {
    const low = loads.below[j] * width
    const high = Math.min(loads.below[j] + 1, loads.nodes.length - 1) * width
    const up = loads.share[j]
    for (let i = 0; i < speeds.below.length; i++, k++) {
      const here = speeds.below[i]
      const next = Math.min(here + 1, width - 1)
      const on = speeds.share[i]
      const below = known[low + here] + (known[low + next] - known[low + here]) * on
      const above = known[high + here] + (known[high + next] - known[high + here]) * on
      plane[k] = below + (above - below) * up
    }
  }
  return plane
}
