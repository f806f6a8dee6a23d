import type { CurveMember } from './curveMember.ts'

/** Half the distance, in ln v, of the speeds from whose friction a slope is taken: nine digits of slope, seven of bend. */
const apart = 1e-4

/** A curve with given inner parameters at single speeds. */
export class CurveAt {
  private readonly member: CurveMember
  private readonly parameters: Float64Array
  private readonly lnSpeeds = new Float64Array(3)
  private readonly lnFriction = new Float64Array(3)

  constructor(member: CurveMember, parameters: Float64Array) {
    this.member = member
    this.parameters = parameters
  }

  /** ln μ. */
  level(lnSpeed: number): number {
    this.look(lnSpeed)
    return this.lnFriction[1]
  }

  /** d ln μ / d ln v. */
  slope(lnSpeed: number): number {
    this.look(lnSpeed)
    return (this.lnFriction[2] - this.lnFriction[0]) / (2 * apart)
  }

  /** d² ln μ / d (ln v)². */
  bend(lnSpeed: number): number {
    this.look(lnSpeed)
    return (this.lnFriction[2] - 2 * this.lnFriction[1] + this.lnFriction[0]) / apart ** 2
  }

  private look(lnSpeed: number): void {
    this.lnSpeeds[0] = lnSpeed - apart
    this.lnSpeeds[1] = lnSpeed
    this.lnSpeeds[2] = lnSpeed + apart
    this.member.evaluate(this.parameters, { lnSpeeds: this.lnSpeeds, lnFriction: this.lnFriction })
  }
}
