import { Ajv } from 'ajv'
import { strangeAnswers } from '../../core/plan/index.ts'
import { type AnsweredSheet, done, failed, type Outcome, type Problem } from '../../core/terms/index.ts'

/** A filled run sheet from JSON as `kufe plan … --sheet FILE.json` writes it. All problems at once; never throws on bad input. */
export function readAnsweredSheet(text: string, file: string): Outcome<AnsweredSheet> {
  let value: unknown
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch {
    return failed(problem(file, 'This is no JSON.'))
  }
  return answeredSheet(value, file)
}

/** The same from a value that was kept; what else stands in it, such as judgements, is left out. */
export function answeredSheet(value: unknown, name: string): Outcome<AnsweredSheet> {
  const keeps = new Ajv({ allErrors: true, strict: false, removeAdditional: 'all' }).compile<AnsweredSheet>(schema)
  const copy: unknown = structuredClone(value)
  if (!keeps(copy)) {
    const said = (keeps.errors ?? []).slice(0, most)
    return failed(...said.map(({ instancePath, message }) => problem(name, `${instancePath || 'It'} ${message}.`)))
  }
  const strange = strangeAnswers(copy.sheet, copy.answers)
  if (strange.length > 0) {
    return failed(...strange.map((id) => problem(name, `"${id.slice(0, 60)}" is no check of this run sheet.`)))
  }
  return done(copy)
}

/** Most problems that are told. */
const most = 20

const problem = (file: string, what: string): Problem => ({
  kind: 'answersUnusable',
  class: 'badInput',
  place: { file },
  what,
  mend: 'Write the filled sheet with "kufe plan QUESTION.yaml --answers ANSWERS.yaml --sheet FILLED.json", and give that.',
})

const text = { type: 'string' }
const number = { type: 'number' }
const numberOrNull = { type: ['number', 'null'] }
const object = (properties: object, optional: object = {}): object => ({
  type: 'object',
  required: Object.keys(properties),
  properties: { ...properties, ...optional },
})
const list = (items: object): object => ({ type: 'array', items })

const check = object({
  read: text,
  dimension: { enum: ['force', 'torque', 'length', 'temperature', 'ratio', 'yes'] },
  low: numberOrNull,
  high: numberOrNull,
  accept: text,
  otherwise: text,
})
const entry = object({
  id: text,
  cautions: list(text),
  text,
  check: { anyOf: [check, { type: 'null' }] },
  duration: number,
  distance: number,
})
const sheet = object({
  title: text,
  subtitle: text,
  foreword: list(text),
  parts: list(object({ name: text, heading: text, entries: list(entry) })),
  sweep: list(object({ step: number, slidingSpeed: number, angularVelocity: number, dwell: number, turns: number })),
  totals: object({ time: number, distance: number }),
})

/** JSON Schema of a filled sheet. */
const schema = object({
  sheet,
  answers: list(object({ id: text, value: { type: ['number', 'boolean', 'null'] } }, { note: text })),
})
