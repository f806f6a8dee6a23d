import { printQuantity } from '../../../../core/quantity/index.ts'
import type { Point } from '../../../../core/terms/index.ts'
import type { Why } from '../../../sentence/why.ts'

/** Why a point has the friction that it has. */
export function whyFriction(point: Point): Why {
  const { torque, axialForce, friction, turns, autocorrelationTime } = point
  const print = (value: number, dimension: 'torque' | 'force'): string =>
    Number.isFinite(value) ? printQuantity(value, dimension, { digits: 4 }) : 'not known'
  return {
    key: `friction-${point.step}`,
    what: `friction of step ${point.step}`,
    formula: 'µ = M / (c · r · F)',
    values: [
      { sign: 'µ', words: 'friction coefficient', value: friction === null ? 'none' : friction.toPrecision(4) },
      { sign: 'M', words: 'mean torque after zero, blank and inertia', value: print(torque, 'torque') },
      { sign: 'F', words: 'mean axial force after its zero, over whole turns', value: print(axialForce, 'force') },
      { sign: 'N', words: 'turns that count', value: String(Number(turns.toPrecision(3))) },
      ...(autocorrelationTime === null
        ? []
        : [
            {
              sign: 'τ',
              words: 'readings that weigh as one',
              value: String(Number(autocorrelationTime.toPrecision(2))),
            },
          ]),
    ],
    source:
      'c and r are the load factor and lever arm of the fixture; the ratio of means is estimated with autocorrelated errors.',
    validity: 'in contact, settled, over whole turns or with the swing of the turn known from other steps',
    changes: 'which rows count: drag the edges of the trace.',
  }
}
