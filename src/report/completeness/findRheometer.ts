import type { ReportInput } from '../reportInput.ts'
import { capital, counted, inWords, percent } from '../words/printed.ts'
import { type Found, lacking, partly, present, sayInNote } from './found.ts'

/** What a rotational rheometer adds to the list. */
export const findRheometer = {
  zeroes: ({ reduction: { forceZero } }: ReportInput): Found => {
    switch (forceZero.from) {
      case 'blankBeforeAndAfter':
        return present('Taken before and after the sweep, see Zeroes and blanks.')
      case 'blank':
        return partly(
          'Taken on one side of the sweep only, see Zeroes and blanks.',
          'Record some seconds with the fixture lifted on the other side as well.',
        )
      case 'none':
        return lacking('Record some seconds with the fixture lifted before and after the next sweep.')
    }
  },

  blank: ({ reduction: { torqueBlank } }: ReportInput): Found =>
    torqueBlank.from === 'blank'
      ? present('Taken, see Zeroes and blanks.')
      : lacking('Run the same speeds with the fixture just lifted off in the next record.'),

  alignment: ({ reduction: { ripple } }: ReportInput): Found => {
    const once = ripple.find(({ order }) => order === 1)
    return once === undefined
      ? lacking(`Record a slow turn under load. ${sayInNote('how plate and shaft were aligned', 'alignment')}`)
      : present(
          `Seen in the record: once a turn the axial force swings by ${percent(once.force)} and friction by ${percent(once.friction)} of the mean.`,
        )
  },

  turns: ({ reduction: { points } }: ReportInput): Found => {
    const whole = points.filter(({ turns }) => turns >= 1).length
    return present(
      `${capital(inWords(whole))} of ${counted(points.length, 'point')} stand on a whole turn or more, see Points.`,
    )
  },

  exclusions: ({ reduction: { points } }: ReportInput): Found => {
    const out = points.filter(({ trusted }) => !trusted).length
    return present(
      out === 0
        ? 'No step was left out; the rows that were cut are counted in Method.'
        : `${capital(inWords(out))} of ${counted(points.length, 'step')} left out of the curve, see Remarks; the rows that were cut are counted in Method.`,
    )
  },

  checkStandard: (): Found =>
    lacking(sayInNote('which known pair was measured in the same session, and what it gave', 'checkStandard')),
}
