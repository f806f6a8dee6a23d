import { type Point, type SharedSource, sharedSources } from '../../core/terms/index.ts'
import type { DataColumn } from './dataTable.ts'

type Value = (point: Point) => number | null

const column = (type: 'number' | 'integer', about: string, cell: Value) => ({ type, unit: '', about, cell }) as const
const ratio = (about: string, cell: Value) => column('number', about, cell)
const count = (about: string, cell: Value) => column('integer', about, cell)
const quantity = (unit: string, about: string, cell: Value) => ({ ...ratio(about, cell), unit })

const sharedWords: Readonly<Record<SharedSource, string>> = {
  torqueScale: 'the scale of the torque',
  forceScale: 'the scale of the axial force',
  forceZero: 'the zero of the axial force',
  torqueBlank: 'the torque blank',
  lever: 'lever arm and load factor',
  loadFactor: 'the load factor',
  tilt: 'tilt',
}

/** Columns by their names, which are those of the JSON of a result. */
const columns: Readonly<Record<string, Omit<DataColumn<Point>, 'name'>>> = {
  step: count('Number of the step in the record.', ({ step }) => step),
  slidingSpeed: quantity('m/s', 'Mean sliding speed over the kept rows.', ({ slidingSpeed }) => slidingSpeed),
  friction: ratio('Coefficient of friction; empty where none can be had.', ({ friction }) => friction),
  low: ratio('Lower end of the 95 % interval of the own part.', ({ low }) => low),
  high: ratio('Upper end of the 95 % interval of the own part.', ({ high }) => high),
  ownUncertainty: ratio('Standard uncertainty that differs from point to point.', (point) => point.ownUncertainty),
  sharedUncertainty: ratio('Standard uncertainty that all points share.', (point) => point.sharedUncertainty),
  ...Object.fromEntries(
    sharedSources.map((source) => [
      `shared.${source}`,
      ratio(`Standard uncertainty of friction from ${sharedWords[source]}.`, ({ shared }) => shared[source] ?? null),
    ]),
  ),
  degreesOfFreedom: ratio('Effective degrees of freedom of the own uncertainty.', (point) => point.degreesOfFreedom),
  turns: ratio('Turns that the kept rows hold.', ({ turns }) => turns),
  duration: quantity('s', 'Duration of the kept rows.', ({ duration }) => duration),
  torque: quantity('N·m', 'Mean torque after blank and inertia.', ({ torque }) => torque),
  axialForce: quantity('N', 'Mean axial force after its zero.', ({ axialForce }) => axialForce),
  gap: quantity('m', 'Mean gap.', ({ gap }) => gap),
  temperature: quantity('K', 'Mean temperature.', ({ temperature }) => temperature),
  autocorrelationTime: ratio('Integrated autocorrelation time in samples.', (point) => point.autocorrelationTime),
  direction: count('1 where speed rises from the step before, -1 where it falls.', ({ direction }) => direction),
  trusted: {
    type: 'boolean',
    unit: '',
    about: 'False for a point that the curve leaves out.',
    cell: ({ trusted }) => trusted,
  },
  rowFrom: count('First row of the step, from 0.', ({ rows }) => rows.from),
  rowKept: count('First row that was kept.', ({ rows }) => rows.kept),
  rowTo: count('Row after the last one.', ({ rows }) => rows.to),
  remarks: {
    type: 'text',
    unit: '',
    about: 'Kinds of the remarks on the point, with blanks between them.',
    cell: ({ remarks }) => [...new Set(remarks.map(({ kind }) => kind))].join(' '),
  },
}

/** Columns of an exported table of points, SI throughout. */
export const pointColumns: readonly DataColumn<Point>[] = Object.entries(columns).map(([name, rest]) => ({
  name,
  ...rest,
}))
