import type { Point, Setup } from '../../core/terms/index.ts'
import { grouped, listed, percent, printed } from '../words/printed.ts'
import type { Done } from './done.ts'

/** What slid on what, what was commanded, and how the speed ran. */
export function procedure({ setup, reduction, record }: Done): string {
  const { pair, liquid } = setup
  const between = liquid === undefined ? 'dry' : `with ${liquid.name} between them`
  const interval = reduction.sampleInterval
  const every = interval > 0 ? `, one about every ${printed(interval, 'time', 2)}` : ''
  return [
    `The upper body, ${pair.upper.name}, turned on the lower body, ${pair.lower.name}, ${between}.`,
    commanded(setup),
    `The record holds ${grouped(record.rows)} rows${every}.`,
    speedCourse(reduction.points),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ')
}

function commanded({ run }: Setup): string {
  const parts: string[] = []
  if (run.axialForce !== undefined) parts.push(`an axial force of ${printed(run.axialForce, 'force')}`)
  if (run.temperature !== undefined) parts.push(`a temperature of ${printed(run.temperature, 'temperature', 4)}`)
  const room: string[] = []
  if (run.roomTemperature !== undefined) room.push(`at ${printed(run.roomTemperature, 'temperature', 4)}`)
  if (run.relativeHumidity !== undefined) room.push(`at ${percent(run.relativeHumidity)} relative humidity`)
  const first = parts.length === 0 ? '' : `The rheometer was told to hold ${listed(parts)}.`
  const second = room.length === 0 ? '' : `The room was ${listed(room)}.`
  return [first, second].filter((sentence) => sentence !== '').join(' ')
}

/** Speeds that differ by less than this share count as one. */
const sameSpeed = 0.1

function speedCourse(points: readonly Point[]): string {
  if (points.length === 0) return 'It holds no step of sliding.'
  const speeds = points.map(({ slidingSpeed }) => slidingSpeed)
  const slowest = Math.min(...speeds)
  const fastest = Math.max(...speeds)
  if (!(fastest > slowest * (1 + sameSpeed))) return `The sliding speed was held at ${printed(fastest, 'velocity')}.`
  const [low, high] = [printed(slowest, 'velocity'), printed(fastest, 'velocity')]
  const turns = points.slice(1).filter(({ direction }, i) => direction !== points[i].direction).length
  const rising = points[points.length - 1].direction === 1
  if (turns === 0) {
    return rising
      ? `The sliding speed was raised from ${low} to ${high}.`
      : `The sliding speed was lowered from ${high} to ${low}.`
  }
  const course =
    turns > 1
      ? `went up and down (${turns} turns)`
      : rising
        ? 'was lowered and then raised'
        : 'was raised and then lowered'
  return `The sliding speed ${course} between ${low} and ${high}.`
}
