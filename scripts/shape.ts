import { readFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import ts from 'typescript'
import { filesUnder } from './filesUnder.ts'

/** Limits in lines; see CONTRIBUTING.md for the reasons. Functions are measured by the linter. */
export const limits = { median: 80, reasonAbove: 250, refusedAbove: 400 }

const vagueNames = /^(utils?|helpers?|common|misc|types|shared|stuff|lib)\.[a-z.]+$/i

export interface SourceText {
  /** From the project's root. */
  readonly path: string
  readonly text: string
}

/** All that is out of shape, one line each. */
export function checkShape(files: readonly SourceText[]): string[] {
  return [
    ...files.flatMap(checkLength),
    ...checkMedian(files),
    ...files.flatMap(checkName),
    ...files.flatMap(checkModule),
  ]
}

const lineCount = (text: string): number => text.trimEnd().split('\n').length

function checkLength({ path, text }: SourceText): string[] {
  const lines = lineCount(text)
  if (lines > limits.refusedAbove) return [`${path} has ${lines} lines: split it, ${limits.refusedAbove} is the most`]
  const reason = text.split('\n', 12).some((line) => line.startsWith('// Long because '))
  if (lines > limits.reasonAbove && !reason) {
    return [`${path} has ${lines} lines: split it, or begin it with a line "// Long because …"`]
  }
  return []
}

function checkMedian(files: readonly SourceText[]): string[] {
  const lengths = files.filter(({ path }) => path.startsWith('src/')).map(({ text }) => lineCount(text))
  if (lengths.length === 0) return ['no file under src was measured']
  const middle = lengths.sort((a, b) => a - b)[lengths.length >> 1]
  return middle < limits.median ? [] : [`the median file under src has ${middle} lines: keep it under ${limits.median}`]
}

const checkName = ({ path }: SourceText): string[] =>
  vagueNames.test(basename(path)) ? [`${path}: name the file after the one thing it holds`] : []

/** Only index.ts passes on what others export; core says what each export means and takes no chance from outside. */
function checkModule({ path, text }: SourceText): string[] {
  if (!/^src\/.*\.tsx?$/.test(path)) return []
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.ES2024, true)
  const line = (node: ts.Node): string => `${path}:${file.getLineAndCharacterOfPosition(node.getStart(file)).line + 1}`
  const passedOn = file.statements
    .filter((node) => ts.isExportDeclaration(node) && node.moduleSpecifier && basename(path) !== 'index.ts')
    .map((node) => `${line(node)} passes on another file's exports: import from that file, or from the room's index.ts`)
  if (!path.startsWith('src/core/')) return passedOn
  const silent = file.statements
    .filter((node) => isExported(node) && ts.getJSDocCommentsAndTags(node).length === 0)
    .map((node) => `${line(node)} exports ${nameOf(node)} without a doc comment`)
  const random = chanceIn(file).map((node) => `${line(node)} uses Math.random: take the seed as an argument`)
  return [...passedOn, ...silent, ...random]
}

function chanceIn(file: ts.SourceFile): ts.Node[] {
  const found: ts.Node[] = []
  const look = (node: ts.Node): void => {
    if (ts.isPropertyAccessExpression(node) && node.getText(file) === 'Math.random') found.push(node)
    ts.forEachChild(node, look)
  }
  look(file)
  return found
}

const isExported = (node: ts.Statement): boolean =>
  ts.canHaveModifiers(node) &&
  (ts.getModifiers(node)?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword) ?? false)

function nameOf(node: ts.Statement): string {
  if (ts.isVariableStatement(node))
    return node.declarationList.declarations.map(({ name }) => name.getText()).join(', ')
  const { name } = node as ts.Statement & { name?: ts.Identifier } // every other statement that can be exported
  return name?.text ?? 'something'
}

/** The project's own TypeScript and JavaScript. */
export function readSources(root: string): SourceText[] {
  return ['src', 'test', 'scripts', 'bench', 'bin']
    .flatMap((folder) => filesUnder(root, folder))
    .filter((path) => /\.(m?js|tsx?)$/.test(path) && !path.startsWith('test/data/'))
    .map((path) => ({ path, text: readFileSync(join(root, path), 'utf8') }))
}

if (import.meta.main) {
  const broken = checkShape(readSources(process.cwd()))
  for (const line of broken) process.stdout.write(`${line}\n`)
  if (broken.length > 0) process.exitCode = 1
}
