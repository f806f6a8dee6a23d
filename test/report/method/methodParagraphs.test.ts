import { describe, expect, test } from 'vitest'
import { methodParagraphs, type ReportInput } from '../../../src/report/index.ts'
import { curve, inventedInput, point, reduction } from '../inventedInput.ts'

const told = (changes: Partial<ReportInput> = {}) =>
  Object.fromEntries(methodParagraphs(inventedInput(changes)).map(({ lead, text }) => [lead, text]))
const reduced = (changes: Partial<ReportInput['reduction']>) => told({ reduction: { ...reduction, ...changes } })

test('tells the method from rig to curve in whole sentences', () => {
  const paragraphs = methodParagraphs(inventedInput())
  expect(paragraphs.map(({ lead }) => lead)).toEqual([
    'Apparatus',
    'Procedure',
    'Steps',
    'Zeroes and corrections',
    'Rows left out',
    'Friction of a step',
    'Uncertainty',
    'Curve',
  ])
  for (const { text } of paragraphs) {
    expect(text).toMatch(/^[A-Z].*\.$/s)
    expect(text).not.toMatch(/undefined|NaN|null| {2}|\.\./)
  }
})

test('apparatus names lever arm, load factor and contacts', () => {
  expect(told().Apparatus).toMatch(/three balls of 6.35 mm/)
  expect(told().Apparatus).toMatch(/r = 15 mm the lever arm, and c = 1 the sum/)
  expect(told().Apparatus).toMatch(/Three contacts share the load\.$/)
  const geometry = { lever: 0.00449013, loadFactor: Math.SQRT2, contacts: 1 }
  expect(told({ geometry }).Apparatus).toMatch(/r = 4.4901 mm .* c = 1.4142 .* One contact carries the load\.$/)
})

test('the law of pressure stands beside a ring', () => {
  const { setup } = inventedInput()
  const ring = {
    kind: 'ringOnPlate',
    outerRadius: 0.0125,
    innerRadius: 0.01,
    segments: 1,
    radiusUncertainty: 0,
  } as const
  const law = (pressure: 'uniformPressure' | 'uniformWear') =>
    told({ setup: { ...setup, fixture: { ...ring, pressure } } }).Apparatus
  expect(law('uniformPressure')).toMatch(/even pressure/)
  expect(law('uniformWear')).toMatch(/mean radius/)
})

describe('procedure', () => {
  const course = (directions: readonly (1 | -1)[]) =>
    reduced({
      points: directions.map((direction, i) => point({ step: i + 1, slidingSpeed: 0.001 * (1 + i), direction })),
    }).Procedure

  test.for([
    { directions: [1, 1, 1], says: 'was raised from 1 mm/s to 3 mm/s' },
    { directions: [-1, -1, -1], says: 'was lowered from 3 mm/s to 1 mm/s' },
    { directions: [1, 1, -1], says: 'was raised and then lowered between 1 mm/s and 3 mm/s' },
    { directions: [-1, 1, 1], says: 'was lowered and then raised' },
    { directions: [1, -1, 1], says: 'went up and down (2 turns)' },
  ] as const)('$directions: $says', ({ directions, says }) => {
    expect(course(directions)).toContain(says)
  })

  test('one speed is held', () => {
    expect(reduced({ points: [point({}), point({ step: 2 })] }).Procedure).toContain('was held at 10 mm/s')
  })

  test('what nobody commanded is not invented', () => {
    const { setup } = inventedInput()
    const { Procedure } = told({ setup: { ...setup, run: {} } })
    expect(Procedure).not.toMatch(/told to hold|The room/)
  })
})

test.for([
  { how: 'stepColumn', says: /its own step column/ },
  { how: 'plateaus', says: /within 2 %/ },
  { how: 'ramp', says: /10 bins for each decade/ },
  { how: 'whole', says: /taken as one step/ },
] as const)('segmentation by $how', ({ how, says }) => {
  expect(reduced({ segmentation: how }).Steps).toMatch(says)
  expect(reduced({ segmentation: how }).Steps).toContain(
    'Five steps of sliding and one stretch without contact were found.',
  )
})

describe('corrections', () => {
  test('with their numbers', () => {
    const text = told()['Zeroes and corrections']
    expect(text).toContain('A zero of the axial force of (21.30 ± 0.40) mN was taken off')
    expect(text).toContain('1\u202f240 rows without contact before and after the sliding')
    expect(text).toContain('a drift of 600 µN a minute')
    expect(text).toContain(
      'A torque blank of (2.40 ± 0.10) µN·m and 3 nN·m for every rad/s, with what repeats once a turn',
    )
    expect(text).toContain('20 µN·m·s² was taken off as I dΩ/dt')
  })

  test('where there is none', () => {
    const none = { ...reduction.forceZero, from: 'none' as const }
    const text = reduced({ forceZero: none, torqueBlank: { ...reduction.torqueBlank, from: 'none' } })[
      'Zeroes and corrections'
    ]
    expect(text).toContain('no zero taken off')
    expect(text).toContain('residual torque and drag, where there are any, remain in the friction')
  })

  test('inertia that nobody stated', () => {
    const { setup } = inventedInput()
    const rig = { ...setup.rig, inertia: undefined }
    expect(told({ setup: { ...setup, rig } })['Zeroes and corrections']).toContain('fitted with the blank')
  })
})

test('cut rows are counted: 12 of 120 in each of five steps', () => {
  expect(told()['Rows left out']).toContain('This took 60 of 600 rows (10 %), at most 10 % of one step.')
  expect(reduced({ segmentation: 'ramp' })['Rows left out']).toContain('no warm-up cut off')
})

test('whole turns, the bias that parts of a turn leave, the noise and the ripple', () => {
  const text = told()['Friction of a step']
  expect(text).toContain('Three steps of five held at least one whole turn')
  expect(text).toContain('at most 1.1 % of friction')
  expect(text).toContain('0.62')
  expect(text).toContain('1× 1.5 % in friction and 1.2 % in the axial force')
  expect(reduced({ points: [point({})] })['Friction of a step']).toContain('Every step held at least one whole turn.')
})

test('own and shared uncertainty are told apart, and only causes that are there are named', () => {
  const { Uncertainty } = told()
  expect(Uncertainty).toContain('scale of the torque (rectangular, ±0.5 %) and lever arm and load factor')
  expect(Uncertainty).not.toContain('tilt')
  expect(reduced({ points: [point({ shared: {} })] }).Uncertainty).toContain('states no accuracy of the rig')
})

describe('curve', () => {
  test('member, weight, rivals, end and scatter', () => {
    const { Curve } = told()
    expect(Curve).toContain('the three steps that may be used; two steps were left out')
    expect(Curve).toContain('power law, µ = k vⁿ, with weight 0.81, against plateau (0.19).')
    expect(Curve).toContain('The fit converged.')
    expect(Curve).toContain('The steps scatter by 1.2 % beyond their own uncertainty')
    expect(Curve).toContain('95 % band: bootstrap over the steps, 1000 draws.')
  })

  test('a fit that did not converge says so', () => {
    const end = { why: 'atBound', parameter: 'n', bound: 2, iterations: 40 } as const
    expect(told({ curve: { ...curve, end } }).Curve).toContain('n at its bound of 2')
  })

  test('no fit, and no curve asked for', () => {
    expect(told({ curve: { ...curve, model: null, choices: [], points: 2 } }).Curve).toMatch(/^No curve was fitted/)
    expect(told({ curve: null })).not.toHaveProperty('Curve')
  })
})
