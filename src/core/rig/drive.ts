import type { Radian, RadianPerSecond, Second } from '../terms/index.ts'
import type { SheetStep } from './sheetSteps.ts'

/** What the motor does at one moment of a step. */
export interface Motion {
  readonly speed: RadianPerSecond
  /** rad/s² */
  readonly acceleration: number
  /** Angle turned since the step began: the exact integral of the speed. */
  readonly turned: Radian
}

/** The commanded speed of the step plus what is left, after `time`, of the speed at which the step was entered. */
export function motionAt(step: SheetStep, time: Second, entry: { speed: RadianPerSecond; riseTime: Second }): Motion {
  const command = commandAt(step, time)
  if (!(entry.riseTime > 0)) return command
  const missing = entry.speed - step.begins
  const left = missing * Math.exp(-time / entry.riseTime)
  return {
    speed: command.speed + left,
    acceleration: command.acceleration - left / entry.riseTime,
    turned: command.turned + (missing - left) * entry.riseTime,
  }
}

function commandAt(step: SheetStep, time: Second): Motion {
  if (step.law === 'constant' || step.begins === step.ends) {
    return { speed: step.begins, acceleration: 0, turned: step.begins * time }
  }
  if (step.law === 'linear') {
    const acceleration = (step.ends - step.begins) / step.duration
    return {
      speed: step.begins + acceleration * time,
      acceleration,
      turned: (step.begins + (acceleration / 2) * time) * time,
    }
  }
  const growth = Math.log(step.ends / step.begins) / step.duration
  const speed = step.begins * Math.exp(growth * time)
  return { speed, acceleration: speed * growth, turned: (step.begins * Math.expm1(growth * time)) / growth }
}
