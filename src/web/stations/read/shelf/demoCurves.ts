/** A curve of the demo in a few numbers, for stations that hold nothing yet. */
export interface DemoCurve {
  readonly name: string
  /** Sliding speed in m/s and friction of each step. */
  readonly places: readonly (readonly [slidingSpeed: number, friction: number])[]
}

/** What the invented records of the lacquer workshop give; nobody measured them. */
export const demoCurves: readonly DemoCurve[] = [
  {
    name: 'lacquer-a-1',
    places: [
      [0.0005, 0.2621],
      [0.00091, 0.2631],
      [0.00166, 0.2649],
      [0.00302, 0.2677],
      [0.00549, 0.2716],
      [0.01, 0.2763],
      [0.0182, 0.2812],
      [0.0331, 0.2859],
      [0.0603, 0.2906],
      [0.11, 0.2949],
      [0.2, 0.2991],
    ],
  },
  {
    name: 'lacquer-b-1',
    places: [
      [0.0005, 0.2475],
      [0.00091, 0.2462],
      [0.00166, 0.2444],
      [0.00302, 0.2426],
      [0.00549, 0.2413],
      [0.01, 0.2408],
      [0.0182, 0.2411],
      [0.0331, 0.2419],
      [0.0603, 0.243],
      [0.11, 0.2443],
      [0.2, 0.2457],
    ],
  },
  {
    name: 'wax',
    places: [
      [0.0002, 0.2183],
      [0.000316, 0.2168],
      [0.000499, 0.2144],
      [0.000788, 0.2101],
      [0.00124, 0.2028],
      [0.00197, 0.1909],
      [0.00311, 0.1729],
      [0.0049, 0.1487],
      [0.00775, 0.1204],
      [0.0122, 0.09262],
      [0.0193, 0.0702],
      [0.0305, 0.05541],
      [0.0482, 0.04779],
      [0.0761, 0.04585],
      [0.12, 0.04795],
      [0.19, 0.05304],
      [0.3, 0.06049],
    ],
  },
]
