import { readFileSync } from 'node:fs'
import { Ajv } from 'ajv'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { isSafePath } from '../../../src/io/dataPackage/fileNames.ts'
import { dataPackageFiles } from '../../../src/io/dataPackage/index.ts'
import { gathered, inventedContent, inventedLab, rawTexts, sha256, textOf } from './inventedLab.ts'

const files = await gathered(dataPackageFiles(inventedContent()))
const descriptor = JSON.parse(textOf(files, 'datapackage.json'))
const crate = JSON.parse(textOf(files, 'ro-crate-metadata.json'))

/** Data formats (date, address) are not looked at; version 1 is written in draft 4, whose words it uses all mean the same in draft 7. */
function keeps(schema: string, value: unknown): unknown[] {
  const { $schema: _, ...rest } = JSON.parse(readFileSync(`test/data/data-package/${schema}`, 'utf8'))
  const validate = new Ajv({ strict: false, allErrors: true, validateFormats: false }).compile(rest)
  validate(value)
  return validate.errors ?? []
}

test('holds raw bytes, setup, results, points, pictures, lists and checksums', () => {
  expect(
    [...files.keys()].map((path) => path.replace(/-[0-9a-f]{12}/g, '-#').replace(/\/[0-9a-f]{12}/g, '/#')),
  ).toEqual([
    'setups/#.yaml',
    'records/oat-creamy-1-#/raw.csv',
    'records/oat-creamy-1-#/reduction-#.result.json',
    'records/oat-creamy-1-#/fit-#.result.json',
    'records/oat-creamy-1-#/points.csv',
    'records/oat-creamy-1-#/points.json',
    'records/oat-creamy-1-#/points.parquet',
    'records/oat-creamy-1-#/curve.svg',
    'records/oat-plain-1-#/raw.txt',
    'records.csv',
    'lab.json',
    'README.md',
    'datapackage.json',
    'ro-crate-metadata.json',
    'checksums.sha256',
  ])
})

test('raw bytes, setup and results are those of the lab, byte for byte', async () => {
  const { setups, records, results } = JSON.parse(textOf(files, 'lab.json'))
  for (const { path, id } of records) expect(sha256(files.get(path) ?? '')).toBe(id)
  for (const { path, sha256: sum } of [...setups, ...results]) expect(sha256(files.get(path) ?? '')).toBe(sum)
  expect(rawTexts.map(sha256)).toEqual(records.map(({ id }: { id: string }) => id))
})

describe('Data Package', () => {
  test.for(['data-package-1.json', 'datapackage-2.0-shortened.json'])('keeps to %s', (schema) => {
    expect(keeps(schema, descriptor)).toEqual([])
  })

  test.for(['data-package-1.json', 'datapackage-2.0-shortened.json'])('%s refuses what breaks it', (schema) => {
    const [first, ...rest] = descriptor.resources
    for (const broken of [
      { ...descriptor, resources: [] },
      { ...descriptor, resources: [{ ...first, path: 5 }, ...rest] },
      { ...descriptor, resources: [{ ...first, hash: 'sha256:no' }, ...rest] },
      { ...descriptor, resources: [{ ...first, name: undefined }, ...rest] },
      { ...descriptor, licenses: [{ name: 'CC BY' }] },
    ]) {
      expect(keeps(schema, JSON.parse(JSON.stringify(broken)))).not.toEqual([])
    }
  })

  test('version 2.0 refuses a path that leads out as well', () => {
    const [first, ...rest] = descriptor.resources
    const out = { ...descriptor, resources: [{ ...first, path: '/etc/passwd' }, ...rest] }
    expect(keeps('datapackage-2.0-shortened.json', out)).not.toEqual([])
  })

  test('without licence, creators and description too', async () => {
    const content = inventedContent({ licence: null, creators: [], description: '' })
    const bare = JSON.parse(textOf(await gathered(dataPackageFiles(content)), 'datapackage.json'))
    expect(keeps('data-package-1.json', bare)).toEqual([])
    expect(keeps('datapackage-2.0-shortened.json', bare)).toEqual([])
    expect(bare).not.toHaveProperty('licenses')
  })

  test('names every file but the descriptors themselves, with its size and checksum, each by another name', () => {
    const described = [...files.keys()].slice(0, -3)
    expect(descriptor.resources.map(({ path }: { path: string }) => path)).toEqual(described)
    for (const { path, bytes, hash } of descriptor.resources) {
      expect(bytes).toBe(files.get(path)?.length)
      expect(hash).toBe(`sha256:${sha256(files.get(path) ?? '')}`)
    }
    expect(new Set(descriptor.resources.map(({ name }: { name: string }) => name)).size).toBe(described.length)
  })

  test('the schema of a table names its columns in their order', () => {
    const tables = descriptor.resources.filter(({ type }: { type?: string }) => type === 'table')
    expect(tables.map(({ path }: { path: string }) => path.split('/').pop())).toEqual(['points.csv', 'records.csv'])
    for (const { path, schema } of tables) {
      const [names, units] = textOf(files, path).split('\r\n')
      expect(schema.fields.map(({ name }: { name: string }) => name).join(',')).toBe(names)
      expect(schema.fields.map(({ unit = '' }: { unit?: string }) => unit).join(',')).toBe(units)
    }
  })
})

// RO-Crate 1.1, "Root Data Entity" and "Data Entities": what a crate MUST have.
describe('RO-Crate 1.1', () => {
  const graph: { readonly '@id': string; readonly [key: string]: unknown }[] = crate['@graph']
  const entity = (id: string) => graph.find((one) => one['@id'] === id)

  test('has its context, a flat graph and a descriptor that conforms to 1.1', () => {
    expect(crate['@context'][0]).toBe('https://w3id.org/ro/crate/1.1/context')
    expect(entity('ro-crate-metadata.json')).toEqual({
      '@id': 'ro-crate-metadata.json',
      '@type': 'CreativeWork',
      conformsTo: { '@id': 'https://w3id.org/ro/crate/1.1' },
      about: { '@id': './' },
    })
    expect(new Set(graph.map((one) => one['@id'])).size).toBe(graph.length)
  })

  test('its root has name, description, date of publication and licence', () => {
    expect(entity('./')).toMatchObject({
      '@type': 'Dataset',
      name: 'Oat drinks on soft silicone',
      description: expect.stringMatching(/./),
      datePublished: '2026-11-25T10:00:00.000Z',
      license: { '@id': 'https://creativecommons.org/licenses/by/4.0/' },
    })
  })

  test('every file is a part of the root, of type File and at a path that is a URI as it stands', () => {
    const parts = [...JSON.stringify(entity('./')?.hasPart).matchAll(/"@id":"([^"]+)"/g)].map(([, id]) => id)
    expect(parts).toEqual([...files.keys()].slice(0, -3))
    for (const part of parts) {
      expect(entity(part)?.['@type']).toBe('File')
      expect(encodeURI(part)).toBe(part)
      expect(files.has(part)).toBe(true)
    }
  })

  test('every reference leads somewhere', () => {
    const referenced = [...JSON.stringify(graph).matchAll(/\{"@id":"([^"]+)"\}/g)].map(([, id]) => id)
    expect(referenced.filter((id) => entity(id) === undefined && !id.startsWith('https://w3id.org/'))).toEqual([])
  })

  test('a result tells what it was made from and with', () => {
    const made = graph.filter((one) => one['@type'] === 'CreateAction')
    const result = made.find((one) => JSON.stringify(one.result).includes('fit-'))
    expect(JSON.stringify(result?.object)).toMatch(/raw\.csv.*setups\//)
    expect(result?.instrument).toEqual({ '@id': '#program' })
  })
})

test('checksums.sha256 has the form of sha256sum and covers all other files', () => {
  const lines = textOf(files, 'checksums.sha256').trimEnd().split('\n')
  expect(lines).toEqual(
    [...files].filter(([path]) => path !== 'checksums.sha256').map(([path, bytes]) => `${sha256(bytes)}  ${path}`),
  )
})

test('equal content gives equal files', async () => {
  const again = await gathered(dataPackageFiles(inventedContent()))
  for (const [path, bytes] of files) expect(Buffer.compare(again.get(path) ?? Buffer.alloc(0), bytes), path).toBe(0)
})

describe('names never become paths unchecked', () => {
  const hostile: readonly string[] = [
    '../../etc/passwd',
    '..\\..\\windows\\system32\\x.csv',
    '/absolute.csv',
    'C:\\x.csv',
    'CON.csv',
    'a\0b.csv',
    '.hidden',
    'x'.repeat(500),
    '燕麦.csv',
    'evil.html',
    'run.exe',
    '',
    ' .csv ',
    'a/../../b.csv',
  ]

  test.for(hostile)('%j', async (name) => {
    const lab = inventedLab([name, 'plain.csv'])
    const package_ = await gathered(dataPackageFiles(inventedContent({ lab, title: name })))
    expect([...package_.keys()].filter((path) => !isSafePath(path))).toEqual([])
    expect([...package_.keys()].find((path) => path.includes('raw.') && !path.includes('plain'))).toMatch(
      /^records\/[a-z0-9-]+-[0-9a-f]{12}\/raw\.(csv|raw)$/,
    )
    expect(textOf(package_, 'lab.json')).toContain(JSON.stringify(name))
    const described = JSON.parse(textOf(package_, 'datapackage.json'))
    expect(keeps('data-package-1.json', described)).toEqual([])
  })

  test('whatever the name', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'binary', maxLength: 60 }), async (name) => {
        const lab = inventedLab([name, 'plain.csv'])
        const paths = [...(await gathered(dataPackageFiles(inventedContent({ lab })))).keys()]
        expect(paths.every(isSafePath)).toBe(true)
      }),
      { numRuns: 40 },
    )
  })
})

test('formulas in the words of people are defused in the list of records', async () => {
  const lab = inventedLab(['=HYPERLINK("https://example.org")', '@SUM(A1)'])
  const list = textOf(await gathered(dataPackageFiles(inventedContent({ lab }))), 'records.csv')
  expect(list).toContain(`"'=HYPERLINK(""https://example.org"")"`)
  expect(list).toContain(",'@SUM(A1),")
})

describe('mistakes of ours are thrown', () => {
  const lab = inventedLab()
  test.for([
    { what: 'setup', lab: { ...lab, setups: [] } },
    { what: 'study', lab: { ...lab, studies: [] } },
    { what: 'sample', lab: { ...lab, samples: [] } },
    { what: 'record', lab: { ...lab, records: [] } },
  ])('a $what is left out that something hangs on', async ({ what, lab }) => {
    await expect(gathered(dataPackageFiles(inventedContent({ lab })))).rejects.toThrow(new RegExp(`needs ${what} `))
  })

  test.for(['../x.svg', 'Curve.svg', 'curve', 'points.csv'])('a document called %s', async (name) => {
    const document = { name, title: '', mediaType: 'image/svg+xml', bytes: new Uint8Array(0) }
    const beside = async () => ({ points: [], documents: [document] })
    await expect(gathered(dataPackageFiles(inventedContent({ beside })))).rejects.toThrow(RangeError)
  })
})

test('the read-me holds the words of people as words', async () => {
  const content = inventedContent({ title: '# *x* <script>\n## y', licence: null })
  const text = textOf(await gathered(dataPackageFiles(content)), 'README.md')
  expect(text.split('\n')[0]).toBe('# \\# \\*x\\* \\<script\\> \\#\\# y')
  expect(text).toContain('No licence is stated')
})
