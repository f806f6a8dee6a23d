import { cruise, type IFlattenedRuleSet } from 'dependency-cruiser'
import { filesUnder } from './filesUnder.ts'
import { type Floor, floors, inside } from './floorTable.ts'

/** Settings of a builder that lie beside what it builds. */
const builderSettings = /\/vite\.config\.ts$/

type Rules = NonNullable<IFlattenedRuleSet['forbidden']>

/** The rules of the cruiser, made from the table. */
export function floorRules(): IFlattenedRuleSet {
  const forbidden = floors.flatMap((floor) => rulesOf(floor))
  return {
    forbidden: [
      { name: 'no circle', severity: 'error', from: { path: '^src/' }, to: { circular: true } },
      {
        name: 'nothing that does not exist',
        severity: 'error',
        from: { path: '^src/' },
        to: { couldNotResolve: true },
      },
      {
        name: 'src stands alone',
        severity: 'error',
        from: { path: '^src/' },
        to: { path: '^(test|scripts|bench|bin|docs|examples)/' },
      },
      {
        name: 'a room is entered by its index.ts',
        severity: 'error',
        from: { path: '^src/(core/[^/]+(?=/)|[^/]+)/' },
        to: { path: '^src/', pathNot: ['^src/$1/', '/index\\.ts$'] },
      },
      {
        name: 'of the command line, serve alone starts the server',
        severity: 'error',
        from: { path: '^src/cli/', pathNot: '/serve\\.ts$' },
        to: { path: '^src/server/' },
      },
      {
        name: 'web takes only types from server',
        severity: 'error',
        from: { path: '^src/web/' },
        to: { path: '^src/server/', dependencyTypesNot: ['type-only'] },
      },
      ...forbidden,
    ],
  }
}

function rulesOf({ room, may, packages, builtins }: Floor): Rules {
  const from = { path: inside(room) }
  const rules: Rules = [
    {
      name: `${room} may import ${may.length === 0 ? 'no other room' : `only ${may.join(', ')}`}`,
      severity: 'error',
      from,
      to: { path: '^src/', pathNot: [inside(room), ...may.map(inside)] },
    },
  ]
  if (!packages) {
    rules.push({ name: `${room} uses no package`, severity: 'error', from, to: { path: 'node_modules' } })
  }
  if (!builtins) {
    rules.push({ name: `${room} uses no Node built-in`, severity: 'error', from, to: { dependencyTypes: ['core'] } })
  }
  return rules
}

/** All that breaks the floors in the tree under `root`, one line each; empty when the house stands. */
export async function checkFloors(root: string): Promise<string[]> {
  const files = filesUnder(root, 'src')
  const { output } = await cruise(['src'], {
    baseDir: root,
    ruleSet: floorRules(),
    validate: true,
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    // It tells the builder how to build; nothing of the house is in it.
    exclude: { path: builderSettings.source },
    enhancedResolveOptions: { extensions: ['.ts', '.tsx', '.js', '.json'] },
  })
  if (typeof output === 'string') throw new Error(`the cruiser gave text where a result was due: ${output}`)
  const broken = output.summary.violations.map(({ from, to, rule }) => `${from} imports ${to}: ${rule.name}`)
  const seen = new Set(output.modules.map(({ source }) => source))
  const unseen = files.filter((file) => /\.tsx?$/.test(file) && !seen.has(file) && !builderSettings.test(file))
  return [...broken, ...unseen.map((file) => `${file} was not looked at`), ...checkRooms(files)]
}

/** Every file lies in a room of the table, every open room has files, every planned one has none. */
export function checkRooms(files: readonly string[], table = floors): string[] {
  const roomOf = (file: string): string | undefined =>
    table.find(({ room }) => new RegExp(inside(room)).test(file))?.room
  const homeless = files.filter((file) => roomOf(file) === undefined)
  const inhabited = new Set(files.map(roomOf))
  return [
    ...homeless.map((file) => `${file} lies in a folder without a row in scripts/floorTable.ts`),
    ...table
      .filter(({ room, planned }) => !planned && !inhabited.has(room))
      .map(({ room }) => `${room} has a row in scripts/floorTable.ts but no file`),
    ...table
      .filter(({ room, planned }) => planned && inhabited.has(room))
      .map(({ room }) => `${room} has code: take "planned" from its row in scripts/floorTable.ts`),
  ]
}

if (import.meta.main) {
  const broken = await checkFloors(process.cwd())
  for (const line of broken) process.stdout.write(`${line}\n`)
  if (broken.length > 0) process.exitCode = 1
}
