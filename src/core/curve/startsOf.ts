import { PivotedQr } from '../numeric/index.ts'
import type { CurveMember } from './curveMember.ts'
import type { Observations } from './curvePoint.ts'

/** A starting level is never less than this share of the least friction seen. */
const leastLevel = 0.01

/**
 * Starting points from the data: friction is linear in the levels, so for each of the member's exponents and speeds the
 * levels follow from linear least squares of relative deviations; a level that comes out negative starts small instead.
 */
export function startsOf(member: CurveMember, observations: Observations): readonly Float64Array[] {
  const count = observations.lnSpeeds.length
  const levels = member.levels.length
  const scratch = {
    qr: new PivotedQr(count, levels),
    shape: new Float64Array(count),
    jacobian: new Float64Array(count * member.names.length),
    right: new Float64Array(count),
  }
  return member.starts.map((start) => withLevels(member, observations, { start, ...scratch }))
}

interface Scratch {
  readonly start: readonly number[]
  readonly qr: PivotedQr
  readonly shape: Float64Array
  readonly jacobian: Float64Array
  readonly right: Float64Array
}

function withLevels(member: CurveMember, { lnSpeeds, lnFriction }: Observations, at: Scratch): Float64Array {
  const { start, qr, shape, jacobian, right } = at
  const count = lnSpeeds.length
  const parameters = new Float64Array(member.names.length)
  let next = 0
  for (let j = 0; j < parameters.length; j++) if (!member.levels.includes(j)) parameters[j] = start[next++]
  member.evaluate(parameters, { lnSpeeds, lnFriction: shape, jacobian })
  for (const [k, level] of member.levels.entries()) {
    for (let i = 0; i < count; i++) {
      qr.values[k * count + i] = jacobian[level * count + i] * Math.exp(shape[i] - lnFriction[i])
    }
  }
  qr.factor(count, member.levels.length)
  right.fill(1)
  qr.applyTransposed(right)
  const rank = qr.rank(1e-10)
  qr.backSubstitute(right, rank)
  const floor = leastLevel * Math.exp(Math.min(...lnFriction))
  for (const level of member.levels) parameters[level] = Math.log(floor)
  for (let place = 0; place < rank; place++) {
    parameters[member.levels[qr.order[place]]] = Math.log(Math.max(floor, right[place]))
  }
  for (let j = 0; j < parameters.length; j++) {
    parameters[j] = Math.min(member.upper[j], Math.max(member.lower[j], parameters[j]))
  }
  return parameters
}
