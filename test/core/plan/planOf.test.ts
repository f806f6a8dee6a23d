// Long because its cases share one lab or one question, and each is a few lines.
import { describe, expect, test } from 'vitest'
import {
  type Plan,
  type PlanQuestion,
  planOf,
  questionFaults,
  roundWithin,
  spokenTime,
} from '../../../src/core/plan/index.ts'
import { lacquerQuestion, oatQuestion } from './questions.ts'

function plan(question: PlanQuestion): Plan {
  const outcome = planOf(question)
  if (!outcome.ok) throw new Error(outcome.problems.map(({ what }) => what).join(' '))
  return outcome.value
}

const asking = (question: PlanQuestion, ask: Partial<PlanQuestion['ask']>): PlanQuestion => ({
  ...question,
  ask: { ...question.ask, ...ask },
})

/** Every number in a value, with its path. */
function numbersIn(value: unknown, path = ''): [string, number][] {
  if (typeof value === 'number') return [[path, value]]
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, inner]) => numbersIn(inner, `${path}.${key}`))
}

describe('the question of the lacquer', () => {
  const { suggestion, points, sentences, contact, decision, totals } = plan(lacquerQuestion)

  test('the load stays inside the span that sees most, and no step breaks a limit', () => {
    expect(suggestion.possible).toBe(true)
    expect(suggestion.axialForce).toBeGreaterThan(suggestion.forceSpan?.low ?? Number.NaN)
    expect(suggestion.axialForce).toBeLessThan(suggestion.forceSpan?.high ?? Number.NaN)
    expect(points.flatMap(({ broken }) => broken)).toEqual([])
  })

  test('more load would sink into the coating, and the plan says so', () => {
    expect(suggestion.aboveSpan).toContain('coating')
    expect(sentences.trades.join(' ')).toContain('sinks too deep into the coating')
  })

  test('time and distance are those of the steps', () => {
    expect(totals.time).toBeLessThanOrEqual(lacquerQuestion.ask.mostTime)
    expect(totals.time).toBeCloseTo(
      points.reduce((sum, { dwell }) => sum + dwell, 0),
      9,
    )
    const slid = points.reduce((sum, { slidingSpeed, dwell }) => sum + slidingSpeed * dwell, 0)
    expect(totals.distance).toBeCloseTo(slid + lacquerQuestion.ask.conditioningDistance, 9)
  })

  test('a layer of 60 µm under a contact as wide is no place for Hertz', () => {
    expect(contact.hertz).toContain('must not be trusted')
    expect(contact.doubts.map(({ kind }) => kind)).toContain('baseFelt')
  })

  test('replicates are put in order, three or more of each', () => {
    expect(decision.replicates?.replicates).toBe(12) // 8 % scatter, 10 % difference, power 80 %: noncentral t
    expect(decision.order.filter(({ sample }) => sample === 'lacquer A')).toHaveLength(12)
  })

  test('one whole turn per point down to 0.1 mm/s takes 1.3 h on 15 mm', () => {
    const words = plan(asking(lacquerQuestion, { fastest: 1 })).sentences.turnBudget.join(' ')
    expect(words).toContain('down to 100 µm/s takes 1.3 h')
    expect(words).toContain('down to 1 mm/s takes 7.6 min')
  })
})

describe('the question of the oat drink', () => {
  const { regime, points, contact } = plan(oatQuestion)

  test('λ is an interval, and rises with speed', () => {
    for (const { friction } of points) {
      expect(friction.lambda?.low).toBeLessThan(friction.lambda?.value ?? 0)
      expect(friction.lambda?.high).toBeGreaterThan(friction.lambda?.value ?? 0)
    }
    const up = points.filter(({ direction }) => direction === 1).map(({ friction }) => friction.lambda?.value ?? 0)
    expect(up).toEqual([...up].sort((a, b) => a - b))
  })

  test('the regime speeds carry their interval, and λ there is what it should be', () => {
    expect(regime.mixedFrom?.low).toBeLessThan(regime.mixedFrom?.value ?? 0)
    expect(regime.fullFilmFrom?.value).toBeGreaterThan(regime.mixedFrom?.value ?? 0)
    const exact = plan(asking(oatQuestion, { slowest: 0.01, fastest: regime.mixedFrom?.value ?? 0 }))
    const last = exact.points.filter(({ direction }) => direction === 1).at(-1)
    expect(last?.friction.lambda?.value).toBeCloseTo(1, 1)
  })

  test('steps near a border do not survive another roughness', () => {
    expect(regime.surviving).toBeLessThan(regime.of)
    const rough = { ...oatQuestion.pair.lower, roughnessUncertainty: 0.9e-6 }
    const unsure = plan({ ...oatQuestion, pair: { ...oatQuestion.pair, lower: rough } })
    expect(unsure.regime.surviving).toBeLessThan(regime.surviving)
  })

  // a = 1.21 mm on R = 6.35 mm at a load of 1 N on one contact (Hertz by hand), a/R = 0.19.
  test('a soft contact is beyond small strain, and the plan says so', () => {
    expect(contact.hertz).toContain('too wide for small strain')
    const loaded = plan(asking(oatQuestion, { axialForce: 3 / Math.SQRT2 }))
    expect(loaded.contact.contactRadius).toBeCloseTo(1.21e-3, 5)
  })
})

test('a soft layer is shown by its own law beside Hertz; a stiff coating is not called one', () => {
  const { layer, contact } = plan(oatQuestion)
  // A layer on a rigid base is stiffer than a thick body of the same stuff: it sinks in less and is pressed harder.
  expect(layer?.contact.approach).toBeLessThan(contact.approach ?? 0)
  expect(layer?.contact.meanPressure).toBeGreaterThan(contact.meanPressure ?? 0)
  expect(layer?.contact.others.length).toBeGreaterThan(0)
  expect(layer?.sentence).toMatch(/bonded to a rigid base.*Hertz, for a thick body/)
  expect(plan(lacquerQuestion).layer).toBeNull()
})

test('films by other published laws stand beside the one that is used', () => {
  const { film, sentences } = plan(oatQuestion).regime
  expect(film?.others.length).toBeGreaterThan(0)
  for (const { sentence } of film?.doubts ?? []) expect(sentences).toContain(sentence)
})

test('flash temperature at the fastest step, where both bodies are in the table', () => {
  const { pair } = lacquerQuestion
  const glassOnGlass = (fastest: number): Plan =>
    plan({
      ...asking(lacquerQuestion, { axialForce: 2, fastest }),
      pair: {
        upper: { ...pair.upper, name: 'soda-lime glass', elasticModulus: 70e9, poissonRatio: 0.22 },
        lower: {
          ...pair.lower,
          name: 'soda-lime glass',
          elasticModulus: 70e9,
          poissonRatio: 0.22,
          thickness: undefined,
        },
      },
    })
  const { flash } = glassOnGlass(0.2)
  // Two half-spaces of one stuff at a small Peclet number share the heat evenly: half of q·a/K, K about 1 W/(m·K).
  const a = glassOnGlass(0.2).contact.contactRadius ?? 0
  const heat = (0.4 * (2 / 3) * 0.2) / (Math.PI * a)
  expect(flash?.rise).toBeLessThan(heat / 1.5)
  expect(flash?.rise).toBeGreaterThan(heat / 6)
  expect(glassOnGlass(0.02).flash?.rise).toBeLessThan(flash?.rise ?? 0)
  expect(plan(lacquerQuestion).flash).toBeNull()
})

describe('what is traded', () => {
  test('points for time: fewer per decade rather than a narrower range', () => {
    const { suggestion, sentences } = plan(asking(lacquerQuestion, { mostTime: 1900 }))
    expect(suggestion.perDecade).toBeLessThan(10)
    expect(suggestion.perDecade).toBeGreaterThanOrEqual(5)
    expect(sentences.trades.join(' ')).toContain('points per decade instead of 10')
  })

  test('slow speeds, when even five points do not fit', () => {
    const { suggestion, sentences, totals } = plan(asking(lacquerQuestion, { mostTime: 600 }))
    expect(suggestion.slowest).toBeGreaterThan(1e-4)
    expect(suggestion.belowSlowest).toContain('time')
    expect(sentences.trades.join(' ')).toContain('are given up')
    expect(totals.time).toBeLessThan(650)
  })

  test('fast speeds, when the way would be too long', () => {
    const { suggestion } = plan(asking(lacquerQuestion, { mostDistance: 4 }))
    expect(suggestion.fastest).toBeLessThan(0.2)
    expect(suggestion.aboveFastest).toContain('distance')
  })

  test('nothing at all can be said too', () => {
    const { suggestion, sentences } = plan(asking(lacquerQuestion, { slowest: 10, fastest: 20 }))
    expect(suggestion.possible).toBe(false)
    expect(sentences.believable).toContain('No speed of the question can be measured')
  })

  test('a load beyond the rig sees nothing, and others that do are named', () => {
    const { suggestion, sentences, warnings } = plan(asking(lacquerQuestion, { axialForce: 60 }))
    expect(suggestion.possible).toBe(false)
    expect(sentences.believable).toMatch(/at 60 N: .*over the rig.*Loads from 100 mN to 9\.3 N see some/)
    expect(warnings.map(({ mend }) => mend)).toEqual(['Ask for 10 mN to 50 N.'])
  })

  test('a given load is kept, and what it loses is said', () => {
    const { suggestion, sentences } = plan(asking(lacquerQuestion, { axialForce: 30 }))
    expect(suggestion.axialForce).toBe(30)
    expect(suggestion.coupling).toBe('stiff')
    expect(sentences.trades.join(' ')).toContain('lies outside these loads')
  })
})

describe('bad input', () => {
  const lower = (more: object): PlanQuestion => ({
    ...lacquerQuestion,
    pair: { ...lacquerQuestion.pair, lower: { ...lacquerQuestion.pair.lower, ...more } },
  })
  test.for<{ name: string; question: PlanQuestion; says: string }>([
    { name: 'negative load', question: asking(lacquerQuestion, { axialForce: -1 }), says: 'more than 0' },
    { name: 'Poisson ratio 0.7', question: lower({ poissonRatio: 0.7 }), says: 'at most 0.5' },
    {
      name: 'ball larger than its track',
      question: {
        ...lacquerQuestion,
        fixture: { ...lacquerQuestion.fixture, ballDiameter: 0.05 } as PlanQuestion['fixture'],
      },
      says: 'limit is 0.0259',
    },
    {
      name: 'coating thicker than its plate',
      question: { ...lower({ thickness: 5e-3 }), bears: { upper: {}, lower: { plateThickness: 3e-3 } } },
      says: 'thinner than 3 mm',
    },
    { name: 'speeds the wrong way round', question: asking(lacquerQuestion, { slowest: 1 }), says: 'at most 200 mm/s' },
    { name: 'NaN', question: asking(lacquerQuestion, { uncertainty: Number.NaN }), says: 'more than 0 and at most 1' },
  ])('$name', ({ question, says }) => {
    const outcome = planOf(question)
    expect(outcome.ok).toBe(false)
    if (!outcome.ok) expect(outcome.problems.map(({ mend }) => mend).join(' ')).toContain(says)
  })

  test('a speed beyond the rig warns with what it reaches, and the plan keeps to it', () => {
    const { warnings, suggestion } = plan(asking(lacquerQuestion, { fastest: 9 }))
    // 300 rad/s on 15 mm.
    expect(warnings.map(({ mend }) => mend)).toEqual(['Ask for at most 4.5 m/s.'])
    expect(suggestion.fastest).toBeLessThanOrEqual(4.5)
  })

  test('all faults at once', () => {
    const faults = questionFaults(
      asking(lower({ poissonRatio: 0.7, elasticModulus: 0 }), { axialForce: -1, perDecade: 0 }),
    )
    expect(faults.map(({ key }) => key).sort()).toEqual(
      ['ask.axialForce', 'ask.perDecade', 'pair.lower.elasticModulus', 'pair.lower.poissonRatio'].sort(),
    )
  })

  test.for([
    ['lacquer', lacquerQuestion],
    ['oat drink', oatQuestion],
    [
      'nothing said',
      {
        ...lacquerQuestion,
        bears: { upper: {}, lower: {} },
        rig: {
          ...lacquerQuestion.rig,
          torque: { scaleAccuracy: 0 },
          axialForce: { scaleAccuracy: 0 },
          angularVelocity: {},
        },
      },
    ],
    ['impossible', asking(lacquerQuestion, { slowest: 10, fastest: 20 })],
  ] as const)('%s: never NaN', ([, question]) => {
    const bad = numbersIn(plan(question)).filter(([, value]) => !Number.isFinite(value))
    expect(bad).toEqual([])
  })
})

test.for([
  [{ low: 0.9, high: 1.3 }, 1],
  [{ low: 0.1, high: 9 }, 1],
  [{ low: 2.3, high: 2.4 }, 2.3],
] as const)('a round number within %o', ([span, want]) => {
  expect(roundWithin(span)).toBe(want)
})

test.for([
  [40, '40 s'],
  [457.9, '7.6 min'],
  [4579, '1.3 h'],
  [45794, '12.7 h'],
] as const)('%s s is spoken as %s', ([seconds, words]) => {
  expect(spokenTime(seconds)).toBe(words)
})

describe('each kind of number says by which law, where that holds, and what to doubt', () => {
  test.for([
    ['lacquer', lacquerQuestion, ['contact', 'coating', 'adhesion', 'yield']],
    ['oat drink', oatQuestion, ['contact', 'layer', 'film', 'filmFriction', 'mixedFriction']],
    [
      'brittle and worn',
      {
        ...lacquerQuestion,
        bears: { upper: { wearRate: 1e-15 }, lower: { flexuralStrength: 5e7, wearRate: 1e-14 } },
      },
      ['edgeTension', 'wear', 'wornFlat'],
    ],
  ] as const)('%s', ([, question, names]) => {
    const { reckonings } = plan(question)
    const always = ['partialTurns', 'uncertainty', 'replicates']
    expect(reckonings.map(({ name }) => name)).toEqual(expect.arrayContaining([...names, ...always]))
    for (const { sentence, law, source, valid } of reckonings) {
      for (const words of [sentence, law, source, valid]) expect(words.length).toBeGreaterThan(4)
    }
  })

  test('where Hertz and a layer’s law disagree, both are shown; so are JKR and DMT', () => {
    const layer = plan(oatQuestion).reckonings.find(({ name }) => name === 'layer')
    expect(layer?.sentence).toMatch(/bonded to a rigid base .*Hertz, for a thick body/)
    const adhesion = plan(lacquerQuestion).reckonings.find(({ name }) => name === 'adhesion')
    expect(adhesion?.sentence).toMatch(/JKR [\d.]+ .N, DMT [\d.]+ .N/)
  })

  test('a scar as wide as Archard makes it lowers the pressure', () => {
    const worn = plan({ ...lacquerQuestion, bears: { upper: { wearRate: 1e-13 }, lower: {} } })
    const flat = worn.reckonings.find(({ name }) => name === 'wornFlat')
    expect(flat?.sentence).toMatch(/The mean pressure falls from/)
    expect(flat?.doubts.join(' ')).toContain('times as wide')
  })
})

test('the film is told in all four regimes, and the largest minimum is the one that is there', () => {
  const film = plan(oatQuestion).regime.film
  if (film === null || film.inRegimes === null) throw new Error('a film is predicted')
  const films = Object.values(film.inRegimes).map(({ minimum }) => minimum)
  expect(films).toHaveLength(4)
  expect(film.regime).toBe('isoviscousElastic')
  expect(Math.max(...films)).toBeCloseTo(film.minimum ?? Number.NaN, 15)
  expect(film.inRegimes.isoviscousElastic.central).toBeCloseTo(film.central ?? Number.NaN, 15)
})

describe('errors where they bite', () => {
  test('force zero by itself over the load, tilt by tan β · |sin πN|/(πN), run-out by the contact’s stiffness', () => {
    const question = asking(
      { ...lacquerQuestion, noise: { forceZero: 0.02, tilt: 0.3 * (Math.PI / 180) } },
      { axialForce: 1 },
    )
    const { sentences, points } = plan(question)
    const words = sentences.errors.join(' ')
    // 0.02 N at 1 N is 2 %, at all speeds together.
    expect(words).toContain('A force zero off by 20 mN moves all friction values together by 2 %')
    expect(words).toMatch(/A micrometre of run-out changes the axial force by/)
    const { turns, friction } = points[0]
    // 0.3° makes an amplitude of 0.0052.
    const share = (0.0052 * Math.abs(Math.sin(Math.PI * turns))) / (Math.PI * turns) / friction.value
    const told = Number(/can shift friction there by ([\d.]+) %/.exec(words)?.[1]) / 100
    expect(Math.abs(told / share - 1)).toBeLessThan(0.03)
  })

  test('soft pairs hardly care for run-out', () => {
    expect(plan(asking(oatQuestion, { axialForce: 5 })).sentences.errors.join(' ')).not.toMatch(
      /hold the force by control/,
    )
  })
})

describe('what cannot be decided is refused', () => {
  test.for([
    ['no sample', { samples: [] }, 'deciding.samples'],
    ['a day too short for its check standards', { runsPerDay: 2, checkStandard: 'oil' }, 'deciding.runsPerDay'],
    ['no run a day', { runsPerDay: Number.NaN }, 'deciding.runsPerDay'],
  ] as const)('%s', ([, deciding, key]) => {
    const faults = questionFaults({ ...lacquerQuestion, deciding: { ...lacquerQuestion.deciding, ...deciding } })
    expect(faults.map((fault) => fault.key)).toEqual([key])
  })

  test('a flow law with an impossible parameter', () => {
    const flow = {
      law: 'cross',
      parameters: { restViscosity: -1, fastViscosity: 0, time: 1, exponent: 1 },
      shearRate: { low: 1, high: 10 },
      source: 'x',
    } as const
    expect(questionFaults({ ...oatQuestion, flow }).map(({ key }) => key)).toEqual(['liquid'])
  })

  test('loads beyond the rig are warned of with its range', () => {
    const [fault] = questionFaults(asking(lacquerQuestion, { mostForce: 400 }))
    expect(fault).toMatchObject({ key: 'ask.mostForce', weight: 'warns' })
    expect(fault.what).toContain('10 mN to 50 N')
  })
})
