import { fixtureGeometry } from '../../fixture/index.ts'
import { linearLeastSquares } from '../../numeric/index.ts'
import { studentTQuantile } from '../../stats/index.ts'
import type { Interval, Kelvin, Metre } from '../../terms/index.ts'
import { correlatedFit, correlationLikelihood } from '../estimate/correlatedFit.ts'
import { laggedProducts } from '../estimate/laggedProducts.ts'
import { noiseCorrelation } from '../estimate/noiseCorrelation.ts'
import type { ReducedChannels } from '../recordTurnMap.ts'
import { signalSource } from '../signals.ts'

/** By how much the bodies grew shorter as the gap tells it. */
export interface GapWear {
  /** From the first touch to the end of the record, thermal growth as far as the temperature was seen taken off. Own part alone. */
  readonly depth: Interval
  /** Depth per distance over the whole record. */
  readonly perMetre: Interval
  readonly drift: {
    /** m/K, as it was used, and whether the setup says it or it is the usual one. */
    readonly growth: number
    readonly growthUncertainty: number
    readonly from: 'setup' | 'usual'
    /** Temperature at the end less that at the beginning; null without a temperature channel. */
    readonly warming: Kelvin | null
    /** Depth that this warming feigns and that was taken off. */
    readonly depth: Metre
    /** Standard uncertainty of it. */
    readonly uncertainty: Metre
    /** Warming that nobody sees which would feign the whole depth. */
    readonly feignedBy: Kelvin
  }
  /** Depth along the way, thermal growth taken off; at most a hundred places. */
  readonly course: readonly { readonly distance: Metre; readonly depth: Metre }[]
  /** True where the depth stands clear of its own uncertainty, of that of the drift and of one kelvin that nobody saw. */
  readonly clear: boolean
}

/** Growth of shaft and fixture where the setup says none: 1 to 2 µm/K, taken as evenly spread. Common practice, no source. */
const usualGrowth = { value: 1.5e-6, uncertainty: 0.5e-6 / Math.sqrt(3) } as const
/** A sensor near the contact does not see what the shaft does; so much must not explain the depth. */
const unseenWarming: Kelvin = 1
/**
 * Rows are averaged into no more than so many blocks. Many more, and noise of several memories is no longer of first order; many fewer,
 * and the run-out of the turn is lost in them.
 */
const mostBlocks = 600
const fewestBlocks = 16

/**
 * Depth of wear from the gap: level, s, √s (a cap grows deeper with the root of the distance) and the run-out of the turn, fitted together
 * with errors that remember their neighbour. Undefined without a gap, and for records too short to tell.
 */
export function gapWear(record: ReducedChannels, distance: Metre): GapWear | undefined {
  const { setup } = record
  const blocks = blockMeans(record)
  if (blocks === undefined || blocks.gap.length < fewestBlocks || !(distance > 0)) return undefined
  const { gap, path, root, whole, temperature, columns } = blocks
  const growth = setup.worn?.growthPerKelvin ?? usualGrowth.value
  const growthUncertainty =
    setup.worn?.growthPerKelvin === undefined ? usualGrowth.uncertainty : (setup.worn.growthUncertainty ?? 0)
  const warm = temperature === undefined ? undefined : smoothed(temperature)
  const level = warm === undefined ? gap : gap.map((value, i) => value + growth * (warm[i] - warm[0]))
  const regressors = [
    new Float64Array(gap.length).fill(1),
    path.map((s) => s / whole),
    root.map((r) => r / Math.sqrt(whole)),
    ...columns,
  ]
  const products = laggedProducts([...regressors, level.map((value) => (value - level[0]) * 1e6)])
  const noise = noiseCorrelation([correlationLikelihood(products)])
  const fit = correlatedFit(products, noise.steps[0].correlation)
  if (fit === undefined) return undefined
  const size = fit.coefficients.length
  const variance = fit.covariance[size + 1] + 2 * fit.covariance[size + 2] + fit.covariance[2 * size + 2]
  const value = -(fit.coefficients[1] + fit.coefficients[2]) * 1e-6
  const half = studentTQuantile(0.975, Math.max(2, gap.length - size)) * Math.sqrt(variance) * 1e-6
  const warming = warm === undefined ? null : warm[warm.length - 1] - warm[0]
  const uncertainty = growthUncertainty * Math.abs(warming ?? 0)
  const depth = { value, low: value - half, high: value + half }
  return {
    depth,
    perMetre: { value: value / distance, low: depth.low / distance, high: depth.high / distance },
    drift: {
      growth,
      growthUncertainty,
      from: setup.worn?.growthPerKelvin === undefined ? 'usual' : 'setup',
      warming,
      depth: growth * (warming ?? 0),
      uncertainty,
      feignedBy: value / growth,
    },
    course: courseOf(path, withoutTurn(level, columns, fit.coefficients.subarray(3))),
    clear: depth.low - 2 * uncertainty > growth * unseenWarming,
  }
}

/** Less the run-out of the turn; coefficients are in µm. */
const withoutTurn = (level: Float64Array, columns: readonly Float64Array[], run: ArrayLike<number>): Float64Array =>
  level.map((value, i) => columns.reduce((left, column, k) => left - 1e-6 * run[k] * column[i], value))

const mostPlaces = 100

function courseOf(path: Float64Array, level: Float64Array): GapWear['course'] {
  const size = Math.ceil(path.length / mostPlaces)
  const mean = (values: Float64Array): number => values.reduce((a, b) => a + b, 0) / values.length
  const first = mean(level.subarray(0, size))
  return Array.from({ length: Math.floor(path.length / size) }, (_, i) => ({
    distance: mean(path.subarray(i * size, (i + 1) * size)),
    depth: first - mean(level.subarray(i * size, (i + 1) * size)),
  }))
}

interface Blocks {
  readonly gap: Float64Array
  /** Distance and its root, averaged like the rows, and the whole distance. */
  readonly path: Float64Array
  readonly root: Float64Array
  readonly whole: Metre
  readonly temperature: Float64Array | undefined
  /** cos and sin of the angle, averaged like the rows; empty where there is less than a turn. */
  readonly columns: readonly Float64Array[]
}

function blockMeans({ channels, setup, reduction }: ReducedChannels): Blocks | undefined {
  const geometry = fixtureGeometry(setup.fixture)
  const source = signalSource(channels, setup, geometry)
  if (!source.hasGap) return undefined
  const slides = reduction.steps.filter(({ kind }) => kind === 'slide')
  const rows = slides.reduce((sum, { from, to }) => sum + to - from, 0)
  const size = Math.max(1, Math.ceil(rows / mostBlocks))
  const count = Math.floor(rows / size)
  const hasTemperature = channels.names.includes('temperature')
  const means = [0, 1, 2, 3, 4, 5].map(() => new Float64Array(count))
  let at = 0
  let path = 0
  let turned = 0
  for (const step of slides) {
    for (const page of source.pages(step.from, step.to)) {
      const { gap, temperature, angle, angularVelocity } = page
      for (let i = 0; i < page.rows && at < count * size; i++, at++) {
        const block = Math.floor(at / size)
        const part = Math.abs(angularVelocity[i]) * source.sampleInterval
        path += part * geometry.lever
        turned += part
        means[0][block] += (gap?.[i] ?? Number.NaN) / size
        means[1][block] += path / size
        means[5][block] += Math.sqrt(path) / size
        means[2][block] += (temperature?.[i] ?? 0) / size
        means[3][block] += Math.cos(angle[i]) / size
        means[4][block] += Math.sin(angle[i]) / size
      }
    }
  }
  if (means[0].some(Number.isNaN)) return undefined
  return {
    gap: means[0],
    path: means[1],
    root: means[5],
    whole: path,
    temperature: hasTemperature && !means[2].some(Number.isNaN) ? means[2] : undefined,
    columns: turned > 3 * Math.PI ? [means[3], means[4]] : [],
  }
}

/** The noise of a temperature sensor is no growth: a cubic through the readings. */
function smoothed(values: Float64Array): Float64Array {
  const along = values.map((_, i) => (2 * i) / (values.length - 1) - 1)
  const columns = [0, 1, 2, 3].map((power) => along.map((x) => x ** power))
  const { residuals } = linearLeastSquares(columns, values)
  return values.map((value, i) => value - residuals[i])
}
