import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { LabCall } from '../../bench/lab/index.ts'
import type { Problem } from '../../core/terms/index.ts'
import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { addLabOption, changingCall, type LabOptions, whoIs } from '../labOptions.ts'
import { openInBrowser } from '../openInBrowser.ts'
import { untilStopped } from '../untilStopped.ts'
import type { Desk, Verb } from '../verb.ts'
import { wholeNumber } from '../wholeNumber.ts'

interface Options extends LabOptions {
  readonly port?: number
  readonly open?: true
  readonly demo?: string | true
}

/** Where the bench is looked for when nobody names a port. */
const usualPort = 4700

export const serveVerb: Verb = {
  name: 'serve',
  summary: 'open the bench in the browser',
  description:
    'Serves the bench, the browser face of a lab, on this computer alone, until Ctrl+C. Nothing of it can be reached from ' +
    'other computers or from pages of others.',
  examples: ['kufe serve --lab kufe-lab --open', 'kufe serve --demo', 'kufe serve --demo drawer-demo --port 0'],
  define: (command, run) => {
    addLabOption(command)
      .option(
        '--demo [folder]',
        'a lab of invented records; in a folder of its own that stays, else for this time alone',
      )
      .option('--by <initials>', 'who serves it; else KUFE_BY, else the name that you are logged in by')
      .option(
        '-p, --port <number>',
        `port to answer on, 0 for a free one; ${usualPort} if left out`,
        wholeNumber(0, 65_535),
      )
      .option('--open', 'open the bench in your browser')
      .optionsGroup('Answer:')
      .option('--json', 'answer for machines: one line of JSON with the address')
      .action((options: Options) => run((desk) => serve(options, desk)))
  },
}

async function serve(options: Options, desk: Desk): Promise<number> {
  const json = options.json === true
  if (options.demo !== undefined) return serveDemo(options, desk)
  const call = await changingCall(options, desk)
  return call.ok ? serveLab(call.value, options, desk) : complain(call.problems, desk, json)
}

/** Serves the demo lab; one in no folder of its own goes when the bench is closed. */
export async function serveDemo(options: Options, desk: Desk): Promise<number> {
  const json = options.json === true
  // Nobody must say who they are to look at invented data; the page asks for it beside its title.
  const who = whoIs(desk, options.by) ?? 'guest'
  const named = typeof options.demo === 'string'
  const parent = named ? undefined : mkdtempSync(join(tmpdir(), 'kufe-demo-'))
  const place = parent === undefined ? String(options.demo) : join(parent, 'lab')
  try {
    const call = { place, who, why: '' }
    const { demoLab } = await import('../../bench/serve/index.ts')
    if (!json) desk.screen.err('Making the demo lab: invented records, reduced and fitted …\n')
    const made = await demoLab(call, desk.outside)
    if (!made.ok) return complain(made.problems, desk, json)
    return await serveLab(call, options, desk)
  } finally {
    if (parent !== undefined) rmSync(parent, { recursive: true, force: true })
  }
}

async function serveLab(call: LabCall, options: Options, desk: Desk): Promise<number> {
  const json = options.json === true
  const { builtPage, startServer } = await import('../../server/index.ts')
  const page = await builtPage(desk.screen.err)
  if (!page.ok) return complain(page.problems, desk, json)
  const onFault = (error: unknown): void =>
    desk.screen.err(`kufe: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`)
  const stop = desk.stopOnInterrupt()
  const args = { call, port: options.port ?? usualPort, page: page.value, onFault }
  const first = await startServer(args, desk.outside)
  // Somebody who named no port wants the bench, not that number.
  const again = !first.ok && options.port === undefined && isTaken(first.problems)
  const running = again ? await startServer({ ...args, port: 0 }, desk.outside) : first
  if (!running.ok) return complain(running.problems, desk, json)
  const { address } = running.value
  desk.screen.out(json ? `${JSON.stringify({ address })}\n` : `The bench is open at ${address}\nCtrl+C closes it.\n`)
  if (options.open) openInBrowser(address)
  await untilStopped(stop)
  await running.value.close()
  return exitCodes.ok.code
}

const isTaken = (problems: readonly Problem[]): boolean => problems.some(({ kind }) => kind === 'portTaken')
