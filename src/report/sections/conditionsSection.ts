import type { Point } from '../../core/terms/index.ts'
import type { Fact } from '../reportContent.ts'
import { counted, grouped, percent, printed } from '../words/printed.ts'
import { printedSpan } from '../words/printedSpan.ts'
import type { SectionOf } from './sectionOf.ts'

const notStated = 'not stated'

/** What was commanded and what was seen. What nobody said is said to be missing, since dry friction hangs on it. */
export const conditionsSection: SectionOf = ({ setup: { run }, reduction: { points }, record, texts }) => {
  const facts: Fact[] = [
    {
      term: 'Axial force',
      value: commandedAndSeen(
        run.axialForce === undefined ? undefined : printed(run.axialForce, 'force'),
        printedSpan(
          points.map(({ axialForce }) => axialForce),
          (value) => printed(value, 'force', 4),
        ),
      ),
    },
    {
      term: 'Temperature',
      value: commandedAndSeen(
        run.temperature === undefined ? undefined : printed(run.temperature, 'temperature', 4),
        printedSpan(
          points.flatMap(({ temperature }) => temperature ?? []),
          (value) => printed(value, 'temperature', 4),
        ),
      ),
    },
    {
      term: 'Sliding speed',
      value:
        printedSpan(
          points.map(({ slidingSpeed }) => slidingSpeed),
          (v) => printed(v, 'velocity'),
        ) ?? notStated,
    },
    { term: 'Kept rows', value: keptInWords(points, record.rows) },
    {
      term: 'Room',
      value:
        run.roomTemperature === undefined ? `temperature ${notStated}` : printed(run.roomTemperature, 'temperature', 4),
    },
    {
      term: 'Relative humidity',
      value: run.relativeHumidity === undefined ? notStated : percent(run.relativeHumidity),
    },
    { term: 'Measured on', value: texts.measured ?? notStated },
    { term: 'Operator', value: run.operator ?? notStated },
  ]
  return { heading: 'Conditions', blocks: [{ kind: 'facts', facts }] }
}

function commandedAndSeen(commanded: string | undefined, seen: string | undefined): string {
  const told = commanded === undefined ? 'not commanded in the setup' : `${commanded} commanded`
  return seen === undefined ? told : `${told}; ${seen} as the means of the steps`
}

function keptInWords(points: readonly Point[], rows: number): string {
  const kept = points.reduce((sum, point) => sum + point.rows.to - point.rows.kept, 0)
  const time = points.reduce((sum, { duration }) => sum + duration, 0)
  return `${grouped(kept)} of ${grouped(rows)} rows in ${counted(points.length, 'step')}, ${printed(time, 'time')} together`
}
