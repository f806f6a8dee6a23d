/** Where times lie across a picture, in pixels from its left edge. */
export interface TimePlace {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
  readonly placeOf: (time: number) => number
  readonly timeAt: (x: number) => number
}
