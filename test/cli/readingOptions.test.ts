import { Command } from 'commander'
import { expect, test } from 'vitest'
import { addReadingOptions, type ReadingOptions, reduceArgs } from '../../src/cli/readingOptions.ts'
import { verbs } from '../../src/cli/verbs.ts'
import { reduceDefaults } from '../../src/core/reduce/index.ts'
import { capturedDesk } from './capturedDesk.ts'

function argsOf(...words: string[]) {
  const command = addReadingOptions(new Command()).exitOverride()
  command.parse(words, { from: 'user' })
  return reduceArgs(command.args[0] ?? '', command.opts<ReadingOptions>(), capturedDesk({}, { KUFE_HOME: '/lab' }))
}

test('what was not said is left to the setup and the defaults', () => {
  const args = argsOf('a.csv', '-s', 's.yaml')
  expect(args).toMatchObject({ file: 'a.csv', setup: 's.yaml', options: {} })
  expect(args.options).toEqual({})
  expect(args.reading).toMatchObject({ units: [], columns: [], mappings: '/lab/mappings' })
})

test('every answer arrives in the words of the use case', () => {
  const words =
    '-u Torque=mN.m --unit F=N -c Moment=torque --separator semicolon --decimal comma --encoding utf-16le --sheet 2'
  const more = '--segmentation step-column --draws 500 --seed 7 --mapping oats --save-mapping oats2'
  const args = argsOf('a.csv', ...`${words} ${more}`.split(' '))
  expect(args.reading).toEqual({
    units: ['Torque=mN.m', 'F=N'],
    columns: ['Moment=torque'],
    separator: ';',
    decimalMark: ',',
    encoding: 'utf-16le',
    sheet: 2,
    mapping: 'oats',
    saveMapping: 'oats2',
    mappings: '/lab/mappings',
  })
  expect(args.options).toEqual({ segmentation: 'stepColumn', bandDraws: 500, seed: 7 })
})

test('the help names the defaults as the code has them', () => {
  const help = (verbs.find(({ name }) => name === 'reduce')?.help ?? '').replace(/\s+/g, ' ')
  expect(help).toContain(`band; ${reduceDefaults.bandDraws} unless the setup says otherwise`)
  expect(help).toContain(`draws; ${reduceDefaults.seed} unless the setup says otherwise`)
})
