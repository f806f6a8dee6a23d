#!/usr/bin/env node
// Starts Kufe. Plain JavaScript that an older Node can read too, so that it can hand over to the Node that the project
// brings along, or say in one line what is missing.

import { spawn } from 'node:child_process'
import { existsSync } from 'node:fs'
import * as nodeModule from 'node:module'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = dirname(dirname(fileURLToPath(import.meta.url)))
const oldestNode = 24
const pinnedNode = join(root, 'node_modules', 'node', 'bin', process.platform === 'win32' ? 'node.exe' : 'node')

if (Number.parseInt(process.versions.node, 10) >= oldestNode) {
  // Keeps compiled code between starts; the program is read from TypeScript each time otherwise.
  nodeModule.enableCompileCache(join(root, 'node_modules', '.cache', 'kufe'))
  // Our own imports name their file in full, so nothing need be looked for on the disk: 20 ms of each start.
  nodeModule.registerHooks?.({
    resolve: (specifier, context, next) =>
      specifier.startsWith('.') && specifier.endsWith('.ts') && context.parentURL !== undefined
        ? { url: new URL(specifier, context.parentURL).href, format: 'module-typescript', shortCircuit: true }
        : next(specifier, context),
  })
  await import('../src/cli/main.ts')
} else if (existsSync(pinnedNode)) {
  const child = spawn(pinnedNode, [fileURLToPath(import.meta.url), ...process.argv.slice(2)], { stdio: 'inherit' })
  process.on('SIGINT', () => {})
  for (const signal of /** @type {const} */ (['SIGTERM', 'SIGHUP'])) process.on(signal, () => child.kill(signal))
  child.on('close', (code, signal) => {
    process.exitCode = code ?? (signal === 'SIGINT' ? 130 : 143)
  })
} else {
  process.stderr.write(
    `kufe needs Node ${oldestNode} or newer and this is ${process.version}: run "npm ci" in ${root}, which brings it along.\n`,
  )
  process.exitCode = 2
}
