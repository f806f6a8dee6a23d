import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'

/** Files of core that break one rule each, with the name under which lint or the compiler must refuse them. */
const planted: [file: string, text: string, tool: 'biome' | 'tsc', rule: string][] = [
  ['loose.ts', 'export const a = (b: any): unknown => b', 'biome', 'noExplicitAny'],
  ['sure.ts', 'export const a = (b: string | undefined): string => b!', 'biome', 'noNonNullAssertion'],
  ['clock.ts', 'export const a = (): number => new Date().getTime()', 'biome', 'noRestrictedGlobals'],
  ['loud.ts', "export const a = (): void => console.log('x')", 'biome', 'noRestrictedGlobals'],
  [
    'long.ts',
    `export function a(b: number[]): void {\n${'  b.push(1)\n'.repeat(61)}}`,
    'biome',
    'noExcessiveLinesPerFunction',
  ],
  ['many.ts', 'export const a = (b: 1, c: 1, d: 1, e: 1): number => b + c + d + e', 'biome', 'useMaxParams'],
  ['quiet.ts', '// @ts-ignore\nexport const a: string = 1', 'biome', 'noTsIgnore'],
  ['unused.ts', "import { b } from './long.ts'\nexport const a = 1", 'biome', 'noUnusedImports'],
  ['untidy.ts', 'export const a = 1;', 'biome', 'format'],
  ['node.ts', 'export const a = process.platform', 'tsc', "Cannot find name 'process'"],
  ['page.ts', 'export const a = document', 'tsc', "Cannot find name 'document'"],
  ['net.ts', "export const a = fetch('x')", 'tsc', "Cannot find name 'fetch'"],
  ['file.ts', "import 'node:fs'", 'tsc', 'node:fs'],
  ['enum.ts', 'export enum A { B }', 'tsc', 'erasableSyntaxOnly'],
]

let root: string
let heard: Record<'biome' | 'tsc', string>

beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), 'kufe-locks-'))
  const core = join(root, 'src', 'core', 'attic')
  mkdirSync(core, { recursive: true })
  for (const file of ['biome.json', 'tsconfig.json', 'tsconfig.core.json', 'package.json', '.gitignore']) {
    cpSync(file, join(root, file))
  }
  symlinkSync(join(process.cwd(), 'node_modules'), join(root, 'node_modules'))
  for (const [file, text] of planted) writeFileSync(join(core, file), `${text}\n`)
  const ask = (program: string, ...args: string[]): string => {
    const { stdout, stderr } = spawnSync(join('node_modules', '.bin', program), args, { cwd: root, encoding: 'utf8' })
    return stdout + stderr
  }
  heard = {
    biome: ask('biome', 'check', '--max-diagnostics=none', '--colors=off', '.'),
    tsc: ask('tsc', '-p', 'tsconfig.core.json', '--pretty', 'false'),
  }
})

afterAll(() => rmSync(root, { recursive: true }))

test.for(planted)('%s is refused', ([file, , tool, rule]) => {
  const lines = heard[tool].split('\n').filter((line) => line.startsWith(`src/core/attic/${file}`))
  expect(lines.join('\n')).toContain(rule)
})
