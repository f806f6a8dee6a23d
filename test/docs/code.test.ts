import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import ts from 'typescript'
import { beforeAll, describe, expect, test } from 'vitest'
import { type Block, blocksOf, pages } from './pages.ts'

const runnable = pages
  .flatMap(blocksOf)
  .filter(({ language, text }) => language === 'ts' && text.startsWith('// runs\n'))

const placeOf = ({ page, line }: Block): string => `${page}:${line}`

/** Complaints of the compiler about each block, as if it were a file in the project's root. */
function typeComplaints(blocks: readonly Block[]): Map<string, string[]> {
  const { options } = ts.parseJsonConfigFileContent(
    { ...ts.readConfigFile('tsconfig.json', ts.sys.readFile).config, include: [], files: ['x.ts'] },
    ts.sys,
    process.cwd(),
  )
  const settings = { ...options, noUnusedLocals: false }
  const texts = new Map(blocks.map((block, index) => [join(process.cwd(), `block${index}.ts`), block.text]))
  const host = ts.createCompilerHost(settings)
  const { fileExists, getSourceFile } = host
  host.fileExists = (path) => texts.has(path) || fileExists(path)
  host.getSourceFile = (path, version) => {
    const text = texts.get(path)
    return text === undefined ? getSourceFile(path, version) : ts.createSourceFile(path, text, version)
  }
  const program = ts.createProgram([...texts.keys()], settings, host)
  return new Map(
    [...texts.keys()].map((path, index) => [
      placeOf(blocks[index]),
      ts
        .getPreEmitDiagnostics(program, program.getSourceFile(path))
        .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, '\n')),
    ]),
  )
}

describe('code in the documentation', () => {
  let complaints: Map<string, string[]>

  beforeAll(() => {
    complaints = typeComplaints(runnable)
  })

  test.for(runnable.map((block) => ({ place: placeOf(block), text: block.text })))(
    '$place keeps its types and does what it says',
    ({ place, text }) => {
      expect(complaints.get(place)).toEqual([])
      const { status, stderr } = spawnSync(process.execPath, ['--input-type=module-typescript', '-'], {
        input: text,
        encoding: 'utf8',
      })
      expect({ status, stderr }).toEqual({ status: 0, stderr: '' })
    },
  )

  test('some of it is marked to run', () => {
    expect(runnable.length).toBeGreaterThan(8)
  })
})
