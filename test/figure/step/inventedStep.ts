import { autocorrelations } from '../../../src/core/stats/index.ts'
import type { AutocorrelationFigureData, StepTraceFigureData, TurnPlotFigureData } from '../../../src/figure/index.ts'

// A made-up step of 24 s over two turns with a warm-up of 4 s. No lab measured it.

const rows = 481
const full = 2 * Math.PI
const note = 'Invented data: no lab measured them.'

export const time = Float64Array.from({ length: rows }, (_, row) => 300 + 0.05 * row)
export const angle = time.map((at) => 40 + ((at - 300) / 12) * full)
const wave = angle.map((at) => 0.2 * (1 + 0.04 * Math.cos(at - 1) + 0.01 * Math.cos(3 * at)))
const jitter = time.map((_, row) => 0.002 * Math.sin(1.7 * row * row) + 0.001 * Math.sin(0.9 * row))
export const friction = time.map((at, row) => wave[row] + jitter[row] + (at < 304 ? 0.03 * Math.exp(-(at - 300)) : 0))

export const trace: StepTraceFigureData = {
  title: 'Step 4 at 2 mm/s (invented)',
  caption: 'lacquer on beech, 5 N',
  time,
  friction,
  keptFrom: 304,
  keptTo: 324,
  value: { friction: 0.2004, low: 0.1992, high: 0.2016 },
  note,
}

const kept = friction.subarray(80)

export const turns: TurnPlotFigureData = {
  title: 'Step 4 over the turn (invented)',
  angle: angle.subarray(80),
  friction: kept,
  fit: {
    friction: 0.2,
    harmonics: [
      { order: 1, amplitude: 0.04, phase: 1, uncertainty: 0.002 },
      { order: 3, amplitude: 0.01, phase: 0, uncertainty: 0.002 },
    ],
  },
  note,
}

export const memory: AutocorrelationFigureData = {
  title: 'How long readings of step 4 remember (invented)',
  correlations: autocorrelations(
    kept.map((_, row) => jitter[row + 80] + (row === 0 ? 0 : 0.6 * jitter[row + 79])),
    40,
  ),
  readings: 400,
  lag: 0.05,
  time: 2.4,
  note,
}
