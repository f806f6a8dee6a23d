import type { AddEvent, Added, Brief } from '../../bench/lab/index.ts'
import { printQuantity } from '../../core/quantity/index.ts'
import { remarkWords } from '../../core/terms/index.ts'
import { painted, type Screen } from '../screen.ts'
import { printable } from './printable.ts'

/** As much of a checksum as people need to tell records of a lab apart. */
export const shortId = (id: string): string => id.slice(0, 12)

/** One line that says what became of a file or a record. */
export function addEventInWords(event: AddEvent, screen: Screen): string {
  const line = (word: string, rest: string): string => `${painted(screen, word.padEnd(11), 'strong')} ${rest}\n`
  switch (event.what) {
    case 'kept':
      return line('kept', `${shortId(event.record.id)}  ${printable(event.file)}`)
    case 'known':
      return line('known', `${shortId(event.record.id)}  ${printable(event.file)}, ${knownSince(event)}`)
    case 'refused':
      return line('refused', printable(event.file))
    case 'reduced':
      return line(
        'reduced',
        `${shortId(event.record.id)}  ${printable(event.record.name)}: ${briefInWords(event.brief)}`,
      )
    case 'notReduced':
      return line('not reduced', `${shortId(event.record.id)}  ${printable(event.record.name)}`)
    case 'fault':
      return line(
        'fault',
        `${shortId(event.record.id)}  ${printable(event.record.name)}: a fault of ours, ${event.message}`,
      )
  }
}

function knownSince({ record }: AddEvent & { readonly what: 'known' }): string {
  return `the bytes of ${printable(record.name)}, kept on ${record.added.at.slice(0, 10)} by ${printable(record.added.who)}`
}

/** `17 points, 2 not in the fit; believe 0.2 mm/s to 300 mm/s; contact lost`. */
export function briefInWords({ points, trusted, low, high, stops, cautions }: Brief): string {
  const speed = (value: number): string => printQuantity(value, 'velocity', { digits: 3 })
  const left = points - trusted
  return [
    `${points} points${left > 0 ? `, ${left} not in the fit` : ''}`,
    low === null || high === null ? 'no speed can be believed' : `believe ${speed(low)} to ${speed(high)}`,
    [...stops.map((kind) => remarkWords[kind].words), ...(cautions > 0 ? [`${cautions} to take care of`] : [])].join(
      ', ',
    ),
  ]
    .filter((part) => part !== '')
    .join('; ')
}

/** How many of what, in one line. */
export function addedInWords(events: readonly AddEvent[], { aside }: Added): string {
  const count = (what: AddEvent['what']): number => events.filter((event) => event.what === what).length
  const parts = (
    [
      ['kept', 'kept'],
      ['known', 'known before'],
      ['refused', 'refused'],
      ['reduced', 'reduced'],
      ['notReduced', 'not reduced'],
      ['fault', 'stopped by a fault of ours'],
    ] as const
  ).flatMap(([what, words]) => (count(what) > 0 ? [`${count(what)} ${words}`] : []))
  const left = aside > 0 ? [`${aside} files left aside whose names are not those of records`] : []
  return `${[...parts, ...left].join(', ')}.\n`
}
