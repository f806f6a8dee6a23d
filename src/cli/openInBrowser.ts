import { spawn } from 'node:child_process'

/** Opens an address in the browser of whoever sits there; where there is none, nothing happens and the address stands on the screen. */
export function openInBrowser(address: string, platform: NodeJS.Platform = process.platform): void {
  const [program, args] =
    platform === 'darwin'
      ? ['open', [address]]
      : platform === 'win32'
        ? ['cmd', ['/c', 'start', '', address]]
        : ['xdg-open', [address]]
  const child = spawn(program, args, { stdio: 'ignore', detached: true })
  child.on('error', () => {})
  child.unref()
}
