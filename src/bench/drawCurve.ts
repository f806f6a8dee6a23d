import { printQuantity } from '../core/quantity/index.ts'
import type { FixtureSpec, Setup } from '../core/terms/index.ts'
import { curveFigure, dryRegimes, type PaletteName, type RegimeNames, wetRegimes } from '../figure/index.ts'
import type { ReducedRecord } from './reducedRecord.ts'

/** The picture of a reduced record as SVG text. */
export const drawCurve = (reduced: ReducedRecord, palette: PaletteName): string =>
  curveFigure(
    {
      title: reduced.setup.run.sample ?? reduced.file,
      caption: captionOf(reduced),
      points: reduced.reduction.points,
      curve: reduced.curve,
      window: reduced.reduction.window,
      regimes: regimeNames(reduced.setup),
      note: reduced.setup.run.note,
    },
    { palette },
  )

/** What the regimes of a record are called: without a liquid there is no film. */
export const regimeNames = ({ liquid }: Pick<Setup, 'liquid'>): RegimeNames =>
  liquid === undefined ? dryRegimes : wetRegimes

function captionOf({ setup, file }: ReducedRecord): string {
  const { run, pair, liquid } = setup
  const between = liquid === undefined ? 'dry' : liquid.name
  const parts = [fixtureInWords(setup), `${pair.upper.name} on ${pair.lower.name}, ${between}`]
  if (run.axialForce !== undefined) parts.push(printQuantity(run.axialForce, 'force', { digits: 3 }))
  if (run.temperature !== undefined) parts.push(printQuantity(run.temperature, 'temperature', { digits: 4 }))
  if (run.sample !== undefined) parts.push(file)
  return parts.join(' · ')
}

/** The fixture in few words with its size: `3 balls 6.35 mm on a track of 15 mm`. */
export const fixtureInWords = ({ fixture }: Pick<Setup, 'fixture'>): string => words(fixture)

const length = (metres: number): string => printQuantity(metres, 'length')
const several = (count: number, one: string): string => (count === 1 ? `one ${one}` : `${count} ${one}s`)

function words(fixture: FixtureSpec): string {
  switch (fixture.kind) {
    case 'ballsOnPlate':
      return `${several(fixture.balls, 'ball')} ${length(fixture.ballDiameter)} on a track of ${length(fixture.trackRadius)}`
    case 'ballOnPlates':
      return `ball ${length(fixture.ballDiameter)} on ${fixture.plates} inclined plates`
    case 'ballOnBalls':
      return `ball on three balls ${length(fixture.ballDiameter)}`
    case 'ringOnPlate':
      return `ring ${length(2 * fixture.innerRadius)} to ${length(2 * fixture.outerRadius)} on a plate`
    case 'discOnPlate':
      return `disc ${length(2 * fixture.radius)} on a plate`
    case 'pinsOnDisc':
      return `${several(fixture.pins, 'pin')} ${length(fixture.pinDiameter)} on a track of ${length(fixture.trackRadius)}`
  }
}
