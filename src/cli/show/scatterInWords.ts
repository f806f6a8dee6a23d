import type { ToldScatter } from '../../bench/decide/scatter/index.ts'
import { printQuantity } from '../../core/quantity/index.ts'
import { painted, type Screen } from '../screen.ts'
import { leftInWords } from './leftInWords.ts'
import { printable } from './printable.ts'
import { textTable } from './textTable.ts'
import { wrap } from './wrap.ts'

const percent = (share: number): string => printQuantity(share, 'ratio', { digits: 2, unit: '%' })

/** Scatter by its causes, and the replicates that follow. */
export function scatterInWords(
  { samples, scatter, untold, designs, ask, end, left }: ToldScatter,
  screen: Screen,
): string {
  const width = Math.min(screen.width, 100)
  const replicates = samples.reduce((sum, sample) => sum + sample.replicates, 0)
  const at =
    ask.at === null
      ? 'mean over the speeds that the records of a sample share'
      : `at ${printQuantity(ask.at, 'velocity', { digits: 3 })}`
  const head = painted(
    screen,
    `Scatter of ${replicates} replicates of ${samples.length} ${samples.length === 1 ? 'sample' : 'samples'}, ${at}`,
    'strong',
  )
  const rows = [...scatter.parts, scatter.total]
  const table = textTable([
    { head: 'between', unit: '', align: 'left', cells: rows.map(({ name }) => printable(name)) },
    {
      head: 'standard deviation',
      unit: '% of friction',
      align: 'point',
      cells: rows.map(({ deviation }) => (100 * deviation).toFixed(2)),
    },
    { head: '95 % from', unit: '%', align: 'point', cells: rows.map(({ low }) => (100 * low).toFixed(2)) },
    {
      head: 'to',
      unit: '%',
      align: 'point',
      cells: rows.map(({ high }) => (high === null ? 'open' : (100 * high).toFixed(2))),
    },
  ])
  const lacking = untold.map(({ cause, why }) => `${cause}: ${why}`).join('; ')
  const notes = [
    `All together is a replicate with everything fresh (${scatter.degreesOfFreedom.toFixed(1)} degrees of freedom).`,
    lacking === '' ? '' : `Nothing can be said about ${lacking}.`,
    end === 'converged' ? '' : 'The search for the variances stopped early; take them with care.',
  ].filter((note) => note !== '')
  const question = `To see a difference of ${percent(ask.difference)} with a chance of ${percent(ask.power)} (and one that is not there with ${percent(ask.significance)})`
  return `${head}\n\n${table}\n\n${wrap(notes.join(' '), width)}\n\n${wrap(question, width)}\n\n${designs.map((design) => designLines(design, width)).join('\n')}${leftInWords(left)}`
}

function designLines(
  { words, deviation, cautious, replicates, cautiousReplicates, sees }: ToldScatter['designs'][number],
  width: number,
): string {
  const seen = sees.map((one) => `${one.replicates} see ${percent(one.difference)}`).join(', ')
  const sentence = `${replicates.replicates} replicates of each sample, ${words}: by the scatter as it was seen (${percent(deviation)}); ${cautiousReplicates.replicates} to be safe in four labs of five, whose scatter does not exceed ${percent(cautious)}. ${seen}.`
  return `${wrap(sentence, width, { indent: '  ' })}\n`
}
