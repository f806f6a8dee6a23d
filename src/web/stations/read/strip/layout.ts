import type { ChannelName } from '../../../../core/terms/index.ts'
import type { DrawnChannel } from '../../../../figure/index.ts'

/** Where the parts of a strip lie, in pixels of the page. */
export interface StripLayout {
  readonly width: number
  readonly height: number
  readonly left: number
  readonly right: number
  /** The lane of signs that tells what became of every stretch, with step numbers above. */
  readonly lane: { readonly top: number; readonly bottom: number }
  readonly panels: readonly { readonly name: DrawnChannel; readonly top: number; readonly bottom: number }[]
  readonly bottom: number
}

/** Channels that a strip shows, from top to bottom. */
const shown: readonly DrawnChannel[] = [
  'angularVelocity',
  'slidingSpeed',
  'torque',
  'frictionForce',
  'axialForce',
  'gap',
  'temperature',
]

const gap = 8
const axis = 40

/** @param width of the whole strip; narrow ones spare the words at the right */
export function stripLayout(names: readonly ChannelName[], width: number, panelHeight = 62): StripLayout {
  const lane = { top: 18, bottom: 30 }
  const panels = shown
    .filter((name) => names.includes(name))
    .map((name, index) => {
      const top = lane.bottom + 6 + index * (panelHeight + gap)
      return { name, top, bottom: top + panelHeight }
    })
  const bottom = panels.at(-1)?.bottom ?? lane.bottom + 6
  return { width, height: bottom + axis, left: 62, right: Math.max(63, width - 106), lane, panels, bottom }
}
