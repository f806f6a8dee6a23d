import { minMaxColumns } from '../../../src/core/numeric/index.ts'
import type { ChannelName, RecordStretch } from '../../../src/core/terms/index.ts'
import type { StripFigureData } from '../../../src/figure/index.ts'

// A made-up record of 600 s: a blank, a step with a warm-up, one that loses contact, one that the fit leaves out. No lab measured it.

const stretches: readonly RecordStretch[] = [
  { kind: 'blank', step: 1, from: 0, to: 120 },
  { kind: 'warmUp', step: 2, from: 120, to: 150 },
  { kind: 'accepted', step: 2, from: 150, to: 300 },
  { kind: 'accepted', step: 3, from: 300, to: 400 },
  { kind: 'outOfContact', step: 3, from: 400, to: 420 },
  { kind: 'accepted', step: 3, from: 420, to: 480 },
  { kind: 'notFitted', step: 4, from: 480, to: 600 },
]

const apart = (time: number): boolean => time < 120 || (time >= 400 && time < 420)
const speed = (time: number): number => (time < 120 ? 0.01 : 0.002 * 30 ** Math.floor((time - 120) / 180))

const channels: Readonly<Partial<Record<ChannelName, (time: number) => number>>> = {
  angularVelocity: speed,
  torque: (time) => (apart(time) ? 1e-6 : 0.01 - 0.002 * Math.log(speed(time)) + 2e-4 * Math.sin(time)),
  axialForce: (time) => (apart(time) ? 0.02 : 5 + 0.02 * Math.sin(7 * time)),
  gap: (time) => (apart(time) ? 2e-3 : 2e-6 * Math.cos(0.3 * time)),
  temperature: (time) => (time > 200 && time < 260 ? Number.NaN : 296.15 + 0.05 * Math.sin(0.05 * time)),
}

/** The record in so many rows, thinned to so many columns. */
export function inventedStrip(rows: number, columns: number): StripFigureData {
  const time = Float64Array.from({ length: rows }, (_, row) => (600 * row) / (rows - 1))
  return {
    title: 'Lacquer on beech, four steps (invented)',
    caption: 'three steel balls 6.35 mm on a track of 15 mm, 5 N, 23 °C',
    time: [0, 600],
    channels: Object.entries(channels).map(([name, value]) => ({
      name: name as ChannelName, // the keys of the table above
      columns: minMaxColumns(time.map(value), columns),
    })),
    stretches,
    note: 'Invented data: no lab measured them.',
  }
}
