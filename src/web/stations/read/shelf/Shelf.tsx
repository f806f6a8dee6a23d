import { type ReactNode, useMemo } from 'react'
import { printQuantity } from '../../../../core/quantity/index.ts'
import { remarkWords } from '../../../../core/terms/index.ts'
import { signMarkup, smallCurve, smallCurveAxes } from '../../../../figure/index.ts'
import type { RecordBrief } from '../../../../server/contract/index.ts'
import type { StudyView } from '../../../api/study.ts'
import { Link } from '../../../frame/Link.tsx'
import { useLook } from '../../../frame/look.ts'
import { Svg } from '../Svg.tsx'

/** All records of a study as small curves on common axes, with their remarks as signs, sample by sample. */
export function Shelf({ records, samples }: Pick<StudyView, 'records' | 'samples'>): ReactNode {
  const curves = useMemo(() => new Map(records.map((record) => [record.id, curveOf(record)])), [records])
  const axes = useMemo(() => smallCurveAxes([...curves.values()]), [curves])
  const names = new Map(samples.map(({ id, name }) => [id, name]))
  const groups = Map.groupBy(records, ({ sample }) => names.get(sample ?? '') ?? sample ?? 'of no sample')
  return (
    <div className="shelf">
      {[...groups].map(([sample, own]) => (
        <section key={sample} aria-label={`Sample ${sample}`}>
          <h3>{sample}</h3>
          <ul>
            {own.map((record) => (
              <li key={record.id}>
                <ShelfRecord record={record} curve={{ ...(curves.get(record.id) ?? curveOf(record)), ...axes }} />
              </li>
            ))}
          </ul>
        </section>
      ))}
    </div>
  )
}

type Curve = Parameters<typeof smallCurve>[0]

const curveOf = (record: RecordBrief): Curve => ({ points: record.points, line: record.line, words: inWords(record) })

function ShelfRecord({ record, curve }: { readonly record: RecordBrief; readonly curve: Curve }): ReactNode {
  const palette = useLook()
  const { state, window, remarks } = record
  return (
    <Link to={{ rest: [record.id.slice(0, 12)] }} className="shelf-record">
      <Svg markup={smallCurve(curve, { palette, width: 176, height: 88 })} />
      <span className="shelf-name">{record.name}</span>
      <span className="quiet">
        {state === 'reduced' ? speedsInWords(window) : state === 'withoutSetup' ? 'no setup yet' : 'not reduced'}
      </span>
      {remarks.length > 0 && (
        <span className="shelf-signs">
          {remarks
            .filter(({ weight }) => weight !== 'note')
            .map(({ kind, words, weight, count }) => (
              <span key={kind} title={`${words}: ${count}`}>
                <Svg markup={signMarkup(weight, palette)} />
                <span className="unseen">
                  {words}: {count}
                </span>
              </span>
            ))}
        </span>
      )}
    </Link>
  )
}

function speedsInWords({ low, high }: RecordBrief['window']): string {
  if (low === null || high === null) return 'no speed to be believed'
  const print = (speed: number): string => printQuantity(speed, 'velocity', { digits: 2 })
  return `${print(low)} to ${print(high)}`
}

function inWords({ name, points, remarks }: RecordBrief): string {
  const used = points.filter(({ trusted }) => trusted).length
  const said = remarks.map(
    ({ kind, count }) => `${remarkWords[kind as keyof typeof remarkWords]?.words ?? kind} ${count}`,
  )
  return `${name}: ${points.length} points, ${used} used by the fit${said.length === 0 ? '' : `; ${said.join(', ')}`}`
}
