// Long because the slips are one table: each row is one thing that people get wrong.

import { describe, expect, test } from 'vitest'
import { readSetup } from '../../../src/io/setup/index.ts'

const good = `# A comment
rig:
  name: bench
  torque: { accuracy: 0.5 %, floor: 20 µN·m, ceiling: "0,2 N·m" }
  axialForce:
    accuracy: 1 %
  inertia: 20 µN·m·s²
fixture:
  kind: balls on plate
  balls: 3
  ballDiameter: 1/4 in
  trackRadius: 15 mm
pair:
  upper: { name: steel ball, poissonRatio: 0.3, elasticModulus: 210 GPa }
  lower: { name: lacquer, thickness: 40 µm }
run:
  axialForce: 5 N
  temperature: 25 °C
  slidingSpeed: 150 mm/s
columns:
  n [1/s]: { channel: angularVelocity, unit: rev/s }
options:
  segmentation: step column
  temperatureTolerance: 2 K
`

/** `good` with one line or piece put in place of another. */
function changed(from: string | RegExp, to: string): string {
  const text = good.replace(from, to)
  if (text === good) throw new Error(`nothing was changed by ${from}`)
  return text
}

const problemsOf = (text: string) => {
  const read = readSetup(text, 'my.setup.yaml')
  return read.ok ? [] : read.problems
}

test('a setup as people write it becomes SI', () => {
  const read = readSetup(good, 'my.setup.yaml')
  expect(read).toEqual({
    ok: true,
    value: {
      setup: {
        rig: {
          name: 'bench',
          torque: { scaleAccuracy: 0.005, floor: 2e-5, ceiling: 0.2 },
          axialForce: { scaleAccuracy: 0.01 },
          angularVelocity: {},
          inertia: 2e-5,
        },
        fixture: {
          kind: 'ballsOnPlate',
          balls: 3,
          ballDiameter: 0.00635,
          trackRadius: 0.015,
          trackRadiusUncertainty: 0,
        },
        pair: {
          upper: { name: 'steel ball', poissonRatio: 0.3, elasticModulus: 210e9 },
          lower: { name: 'lacquer', thickness: 4e-5 },
        },
        run: { axialForce: 5, temperature: 298.15, angularVelocity: 10 },
        options: { segmentation: 'stepColumn', temperatureTolerance: 2 },
      },
      columns: { 'n [1/s]': { channel: 'angularVelocity', unit: 'rev/s' } },
      sha256: expect.stringMatching(/^[0-9a-f]{64}$/),
    },
  })
})

test('the checksum is that of the bytes (by coreutils sha256sum)', () => {
  const read = readSetup(good, 'a.yaml')
  expect(read.ok && read.value.sha256).toBe('59de3a3f87cdc16cccd67b2bd7e04e1f4602f145ebaac8f37538aaee024a04d5')
})

test.for(
  [
    ['byte order mark', `\uFEFF${good}`],
    ['CRLF', good.replaceAll('\n', '\r\n')],
    ['an anchor and its alias', changed('upper: {', 'upper: &x {').replace(/lower: .*/, 'lower: *x')],
    ['an empty section', changed(/options:\n(.|\n)*/, 'options:\n')],
    ['three decimals after a comma that can be nothing else', changed('15 mm', '0,015 m')],
  ].map(([name, text]) => ({ name, text })),
)('$name is no problem', ({ text }) => expect(problemsOf(text)).toEqual([]))

/** One slip each: where it stands, its kind, and words of the two sentences. */
const slips: readonly (readonly [name: string, text: string, at: string, kind: string, what: RegExp, mend: RegExp])[] =
  [
    [
      'mistyped key',
      changed('trackRadius', 'trackRaduis'),
      '12:3',
      'keyUnknown',
      /trackRaduis/,
      /Did you mean "trackRadius"/,
    ],
    [
      'key of another section',
      changed('  name: bench', '  name: bench\n  temperature: 5 °C'),
      '4:3',
      'keyUnknown',
      /rig/,
      /run.temperature/,
    ],
    [
      'unknown key',
      changed('  name: bench', '  name: bench\n  colour: red'),
      '4:3',
      'keyUnknown',
      /colour/,
      /Known are name, torque/,
    ],
    ['missing key', changed('  balls: 3\n', ''), '8:1', 'keyMissing', /fixture.balls is missing/, /"balls: 3"/],
    ['missing section', changed(/pair:\n.*\n.*\n/, ''), '2:1', 'keyMissing', /pair is missing/, /Add "pair:"/],
    [
      'key twice',
      changed('  balls: 3', '  balls: 3\n  balls: 4'),
      '11:3',
      'keyTwice',
      /fixture.balls stands twice/,
      /Keep one/,
    ],
    ['no value', changed('balls: 3', 'balls:'), '10:3', 'valueMissing', /no value/, /"3"/],
    ['a list', changed('balls: 3', 'balls: [3]'), '10:10', 'valueNotPlain', /list/, /one value/],
    ['no unit', changed('15 mm', '15'), '12:16', 'quantityUnreadable', /no unit/, /"15 mm"/],
    ['wrong unit', changed('15 mm', '15 Nm'), '12:16', 'quantityUnreadable', /torque, not of length/, /mm/],
    [
      'negative length',
      changed('15 mm', '-15 mm'),
      '12:16',
      'valueOutOfRange',
      /-15 mm/,
      /more than 0 mm, at most 500 mm/,
    ],
    ['lost prefix', changed('15 mm', '15 m'), '12:16', 'valueOutOfRange', /15 m/, /at most 500 mm/],
    [
      'ball over its track',
      changed('1/4 in', '29 mm'),
      '11:17',
      'fixtureImpossible',
      /29 mm.*fit/,
      /less than 25.98\d* mm/,
    ],
    [
      'unknown fixture',
      changed('balls on plate', 'bals on plate'),
      '9:9',
      'choiceUnknown',
      /bals/,
      /Did you mean "balls on plate"/,
    ],
    ['no kind', changed('  kind: balls on plate\n', ''), '8:1', 'keyMissing', /fixture.kind/, /"ring on plate"/],
    ['colder than cold', changed('25 °C', '-274 °C'), '18:16', 'valueOutOfRange', /-274/, /more than 0 K/],
    [
      'rubber beyond',
      changed('poissonRatio: 0.3', 'poissonRatio: 0.51'),
      '14:44',
      'valueOutOfRange',
      /0.51/,
      /at least -1, at most 0.5/,
    ],
    [
      'share for per cent',
      changed('accuracy: 0.5 %', 'accuracy: 0.5'),
      '4:23',
      'valueOutOfRange',
      /0.5/,
      /0.5 is 50 %/,
    ],
    ['floor over ceiling', changed('20 µN·m', '1 N·m'), '4:37', 'valuesDisagree', /1 N·m.*200 mN·m/, /Correct one/],
    [
      'speed twice',
      changed('  axialForce: 5 N', '  axialForce: 5 N\n  angularVelocity: 1 rad/s'),
      '20:17',
      'keysExcludeEachOther',
      /twice/,
      /Keep one/,
    ],
    [
      'force over the rig',
      changed('    accuracy: 1 %', '    accuracy: 1 %\n    ceiling: 2 N'),
      '18:15',
      'valuesDisagree',
      /5 N.*2 N/,
      /press/,
    ],
    [
      'uncertainty alone',
      changed('name: lacquer,', 'name: lacquer, roughnessUncertainty: 1 nm,'),
      '15:49',
      'valuesDisagree',
      /without/,
      /Add/,
    ],
    [
      'word for a section',
      changed(/run:\n.*\n.*\n.*\n/, 'run: fast\n'),
      '16:1',
      'sectionExpected',
      /run holds no keys/,
      /axialForce/,
    ],
    [
      'unknown channel',
      changed('channel: angularVelocity', 'channel: speed'),
      '21:23',
      'choiceUnknown',
      /speed/,
      /slidingSpeed/,
    ],
    ['ambiguous unit', changed('rev/s', '1/s'), '21:46', 'unitUnfit', /rad\/s or rev\/s/, /Write/],
    ['unit of another channel', changed('rev/s', 'N'), '21:46', 'unitUnfit', /no unit of angularVelocity/, /rad\/s/],
    ['unknown option word', changed('step column', 'steps'), '23:17', 'choiceUnknown', /steps/, /"step column"/],
    ['tab', changed('  name: bench', '\tname: bench'), '3:1', 'yamlSyntax', /[Tt]ab/, /blanks instead of tabs/],
    ['colon in a value', changed('name: bench', 'name: bench: old'), '3:9', 'yamlSyntax', /[Nn]ested/, /quotes/],
    ['two documents', `${good}---\n${good}`, '25:1', 'yamlSyntax', /multiple documents/, /One setup|one setup/],
  ]

const slipCases = slips.map(([name, text, at, kind, what, mend]) => ({ name, text, at, kind, what, mend }))

test.for(slipCases)('$name: told once, with its place', ({ text, at, kind, what, mend }) => {
  const problems = problemsOf(text)
  expect(problems).toHaveLength(1)
  const [problem] = problems
  expect(`${problem.place.line}:${problem.place.column}`).toBe(at)
  expect(problem).toMatchObject({ kind, class: 'badInput', place: { file: 'my.setup.yaml' } })
  expect(problem.what).toMatch(what)
  expect(problem.mend).toMatch(mend)
})

describe('a problem names its key and shows the text that stands there', () => {
  test('value', () => {
    expect(problemsOf(changed('15 mm', '15 furlong'))[0].place).toEqual({
      file: 'my.setup.yaml',
      line: 12,
      column: 16,
      name: 'fixture.trackRadius',
      cell: '15 furlong',
    })
  })
})

test('all problems at once, in the order of the lines', () => {
  const text = changed('15 mm', '15')
    .replace('25 °C', '-300 °C')
    .replace('name: bench', 'nmae: bench')
    .replace('0.5 %', 'x')
  const problems = problemsOf(text)
  expect(problems.map(({ place }) => place.line)).toEqual([3, 4, 12, 18])
})
