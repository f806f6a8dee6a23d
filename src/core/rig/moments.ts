import type { RadianPerSecond, Second } from '../terms/index.ts'
import { motionAt } from './drive.ts'
import type { Moment } from './moment.ts'
import type { SheetStep } from './sheetSteps.ts'

/** Every sample of the run in order. A sample is taken at the end of its interval; the motor starts from rest. */
export function* moments(
  steps: readonly SheetStep[],
  { riseTime, samplingRate }: { riseTime: Second; samplingRate: number },
): Generator<Moment, void> {
  if (!(riseTime >= 0)) throw new RangeError(`riseTime must be zero or more, got ${riseTime} s`)
  const interval = 1 / samplingRate
  let entry: { speed: RadianPerSecond; riseTime: Second } = { speed: 0, riseTime }
  let stepAngle = 0
  for (const step of steps) {
    let before = 0
    let speed = entry.speed
    for (let row = step.from; row < step.to; row++) {
      const inStep = (row - step.from + 1) / samplingRate
      const motion = motionAt(step, inStep, entry)
      speed = motion.speed
      yield {
        step,
        time: (row + 1) / samplingRate,
        inStep,
        speed,
        acceleration: motion.acceleration,
        angle: stepAngle + motion.turned,
        turned: motion.turned - before,
        interval,
      }
      before = motion.turned
    }
    stepAngle += before
    entry = { speed, riseTime }
  }
}
