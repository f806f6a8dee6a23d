import type { FixtureKind } from './setup.ts'
import type { Metre, Radian } from './si.ts'

/**
 * A place in a drawing, m. Side view: `x` to the right of the axis of rotation, `y` up from the level of the contacts.
 * Top view: `x` to the right, `y` away from the viewer of the side view; the axis is at 0, 0.
 */
export interface ViewPlace {
  readonly x: Metre
  readonly y: Metre
}

/** What has a place in a drawing; `sector` is a piece of a ring around the axis of the top view. */
export type OutlineForm =
  | { readonly form: 'circle'; readonly at: ViewPlace; readonly radius: Metre }
  | { readonly form: 'polygon'; readonly places: readonly ViewPlace[] }
  | {
      readonly form: 'sector'
      readonly outerRadius: Metre
      readonly innerRadius: Metre
      readonly from: Radian
      readonly to: Radian
    }

/**
 * One outline. `upper` and `lower` are the two bodies, `holder` is what carries them. Sizes that the fixture does not
 * state (plates, holders, the height of pins) are chosen so that the drawing can be read.
 */
export type OutlineShape = OutlineForm & {
  readonly body: 'upper' | 'lower' | 'holder'
  /** `behind` the plane of the drawing; in the top view under another body. */
  readonly behind: boolean
}

/** Lengths and angles of a fixture that a drawing states. */
export type OutlineDimensionName =
  | 'lever'
  | 'ballDiameter'
  | 'trackRadius'
  | 'inclination'
  | 'outerRadius'
  | 'innerRadius'
  | 'discRadius'
  | 'pinDiameter'
  | 'endRadius'

/** Where a dimension goes: between two places and out to one side, from the axis to a radius, between two directions, or at a leader's end. */
export type OutlineDimensionForm =
  | {
      readonly form: 'distance'
      readonly from: ViewPlace
      readonly to: ViewPlace
      readonly away: 'left' | 'right' | 'below'
    }
  | { readonly form: 'radius'; readonly direction: Radian }
  | {
      readonly form: 'angle'
      readonly apex: ViewPlace
      readonly from: Radian
      readonly to: Radian
      readonly radius: Metre
    }
  | { readonly form: 'leader'; readonly at: ViewPlace }

/** A dimension with its value in m or rad and its standard uncertainty, 0 where none is stated. */
export type OutlineDimension = OutlineDimensionForm & {
  readonly name: OutlineDimensionName
  readonly value: number
  readonly uncertainty: number
}

/** One view of a fixture. */
export interface OutlineView {
  /** From back to front. */
  readonly shapes: readonly OutlineShape[]
  readonly dimensions: readonly OutlineDimension[]
  /** Where the bodies touch, in this view; the first lies in the plane of the side view. */
  readonly contacts: readonly ViewPlace[]
}

/** The face that touches, for the enlargement: a spot whose size follows from load and bodies, a round face, or a band around the axis. */
export type ContactFace =
  | { readonly form: 'spot' }
  | { readonly form: 'round'; readonly radius: Metre }
  | { readonly form: 'band'; readonly outerRadius: Metre; readonly innerRadius: Metre }

/** A fixture as a drawing to scale: outlines, dimensions and contacts in two views. */
export interface FixtureOutline {
  readonly kind: FixtureKind
  readonly side: OutlineView
  readonly top: OutlineView
  readonly lever: Metre
  /** Contacts that share the load. */
  readonly contactCount: number
  readonly face: ContactFace
  /** Half the width of the shaft and the height of its end over the contacts, for the arrows of force and rotation. */
  readonly shaft: { readonly halfWidth: Metre; readonly top: Metre }
}
