import { fixtureOutline } from '../core/fixture/index.ts'
import { columnEdges, minMaxColumns } from '../core/numeric/index.ts'
import { recordStretches, recordTurnMap } from '../core/reduce/index.ts'
import type { ChannelName, Channels, Metre } from '../core/terms/index.ts'
import {
  budgetFigure,
  curveFigure,
  enlargesContact,
  type FixtureFigureData,
  fixtureFigure,
  type PaletteName,
  remarksFigure,
  type StripFigureData,
  stripColumns,
  stripFigure,
  turnMapFigure,
} from '../figure/index.ts'
import type { ReportFigure } from '../report/index.ts'
import { regimeNames } from './drawCurve.ts'
import type { ReducedRecord } from './reducedRecord.ts'

/** Pixels: at the width of a printed page the letters of a figure are then about as large as those of a table. */
const width = 720

type Draw = (options: { palette: PaletteName; width: number; id: string }) => string

/** All pictures of one record, each for a light and for a dark page. `contactRadius` enlarges the contact to scale. */
export function reportFigures(
  reduced: ReducedRecord,
  channels: Channels,
  contactRadius: Metre | null,
): readonly ReportFigure[] {
  const { setup, reduction, curve } = reduced
  const { points, window } = reduction
  const fixture: FixtureFigureData = {
    title: 'Fixture',
    outline: fixtureOutline(setup.fixture),
    axialForce: setup.run.axialForce,
    contactRadius: contactRadius ?? undefined,
  }
  const views = enlargesContact(fixture)
    ? 'from the side, from above, and one contact enlarged'
    : 'from the side and from above'
  return [
    figure('fixture', `The fixture to scale: ${views}.`, (options) =>
      fixtureFigure(fixture, { ...options, viewHeight: 150 }),
    ),
    ...recordFigures(reduced, channels),
    figure(
      'curve',
      'Friction of each step with its own 95 % interval, the fitted curve with its 95 % band, and the speeds that may be believed.',
      (options) =>
        curveFigure(
          { title: 'Friction against sliding speed', points, curve, window, regimes: regimeNames(setup) },
          { ...options, plotHeight: 300 },
        ),
    ),
    ...(points.length === 0
      ? []
      : [
          figure('budget', 'What makes the uncertainty: median over the trusted points, and their range.', (options) =>
            budgetFigure({ title: 'Uncertainty by cause', points }, options),
          ),
        ]),
    ...(points.some(({ remarks }) => remarks.length > 0)
      ? [
          figure('remarks', 'Remarks along the curve, each with what was seen against its limit.', (options) =>
            remarksFigure({ title: 'Remarks along the curve', points, remarks: reduced.remarks }, options),
          ),
        ]
      : []),
  ]
}

function figure(name: ReportFigure['name'], caption: string, draw: Draw): ReportFigure {
  return {
    name,
    caption,
    svg: draw({ palette: 'light', width, id: name }),
    darkSvg: draw({ palette: 'dark', width, id: `${name}-dark` }),
  }
}

/** Channels that the strip shows, from top to bottom. */
const shown: readonly ChannelName[] = [
  'angularVelocity',
  'slidingSpeed',
  'torque',
  'frictionForce',
  'axialForce',
  'gap',
  'temperature',
]

/** The record over time, and folded by turns where it holds some. */
function recordFigures(reduced: ReducedRecord, channels: Channels): ReportFigure[] {
  const { setup, reduction } = reduced
  if (channels.rows < 2 || !channels.names.includes('time')) return []
  const time = channels.read('time', 0, channels.rows)
  const edges = columnEdges(time, stripColumns(width))
  const data: StripFigureData = {
    title: 'The record over time',
    time: [time[0], time[time.length - 1]],
    channels: shown
      .filter((name) => channels.names.includes(name))
      .map((name) => ({ name, columns: minMaxColumns(channels.read(name, 0, channels.rows), edges) })),
    stretches: recordStretches(channels, setup, reduction),
  }
  const strip = figure('strip', 'The record as it came, and what became of every stretch of it.', (options) =>
    stripFigure(data, { ...options, panelHeight: 56 }),
  )
  if (!reduction.points.some(({ turns }) => turns >= 1)) return [strip]
  const map = recordTurnMap({ channels, setup, reduction }, 'frictionSwing')
  const turns = figure(
    'turnMap',
    'The record folded by turns: how friction differs from the value of its step, over angle and turn.',
    (options) =>
      turnMapFigure(
        { title: 'Friction over the turn', map, quantity: 'frictionSwing', steps: map.steps },
        { ...options, plotHeight: 220 },
      ),
  )
  return [strip, turns]
}
