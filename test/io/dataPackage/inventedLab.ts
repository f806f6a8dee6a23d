import { createHash } from 'node:crypto'
import type { Point } from '../../../src/core/terms/index.ts'
import type { PackageContent, PackagedLab, PackageFile, PackageSource } from '../../../src/io/dataPackage/index.ts'

// Invented: a kitchen lab that compares oat drinks on soft silicone.

export const sha256 = (content: string | Uint8Array): string => createHash('sha256').update(content).digest('hex')

const change = (number: number, why = '') => ({ number, at: `2026-11-25T09:0${number}:00.000Z`, who: 'A. Nother', why })

export const rawTexts: readonly string[] = ['Time,Torque\ns,N·m\n0,0.01\n', 'Zeit;Drehmoment\r\ns;Nm\r\n0;0,02\r\n']
const setupText = '# kept as it was written\nrig:\n  name: invented rig\n'
const resultText = '{"schemaVersion":"1"}\n'

export const point = (changes: Partial<Point> = {}): Point => ({
  step: 1,
  slidingSpeed: 0.001,
  friction: 0.1 + 0.2,
  low: 0.29,
  high: 0.31,
  ownUncertainty: 0.005,
  sharedUncertainty: 0.002,
  shared: { torqueScale: 0.002 },
  degreesOfFreedom: Number.POSITIVE_INFINITY,
  turns: 1.5,
  duration: 10,
  torque: 0.02,
  axialForce: 3,
  gap: null,
  temperature: 308.15,
  autocorrelationTime: 2,
  frictionHarmonics: [],
  forceHarmonics: [],
  direction: -1,
  trusted: true,
  rows: { from: 0, to: 100, kept: 12 },
  remarks: [],
  ...changes,
})

const titled = (id: string, title: string, number: number) => ({
  id,
  version: 1,
  supersedes: null,
  title,
  note: '',
  facts: { margin: 0.1 },
  change: change(number),
})

/** A lab with two versions of a sample, two records, a setup and two results. `names` are those of the two files. */
export function inventedLab(names: readonly [string, string] = ['oat creamy 1.csv', 'oat plain 1.txt']): PackagedLab {
  const setup = sha256(setupText)
  const versions = names.map((name, i) => ({
    name,
    study: 'oat-drinks',
    sample: i === 0 ? 'creamy' : null,
    replicate: i + 1,
    mountedBy: 'A. Nother',
    ballSet: null,
    day: '2026-11-25',
    setup,
    version: 1,
    supersedes: null,
    change: change(5 + i),
  }))
  const origin = { raw: sha256(rawTexts[0]), setup, options: { seed: 1 }, program: 'kufe 0.1.0', seed: 1 }
  return {
    about: [titled('lab', 'Kitchen lab', 1)],
    studies: [titled('oat-drinks', 'Which oat drink is smoother?', 2)],
    samples: [
      titled('creamy', 'Creamy', 3),
      { ...titled('creamy', 'Creamy, shaken', 3), version: 2, supersedes: 1, change: change(8, 'it had settled') },
    ],
    setups: [{ sha256: setup, text: setupText, change: change(4) }],
    records: versions.map((version, i) => ({
      id: sha256(rawTexts[i]),
      versions:
        i === 0
          ? [version, { ...version, version: 2, supersedes: 1, replicate: 3, change: change(9, 'miscounted') }]
          : [version],
      bytes: async () => new TextEncoder().encode(rawTexts[i]),
    })),
    results: ['reduction', 'fit'].map((kind, i) => ({
      id: sha256(kind),
      kind,
      origin,
      sha256: sha256(resultText),
      change: change(7 + i),
      text: async () => resultText,
    })),
    papers: [
      {
        ...{ subject: 'study', subjectId: 'oat-drinks', kind: 'question', name: '' },
        ...{ version: 1, supersedes: null, content: { ask: { speeds: '0.1–100 mm/s' } }, change: change(9) },
      },
    ],
  }
}

export const inventedContent = (changes: Partial<PackageContent> = {}): PackageContent => ({
  title: 'Oat drinks on soft silicone',
  description: 'Invented data, nobody measured them.',
  created: '2026-11-25T10:00:00.000Z',
  creators: ['A. Nother'],
  licence: {
    name: 'CC-BY-4.0',
    title: 'Creative Commons Attribution 4.0',
    path: 'https://creativecommons.org/licenses/by/4.0/',
  },
  program: 'kufe 0.1.0',
  lab: inventedLab(),
  beside: async (record) =>
    record === sha256(rawTexts[0])
      ? {
          points: [point(), point({ step: 2, friction: null, trusted: false, remarks: [lost] })],
          documents: [
            {
              name: 'curve.svg',
              title: 'Curve',
              mediaType: 'image/svg+xml',
              bytes: new TextEncoder().encode('<svg/>'),
            },
          ],
        }
      : { points: null, documents: [] },
  ...changes,
})

const lost = { kind: 'contactLost', seen: 1, limit: 2, unit: 'N', sentence: 'Lost.', next: 'Look.' } as const

/** Takes the files of a package, all of them. */
export async function gathered(files: AsyncIterable<PackageFile>): Promise<Map<string, Uint8Array>> {
  const all = new Map<string, Uint8Array>()
  for await (const { path, bytes } of files) all.set(path, bytes)
  return all
}

/** A package in memory. */
export const sourceOf = (files: ReadonlyMap<string, Uint8Array>): PackageSource => ({
  name: 'package in memory',
  read: async (path) => files.get(path),
})

export const textOf = (files: ReadonlyMap<string, Uint8Array>, path: string): string =>
  new TextDecoder('utf-8', { ignoreBOM: true }).decode(files.get(path))
