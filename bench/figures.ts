import { fixtureOutline } from '../src/core/fixture/index.ts'
import { columnEdges, minMaxColumns } from '../src/core/numeric/index.ts'
import { recordTurnMap, turnMap } from '../src/core/reduce/index.ts'
import {
  budgetFigure,
  curveFigure,
  fixtureFigure,
  remarksFigure,
  stripColumns,
  stripFigure,
  turnMapFigure,
} from '../src/figure/index.ts'
import { realRecord, stripOf } from '../test/figure/realRecords.ts'

/** Longest that one picture may take once the code is warm, in milliseconds. */
const allowed = 5
const rounds = 60

interface Timed {
  readonly name: string
  readonly draw: () => string
}

const million = 1_000_000
const wave = (i: number): number => Math.sin(i / 700) + 0.2 * Math.sin(i * 12.9898)

/** Seven channels of a million rows, thinned as the strip wants them. */
function longStrip() {
  const time = Float64Array.from({ length: million }, (_, i) => i / 100)
  const values = time.map((_, i) => wave(i))
  const started = performance.now()
  const edges = columnEdges(time, stripColumns())
  const columns = minMaxColumns(values, edges)
  const thinning = performance.now() - started
  const names = [
    'angularVelocity',
    'torque',
    'axialForce',
    'gap',
    'temperature',
    'slidingSpeed',
    'frictionForce',
  ] as const
  const ends = [0, time[million - 1]] as const
  return {
    thinning,
    data: { title: 'long', time: ends, channels: names.map((name) => ({ name, columns })), stretches: [] },
  }
}

function fullMap() {
  const angle = Float64Array.from({ length: million }, (_, i) => (i * 200 * 2 * Math.PI) / million)
  return turnMap(
    angle,
    angle.map((at, i) => 0.2 + 0.03 * Math.cos(at) + 0.01 * wave(i)),
  )
}

async function pictures(): Promise<readonly Timed[]> {
  const sweep = await realRecord('oat-drink-warm')
  const floor = await realRecord('near-torque-floor')
  const tilted = await realRecord('tilted-plate')
  const { points, window, remarks } = floor.reduction
  const strip = stripOf(sweep)
  const long = longStrip()
  process.stdout.write(
    `thinning a million rows to ${stripColumns()} columns: ${long.thinning.toFixed(1)} ms a channel\n`,
  )
  const map = recordTurnMap(tilted, 'frictionSwing')
  const full = fullMap()
  const outline = fixtureOutline({
    kind: 'ballOnPlates',
    plates: 3,
    ballDiameter: 0.0127,
    ballDiameterUncertainty: 1e-6,
    inclination: Math.PI / 4,
    inclinationUncertainty: 1e-3,
  })
  const title = 'invented'
  return [
    {
      name: 'fixture, ball on three plates',
      draw: () => fixtureFigure({ title, outline, axialForce: 5, contactRadius: 5e-5 }),
    },
    { name: `strip, ${sweep.channels.rows} rows`, draw: () => stripFigure(strip) },
    { name: 'strip, a million rows in seven channels', draw: () => stripFigure(long.data) },
    { name: `curve, ${points.length} steps`, draw: () => curveFigure({ title, points, curve: null, window }) },
    { name: `budget, ${points.length} steps`, draw: () => budgetFigure({ title, points }) },
    { name: `remarks, ${points.length} steps`, draw: () => remarksFigure({ title, points, remarks }) },
    {
      name: `turn map, ${map.columns} × ${map.rows} cells`,
      draw: () => turnMapFigure({ title, map, quantity: 'frictionSwing', steps: map.steps }),
    },
    {
      name: `turn map, ${full.columns} × ${full.rows} cells`,
      draw: () => turnMapFigure({ title, map: full, quantity: 'friction' }),
    },
  ]
}

/** Median and longest of many, the first few left out: they are compiled while they run. */
function measured({ name, draw }: Timed): number {
  const times: number[] = []
  let size = 0
  for (let round = 0; round < rounds + 20; round++) {
    const started = performance.now()
    size = draw().length
    if (round >= 20) times.push(performance.now() - started)
  }
  times.sort((one, two) => one - two)
  const median = times[rounds >> 1]
  const words = `median ${median.toFixed(2)} ms, longest ${times[rounds - 1].toFixed(2)} ms, ${Math.ceil(size / 1024)} kB`
  process.stdout.write(`${name.padEnd(42)} ${words}\n`)
  return median
}

const slowest = Math.max(...(await pictures()).map(measured))
process.stdout.write(`slowest ${slowest.toFixed(2)} ms, allowed ${allowed} ms (medians of ${rounds})\n`)
if (!(slowest <= allowed)) process.exitCode = 1
