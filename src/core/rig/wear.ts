import type { FixtureSpec, Metre } from '../terms/index.ts'

/**
 * How the bodies grow shorter while they slide, so that the gap reading falls.
 * `perDistance`: plain m of depth per m of sliding. `archard`: worn volume = specific rate (m³/(N·m)) × load × distance
 * at every contact; a ball or dome loses a cap, a flat face an even layer.
 */
export type Wear =
  | { readonly kind: 'perDistance'; readonly rate: number }
  | { readonly kind: 'archard'; readonly specificRate: number }

/** What one contact has been through. */
export interface Slid {
  readonly distance: Metre
  /** Integral of the load on one contact over the distance, N·m. */
  readonly work: number
}

/** By how much the gap has closed. The cap is taken as flat, V = πRh², good while h is well under R. */
export function wornGap(wear: Wear, fixture: FixtureSpec, slid: Slid): Metre {
  if (wear.kind === 'perDistance') return wear.rate * slid.distance
  const volume = wear.specificRate * slid.work
  const cap = (radius: Metre): Metre => Math.sqrt(volume / (Math.PI * radius))
  switch (fixture.kind) {
    case 'ballsOnPlate':
      return cap(fixture.ballDiameter / 2)
    case 'ballOnPlates':
      // A layer worn off at right angles to an inclined plate lets the ball sink by more.
      return cap(fixture.ballDiameter / 2) / Math.cos(fixture.inclination)
    case 'ballOnBalls':
      return cap(fixture.ballDiameter / 2) * Math.sqrt(3 / 2)
    case 'pinsOnDisc':
      if (fixture.endRadius !== undefined) return cap(fixture.endRadius)
      return volume / ((Math.PI / 4) * fixture.pinDiameter ** 2)
    case 'ringOnPlate':
      return (volume * fixture.segments) / (Math.PI * (fixture.outerRadius ** 2 - fixture.innerRadius ** 2))
    case 'discOnPlate':
      return volume / (Math.PI * fixture.radius ** 2)
  }
}
