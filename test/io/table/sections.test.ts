import { describe, expect, test } from 'vitest'
import { problemsOf, recordOf, valuesOf } from './tableText.ts'

// One invented record of three rows. The values in SI are worked out by hand from the definition of each unit.
const want = {
  time: [0.5, 1, 1.5],
  step: [1, 1, 2],
  angularVelocity: [1, 2, 4],
  torque: [0.0015, 0.00125, 0.001],
  axialForce: [5, 5.25, 1234.5],
  temperature: [296.15, 296.25, 296.15],
}
const body = ['1,0.5,1,0.0015,5,23', '1,1,2,0.00125,5.25,23.1', '2,1.5,4,0.001,1234.5,23']
const head = ['Step,Time,Angular velocity,Torque,Axial force,Temperature', ',s,rad/s,N·m,N,°C']

describe('headings again and again', () => {
  const withStep = [...head, body[0], body[1], '', 'Step 2', ...head, body[2]].join('\n')
  test('are stepped over and counted', async () => {
    const record = await recordOf(withStep)
    expect(valuesOf(record)).toEqual(want)
    expect(record.dialect.repeatedHeadings).toBe(1)
    expect(record.remarks).toEqual([])
  })

  const noStep = (lines: readonly string[]): string =>
    lines.map((line) => (/^Step \d/.test(line) ? line : line.split(',').slice(1).join(','))).join('\n')
  test('make the steps where no column does, by their own numbers', async () => {
    const record = await recordOf(noStep(['Step 7', ...head, body[0], body[1], '', 'Step 9', ...head, body[2]]))
    expect(valuesOf(record)).toEqual({ ...want, step: [7, 7, 9] })
    expect(record.columns.at(-1)).toMatchObject({ column: 0, channel: 'step', source: 'guess' })
    expect([...record.channels.read('step', 1, 3)]).toEqual([7, 9])
    expect(() => record.channels.read('step', 0, 4)).toThrow(RangeError)
  })

  test('make the steps one after the other where nothing numbers them', async () => {
    expect(valuesOf(await recordOf(noStep([...head, body[0], body[1], ...head, body[2]]))).step).toEqual([1, 1, 2])
  })

  test('a preamble of its own before each', async () => {
    const record = await recordOf(
      [...head, body[0], body[1], 'Sample,invented', 'Phase,up', ...head, body[2]].join('\n'),
    )
    expect(valuesOf(record)).toEqual(want)
    expect(record.remarks).toEqual([])
  })

  test('in another order are a problem, not other numbers', async () => {
    const other = 'Step,Time,Torque,Angular velocity,Axial force,Temperature'
    const problems = await problemsOf([...head, body[0], body[1], other, body[2]].join('\n'))
    expect(problems).toMatchObject([{ kind: 'headingsChange', place: { file: 'run.csv', line: 5 } }])
  })
})

describe('time that begins again at each step', () => {
  const restart = (times: readonly number[], steps: readonly number[]): string =>
    ['Step,t [s],M [Nm]', ...times.map((time, n) => `${steps[n]},${time},1`)].join('\n')

  test.for([
    // The new clock's first sample is one interval after its zero.
    [[0.1, 0.2, 0.3, 0.1, 0.2, 0.1], [1, 1, 1, 2, 2, 3], [0.1, 0.2, 0.3, 0.4, 0.5, 0.6], 2],
    // The new clock begins with zero: one interval is put between.
    [[0, 0.1, 0.2, 0, 0.1], [1, 1, 1, 2, 2], [0, 0.1, 0.2, 0.3, 0.4], 1],
    // Steps that go on with the old clock are left as they are.
    [[0, 0.1, 0.2, 0.3, 0.4], [1, 1, 1, 2, 2], [0, 0.1, 0.2, 0.3, 0.4], 0],
  ] as [number[], number[], number[], number][])('%s', async ([times, steps, run, restarts]) => {
    const record = await recordOf(restart(times, steps))
    expect(valuesOf(record).time).toEqual(run)
    expect(record.remarks.map(({ kind, seen }) => [kind, seen])).toEqual(
      restarts === 0 ? [] : [['timeRunsOn', restarts]],
    )
  })
})
