import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { run } from '../../../src/cli/run.ts'
import { capturedDesk } from '../capturedDesk.ts'

const lacquer = 'examples/lacquer/question.yaml'
const oat = 'examples/oat-drinks/question.yaml'

let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'kufe-plan-'))
})
afterAll(() => rmSync(folder, { recursive: true }))

async function kufe(...words: string[]) {
  const desk = capturedDesk({ width: 100 })
  const code = await run(words, desk)
  return { code, out: desk.out(), err: desk.err() }
}

/** An example with one piece put in place of another, as a file. */
function changed(example: string, from: string | RegExp, to: string): string {
  const text = readFileSync(example, 'utf8')
  const other = text.replace(from, to)
  if (other === text) throw new Error(`${example} has no ${from}`)
  const file = join(folder, 'question.yaml')
  writeFileSync(file, other)
  return file
}

describe('for people', () => {
  test('load, steps, window, hard questions and replicates are told', async () => {
    const { code, out, err } = await kufe('plan', oat)
    expect({ code, err }).toEqual({ code: 0, err: '' })
    for (const part of [
      'Where friction can be measured',
      'From which speed up may the curve be believed?',
      'λ is ',
      'steps keep their regime over the whole interval',
      'Hertz must not be trusted here',
      'replicates of each sample tell a difference of 20 %',
      'Day 1: (silicone oil',
    ]) {
      expect(out).toContain(part)
    }
  })

  test('every letter in the picture is explained, and no line is wider than the terminal', async () => {
    const { out } = await kufe('plan', lacquer)
    const picture = out.split('\n').filter((line) => line.includes('│'))
    expect(picture).toHaveLength(17)
    const letters = new Set(picture.flatMap((line) => [...line.slice(line.indexOf('│') + 1)]))
    for (const letter of letters) {
      if (letter !== '·' && letter !== 'o') expect(out).toMatch(new RegExp(`\\n  ${letter}  \\w`))
    }
    expect(Math.max(...out.split('\n').map((line) => [...line].length))).toBeLessThanOrEqual(100)
  })

  test('without Unicode the picture is plain', async () => {
    const desk = capturedDesk({ unicode: false })
    await run(['plan', lacquer], desk)
    const picture = desk
      .out()
      .split('\n')
      .filter((line) => /^.{9}\|/.test(line))
    expect(picture).toHaveLength(17)
    expect(picture.join('')).not.toMatch(/[·│]/)
  })

  test('what is taken from a table is told with its source', async () => {
    const file = changed(
      oat,
      /name: oat drink, plain\n {2}viscosity: .*\n {2}viscosityUncertainty: .*\n/,
      'name: water\n',
    )
    const { code, out } = await kufe('plan', file)
    expect(code).toBe(0)
    expect(out).toMatch(/water: viscosity 0?\.?7\d+ [mµ]Pa·s at 35 °C/)
  })
})

describe('for machines', () => {
  test('one document, equal for equal input, without NaN', async () => {
    const { code, out } = await kufe('plan', lacquer, '--json')
    expect(code).toBe(0)
    const document = JSON.parse(out)
    expect(document).toMatchObject({
      schemaVersion: '1',
      file: 'question.yaml',
      plan: { suggestion: { possible: true } },
    })
    expect(document.window.broken).toHaveLength(document.window.forces.length)
    expect(document.window.broken[0]).toHaveLength(document.window.speeds.length)
    expect(document.window.friction.flat().every((value: unknown) => typeof value === 'number')).toBe(true)
    expect((await kufe('plan', lacquer, '--json')).out).toBe(out)
  })
})

describe('run sheet', () => {
  test('a page to print, or JSON by its name', async () => {
    const page = join(folder, 'sheet.html')
    const { code, out } = await kufe('plan', oat, '--sheet', page)
    expect(code).toBe(0)
    expect(out).toContain(`Wrote the run sheet into ${page}`)
    expect(readFileSync(page, 'utf8')).toMatch(/^<!doctype html>[\s\S]*class="caution"[\s\S]*class="box"/)
    const data = join(folder, 'sheet.json')
    await kufe('plan', oat, '--sheet', data)
    const { schemaVersion, sheet, answers } = JSON.parse(readFileSync(data, 'utf8'))
    expect({ schemaVersion, answers }).toEqual({ schemaVersion: '1', answers: null })
    expect(sheet.parts.map(({ name }: { name: string }) => name)).toContain('zeroes')
  })

  test('answers are judged, and one outside its range exits with 1', async () => {
    const file = join(folder, 'answers.yaml')
    writeFileSync(file, 'mount: yes\nforceZero: { value: 0.5 mN, note: after an hour }\n')
    const good = await kufe('plan', oat, '--answers', file)
    expect({ code: good.code, err: good.err }).toEqual({ code: 0, err: '' })
    expect(good.out).toContain('2 checks within their range, 0 outside')
    writeFileSync(file, '{"forceRipple": "12 %"}')
    const bad = await kufe('plan', oat, '--answers', file, '--json')
    expect(bad.code).toBe(1)
    const answer = JSON.parse(bad.out).answers.find(({ id }: { id: string }) => id === 'forceRipple')
    expect(answer).toMatchObject({ value: 0.12, state: 'outside' })
  })

  test.for([
    { text: 'forceRippel: 2 %', says: 'Did you mean "forceRipple"?' },
    { text: 'forceZero: 2 mm', says: 'The sheet wants' },
    { text: 'mount: perhaps', says: 'Write yes or no.' },
    { text: '- 1', says: '' },
  ])('$text exits with 3', async ({ text, says }) => {
    const file = join(folder, 'answers.yaml')
    writeFileSync(file, text)
    const { code, err } = await kufe('plan', oat, '--answers', file)
    expect(code).toBe(3)
    expect(err).toContain(says)
  })
})

describe('a record against its plan', () => {
  test('what failed is told with its steps', async () => {
    const record = [
      '--against',
      'examples/lacquer/lacquer-a-1.csv',
      '--setup',
      'examples/lacquer/lacquer-a-1.setup.yaml',
    ]
    const { code, out } = await kufe('plan', lacquer, ...record)
    expect(code).toBe(1)
    expect(out).toContain('held against its plan')
    expect(out).toMatch(/The load was not the planned 2 N: it went to 5 N/)
  })

  test('without a setup it cannot be reduced', async () => {
    const { code, err } = await kufe('plan', lacquer, '--against', 'examples/lacquer/lacquer-a-1.csv')
    expect(code).toBe(2)
    expect(err).toContain('--setup')
  })
})

describe('trouble', () => {
  test('a question that no load answers exits with 1 and says why', async () => {
    const { code, out } = await kufe('plan', changed(lacquer, 'fastest: 200 mm/s', 'fastest: 20 m/s'))
    expect(code).toBe(0)
    expect(out).toContain('Ask for at most 4.5 m/s.')
    const file = changed(lacquer, /slowest: .*\n {2}fastest: .*\n/, 'slowest: 10 m/s\n  fastest: 20 m/s\n')
    const nothing = await kufe('plan', file)
    expect(nothing.code).toBe(1)
    expect(nothing.out).toContain('No speed of the question can be measured')
  })

  test.for<{ name: string; from: string; to: string; says: RegExp }>([
    {
      name: 'negative load',
      from: 'leastForce: 0.5 N',
      to: 'leastForce: -1 N',
      says: /ask\.leastForce.*more than 0 N/s,
    },
    { name: 'Poisson ratio 0.7', from: 'poissonRatio: 0.35', to: 'poissonRatio: 0.7', says: /at most 0\.5/ },
    {
      name: 'coating thicker than its plate',
      from: 'plateThickness: 6 mm',
      to: 'plateThickness: 10 µm',
      says: /thinner than 10 µm/,
    },
  ])('$name exits with 3', async ({ from, to, says }) => {
    const { code, out, err } = await kufe('plan', changed(lacquer, from, to))
    expect({ code, out }).toEqual({ code: 3, out: '' })
    expect(err).toMatch(/question\.yaml:\d+:\d+/)
    expect(err).toMatch(says)
  })

  test('a liquid outside its table says the range', async () => {
    const text = changed(
      oat,
      /name: oat drink, plain\n {2}viscosity: .*\n {2}viscosityUncertainty: .*\n/,
      'name: water\n',
    )
    writeFileSync(text, readFileSync(text, 'utf8').replace('temperature: 35 °C', 'temperature: 200 °C'))
    const { code, err } = await kufe('plan', text)
    expect(code).toBe(3)
    expect(err).toMatch(/\d+ °C/)
  })

  test('a file that is not there', async () => {
    expect((await kufe('plan', join(folder, 'nowhere.yaml'))).code).toBe(3)
  })
})
