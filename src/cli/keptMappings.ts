import { homedir } from 'node:os'
import { join } from 'node:path'

/** Folder of the column mappings that people keep: below KUFE_HOME, else the configuration folder of the XDG base directories. */
export function keptMappings(environment: Readonly<Record<string, string | undefined>>): string {
  const own = environment.KUFE_HOME
  if (own !== undefined && own !== '') return join(own, 'mappings')
  const config = environment.XDG_CONFIG_HOME
  return join(config !== undefined && config !== '' ? config : join(homedir(), '.config'), 'kufe', 'mappings')
}
