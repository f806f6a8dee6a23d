import type {
  ControlChartData,
  LimitFigureData,
  OutcomeFigureData,
  RoundFigureData,
} from '../../../src/figure/index.ts'

const note = 'Invented data: no lab measured them.'

const values = [
  0.1203, 0.1188, 0.1211, 0.1196, 0.1207, 0.1192, 0.1199, 0.1213, 0.1201, 0.119, 0.1204, 0.1198, 0.1215, 0.1209, 0.1221,
  0.1218, 0.1226, 0.1222, 0.1231, 0.1264,
]
const centre = 0.12004
const deviation = 0.00119

/** A check standard that creeps up after its twelfth measurement. */
export const chart: ControlChartData = {
  title: 'Check oil on steel at 10 mm/s',
  caption: 'friction coefficient, one value a measuring day',
  quantity: 'friction coefficient (1)',
  values: values.map((value, i) => ({ label: `${i < 9 ? '0' : ''}${i + 1} Oct`, value })),
  centre,
  lower: centre - 3 * deviation,
  upper: centre + 3 * deviation,
  movingRanges: values.slice(1).map((value, i) => Math.abs(value - values[i])),
  rangeUpper: 0.00439,
  baseline: 12,
  ewma: values.map((value, i) => ({
    mean: 0.12 + 0.0001 * i + (i > 14 ? 0.0005 : 0) + 0 * value,
    lower: centre - 0.0012 * (1 - 0.6 ** (i + 1)),
    upper: centre + 0.0012 * (1 - 0.6 ** (i + 1)),
  })),
  alarms: [
    { at: 17, from: 13, words: 'four of five values beyond one standard deviation on one side', state: 'answered' },
    { at: 19, from: 19, words: 'one value beyond three standard deviations', state: 'open' },
    { at: 19, from: 12, words: 'eight values running on one side of the centre', state: 'open' },
  ],
  note,
}

const speeds = [0.001, 0.003, 0.01, 0.03, 0.1, 0.3]
const labs = ['north', 'south', 'east', 'west', 'harbour', 'hill', 'valley', 'forest']

export const round: RoundFigureData = {
  title: 'Round of eight laboratories, lacquer A',
  caption: 'three mountings each, six speeds from slow to fast',
  laboratories: labs,
  levels: speeds.map((slidingSpeed, level) => ({
    slidingSpeed,
    repeatability: 0.03 + 0.004 * level,
    reproducibility: 0.06 + 0.006 * level,
    marks: labs.map((_, lab) => ({
      h: lab === 7 ? 2.2 - 0.1 * level : Math.sin(1.3 * lab + 0.2 * level),
      k: lab === 2 && level > 3 ? 2.3 : 0.6 + 0.5 * Math.abs(Math.cos(lab + level)),
    })),
  })),
  hCritical: 2.15,
  kCritical: 2.06,
  note,
}

export const limit: LimitFigureData = {
  title: 'Lacquer B against the drawer limit',
  caption: 'friction at most 0.12 from 1 to 300 mm/s; guard band w = U',
  lower: null,
  upper: 0.12,
  verdict: 'cannotTell',
  sentence: 'Nobody can tell: at 3 mm/s friction lies within the guard band.',
  speeds: [0.001, 0.003, 0.01, 0.03, 0.1, 0.3].map((slidingSpeed, i) => {
    const friction = [0.131, 0.117, 0.101, 0.084, 0.076, 0.079][i]
    const half = 0.006
    return {
      slidingSpeed,
      friction,
      low: friction - half,
      high: friction + half,
      passGuard: half,
      verdict: i === 0 ? ('fail' as const) : i === 1 ? ('cannotTell' as const) : ('pass' as const),
    }
  }),
  note,
}

const steps = 60
const bell = (z: number): number => 0.3989422804 * Math.exp(-0.5 * z * z)

export const outcome: OutcomeFigureData = {
  title: 'Wear rate of the ball from its scar',
  caption: 'V = πd⁴/(64R), k = V/(F·s)',
  quantity: 'specific wear rate (10⁻⁶ mm³/(N·m))',
  histogram: {
    low: 0,
    high: 6,
    counts: Array.from({ length: steps }, (_, i) =>
      Math.round((100_000 * 0.1 * bell((Math.log((i + 0.5) / 10) - 0.7) / 0.3)) / 0.3 / ((i + 0.5) / 10)),
    ),
  },
  density: Array.from({ length: 121 }, (_, i) => bell((i / 20 - 2.05) / 0.62) / 0.62),
  trials: 100_000,
  intervals: [
    { words: 'law of propagation, 95 %', low: 0.83, high: 3.27, by: 'linear' },
    { words: 'Monte Carlo, 95 % as much on either side', low: 1.12, high: 3.63, by: 'monteCarlo' },
    { words: 'Monte Carlo, shortest 95 %', low: 0.98, high: 3.4, by: 'monteCarlo' },
  ],
  estimate: 2.01,
  shares: [
    { words: 'scar diameter', share: 0.86 },
    { words: 'axial force', share: 0.11 },
    { words: 'sliding distance', share: 0.03 },
  ],
  sentence: 'The law of propagation does not hold here: its ends lie 0.29 and 0.36 off.',
  note,
}
