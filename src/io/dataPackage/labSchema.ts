const sha256 = { type: 'string', pattern: '^[0-9a-f]{64}$' }
const text = { type: 'string' }
const textOrNull = { type: ['string', 'null'] }
const count = { type: 'integer', minimum: 1 }
const countOrNull = { type: ['integer', 'null'] }
const instant = { type: 'string', pattern: '^\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d(\\.\\d+)?Z$' }

const object = (properties: object): object => ({ type: 'object', required: Object.keys(properties), properties })
const list = (items: object, minItems = 0): object => ({ type: 'array', items, minItems })

const change = object({ number: count, at: instant, who: { ...text, minLength: 1 }, why: text })
const titled = object({
  id: text,
  version: count,
  supersedes: countOrNull,
  title: text,
  note: text,
  facts: { type: 'object' },
  change,
})
const recordVersion = object({
  name: text,
  study: textOrNull,
  sample: textOrNull,
  replicate: countOrNull,
  mountedBy: textOrNull,
  ballSet: textOrNull,
  day: textOrNull,
  setup: { anyOf: [sha256, { type: 'null' }] },
  version: count,
  supersedes: countOrNull,
  change,
})
const origin = object({
  raw: sha256,
  setup: sha256,
  options: { type: 'object' },
  program: text,
  seed: { type: 'number' },
})

const paper = object({
  subject: { enum: ['lab', 'study', 'record'] },
  subjectId: text,
  kind: text,
  name: text,
  version: count,
  supersedes: countOrNull,
  content: {},
  change,
})
const whole = {
  format: text,
  version: count,
  about: list(titled),
  studies: list(titled),
  samples: list(titled),
  setups: list(object({ sha256, path: text, change })),
  records: list(object({ id: sha256, path: text, versions: list(recordVersion, 1) })),
  results: list(object({ id: sha256, kind: text, origin, sha256, path: text, change })),
}

/** JSON Schema of `lab.json`. What it does not name may be there and is passed over. */
export const labSchema = {
  type: 'object',
  required: Object.keys(whole),
  properties: { ...whole, papers: list(paper) },
}

/** JSON Schema of as much of `datapackage.json` as is needed to check the files. */
export const descriptorSchema = object({
  resources: list(
    object({ path: text, bytes: { type: 'integer' }, hash: { type: 'string', pattern: '^sha256:[0-9a-f]{64}$' } }),
    1,
  ),
})
