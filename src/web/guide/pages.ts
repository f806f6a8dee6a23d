import type { StationName } from '../frame/stations.ts'

/** One page of the guided demo: where it stands, what it says, and what it points at. */
export interface GuidePage {
  readonly station: StationName
  readonly search?: Readonly<Record<string, string>>
  readonly title: string
  readonly text: string
  /** What to try, one thing. */
  readonly tryIt: string
  /** Selector of what is meant; it gets an outline. */
  readonly points?: string
}

/** Two minutes on the lacquer study. Everything that is changed on the way can be undone with z. */
export const guidePages: readonly GuidePage[] = [
  {
    station: 'ask',
    title: 'A question is a sentence',
    text: 'A workshop looks for a lacquer on wooden drawer runners. What is underlined can be changed in place; lighter ink is a default that nobody has confirmed.',
    tryIt: 'Click the difference that does not matter and type 10 %.',
    points: '[aria-label^="difference worth knowing"]',
  },
  {
    station: 'ask',
    title: 'What it will answer, and what it costs',
    text: 'Before anything is measured the page says how many replicates tell that difference, how many hours they take, and in which order they run.',
    tryIt: 'Click the number of replicates: every computed number answers “why?”.',
    points: '.answer .computed',
  },
  {
    station: 'plan',
    title: 'The plan is a paragraph',
    text: 'It is how people at the rig say it, and with what was really done it becomes the method section of the report. Pictures follow within a frame.',
    tryIt: 'Drag the load sideways and watch the pictures.',
    points: '[aria-label^="axial force"]',
  },
  {
    station: 'plan',
    search: { window: 'load' },
    title: 'The window says what can be measured',
    text: 'Speed to the right, load upwards. Where the paper is clean friction can be measured; a letter names what forbids the rest: the rig, the bodies, or the time.',
    tryIt: 'Drag the line of the load up until the coating is pressed too deep.',
    points: '.handle-vertical',
  },
  {
    station: 'rig-up',
    title: 'The run sheet, at the rig',
    text: 'One step at a time, cautions in front of the step they belong to, each check with its range and what to do otherwise. It works when the server is away, and prints.',
    tryIt: 'Tick the first step.',
  },
  {
    station: 'read',
    title: 'Records, with their remarks',
    text: 'Drop raw tables anywhere on the page. Each becomes a small curve; signs beside it are remarks: findings with the number that tripped them. They never block and never vanish.',
    tryIt: 'Open a record and click a point: its stretch lights up in the strip above.',
  },
  {
    station: 'decide',
    title: 'The verdict is a sentence',
    text: 'Which sample slips more easily, over which speeds, by how much, and where the data cannot tell; then the band and the margin behind it.',
    tryIt: 'Read the verdict, then look for the speeds that it leaves open.',
  },
  {
    station: 'report',
    title: 'The paper as it will print',
    text: 'At its side stands what a complete report still lacks, each item a link to where it is filled in. Every result can be made again from its bytes.',
    tryIt: 'Follow one of the missing items. That was the round: z undoes, ? lists the keys, g opens the glossary.',
  },
]
