import type { RunInOfFiles } from '../../bench/questions/index.ts'
import { fromSi, printQuantity } from '../../core/quantity/index.ts'
import type { SweepsRunIn } from '../../core/terms/index.ts'
import { painted, type Screen } from '../screen.ts'
import { intervalInWords } from './interval.ts'
import { speedUnitOf } from './pointTable.ts'
import { textTable } from './textTable.ts'
import { wrap } from './wrap.ts'

const answers = { runIn: 'Yes.', notRunIn: 'No.', cannotTell: 'Cannot tell.' } as const

/** Is it run in, for people: the answer first, then every change behind it. */
export function runInInWords(found: RunInOfFiles, screen: Screen): string {
  const width = Math.min(screen.width, 110)
  const { records, verdict, sentence, sweeps } = found
  const names = records.map(({ file }) => file).join(', ')
  const sections = [
    painted(screen, names, 'accent'),
    `${painted(screen, 'Is it run in?', 'strong')} ${answers[verdict]}\n${wrap(sentence, width, { indent: '  ' })}`,
    sweeps === null ? '' : changesOf(sweeps, found, screen),
  ]
  return `${sections.filter((section) => section !== '').join('\n\n')}\n`
}

function changesOf({ changes, margin }: SweepsRunIn, { records }: RunInOfFiles, screen: Screen): string {
  const unit = speedUnitOf(records.flatMap(({ reduction }) => reduction.points))
  const share = printQuantity(margin, 'ratio', { digits: 2, unit: '%' })
  const table = textTable([
    { head: 'from', unit: '', align: 'left', cells: changes.map(({ from }) => from) },
    { head: 'to', unit: '', align: 'left', cells: changes.map(({ to }) => to) },
    { head: 'mean change', unit: '%', align: 'right', cells: changes.map(({ mean }) => intervalInWords(mean, 100)) },
    { head: 'largest', unit: '%', align: 'right', cells: changes.map(({ largest }) => intervalInWords(largest, 100)) },
    {
      head: 'at',
      unit: unit.text,
      align: 'right',
      cells: changes.map(({ largest }) => String(Number(fromSi(largest.slidingSpeed, unit).toPrecision(3)))),
    },
    {
      head: 'run in',
      unit: '',
      align: 'left',
      cells: changes.map(({ verdict }) => answers[verdict].replace('.', '').toLowerCase()),
    },
  ])
  return `${painted(screen, 'Changes', 'strong')}   95 % intervals; margin ±${share}\n${table}`
}
