import { complain } from '../complain.ts'
import { exitCodes } from '../exitCodes.ts'
import { addLabOption, changingCall, type LabOptions } from '../labOptions.ts'
import { openInBrowser } from '../openInBrowser.ts'
import { untilStopped } from '../untilStopped.ts'
import type { Desk, Verb } from '../verb.ts'
import { wholeNumber } from '../wholeNumber.ts'

interface Options extends LabOptions {
  readonly port: number
  readonly open?: true
}

/** Where the bench is looked for when nobody names a port. */
const usualPort = 4700

export const serveVerb: Verb = {
  name: 'serve',
  summary: 'open the bench in the browser',
  description:
    'Serves the bench, the browser face of a lab, on this computer alone, until Ctrl+C. Nothing of it can be reached from ' +
    'other computers or from pages of others.',
  examples: ['kufe serve --lab kufe-lab --open', 'kufe serve --port 0'],
  define: (command, run) => {
    addLabOption(command)
      .option('--by <initials>', 'who serves it; else KUFE_BY, else the name that you are logged in by')
      .option('-p, --port <number>', 'port to answer on; 0 for a free one', wholeNumber(0, 65_535), usualPort)
      .option('--open', 'open the bench in your browser')
      .optionsGroup('Answer:')
      .option('--json', 'answer for machines: one line of JSON with the address')
      .action((options: Options) => run((desk) => serve(options, desk)))
  },
}

async function serve(options: Options, desk: Desk): Promise<number> {
  const json = options.json === true
  const call = await changingCall(options, desk)
  if (!call.ok) return complain(call.problems, desk, json)
  const { builtPage, startServer } = await import('../../server/index.ts')
  const page = await builtPage(desk.screen.err)
  if (!page.ok) return complain(page.problems, desk, json)
  const onFault = (error: unknown): void =>
    desk.screen.err(`kufe: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`)
  const args = { call: call.value, port: options.port, page: page.value, demo: false, onFault }
  const stop = desk.stopOnInterrupt()
  const running = await startServer(args, desk.outside)
  if (!running.ok) return complain(running.problems, desk, json)
  const { address } = running.value
  desk.screen.out(json ? `${JSON.stringify({ address })}\n` : `The bench is open at ${address}\nCtrl+C closes it.\n`)
  if (options.open) openInBrowser(address)
  await untilStopped(stop)
  await running.value.close()
  return exitCodes.ok.code
}
