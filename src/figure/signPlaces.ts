import type { Point } from '../core/terms/index.ts'
import { hasPlace, isDrawable, ownEnds } from './domain.ts'
import { element, type Markup, rounded } from './markup.ts'
import { type Sign, type Spot, signMark, signPitch } from './signs.ts'
import type { Stage } from './stage.ts'

/** With more points than this, only signs of the weight `stops` stand on points; the key names the rest. */
const crowd = 80

/**
 * The signs on their points: above a point of a rising sweep, below one of a falling sweep, stacked, and pushed on
 * where a spot is taken by a point or another sign. A hairline leads back to the point where a sign had to move.
 */
export function signsOnPoints(points: readonly Point[], signs: readonly Sign[], stage: Stage): Markup {
  const wanted = signs.filter((sign) => !sign.everywhere && (points.length <= crowd || sign.weight === 'stops'))
  const taken: Spot[] = points
    .filter(isDrawable)
    .map((point) => ({ x: stage.x(point.slidingSpeed), y: stage.y(point.friction) }))
  const marks: Markup[] = []
  for (const point of points) {
    const own = wanted.filter((sign) => sign.steps.includes(point.step) && hasPlace(point.slidingSpeed))
    if (own.length > 0) marks.push(stack(point, own, { taken, stage }))
  }
  return element('g', {}, ...marks)
}

function stack(point: Point, own: readonly Sign[], { taken, stage }: { taken: Spot[]; stage: Stage }): Markup {
  const x = stage.x(point.slidingSpeed)
  const { top, bottom } = barOf(point, stage)
  const room = { above: top - stage.plot.top, below: stage.plot.bottom - bottom }
  const needed = own.length * signPitch + 6
  const upwards = point.direction === 1 ? room.above >= needed || room.above > room.below : room.below < needed
  const step = upwards ? -1 : 1
  let y = upwards ? top - 12 : bottom + 13
  const marks: Markup[] = []
  const foot = y
  for (const sign of own) {
    for (let tries = 0; tries < 12 && taken.some((spot) => collides(spot, { x, y })); tries++) y += step * 4
    y = Math.min(Math.max(y, stage.plot.top + 8), stage.plot.bottom - 9)
    taken.push({ x, y })
    marks.push(signMark(sign, { x, y }, stage.palette))
    y += step * signPitch
  }
  const last = taken[taken.length - own.length]?.y ?? foot
  return Math.abs(last - foot) > 8
    ? leader({ x, y: last }, upwards ? top : bottom, stage) + marks.join('')
    : marks.join('')
}

const collides = (one: Spot, two: Spot): boolean =>
  Math.abs(one.x - two.x) < signPitch - 1 && Math.abs(one.y - two.y) < signPitch - 1

function barOf(point: Point, stage: Stage): { readonly top: number; readonly bottom: number } {
  if (!isDrawable(point)) return { top: stage.plot.bottom - 12, bottom: stage.plot.bottom }
  const middle = stage.y(point.friction)
  const ends = ownEnds(point) ?? { low: point.friction, high: point.friction }
  const top = stage.y(ends.high)
  const bottom = stage.y(ends.low)
  const long = 60
  return {
    top: Math.max(Math.min(top, middle), middle - long),
    bottom: Math.min(Math.max(bottom, middle), middle + long),
  }
}

const leader = ({ x, y }: Spot, to: number, stage: Stage): Markup =>
  element('path', {
    d: `M${rounded(x)} ${rounded(y)}V${rounded(to)}`,
    stroke: stage.palette.quiet,
    'stroke-width': 0.7,
    fill: 'none',
  })
