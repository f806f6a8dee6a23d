import type { TestProject } from 'vitest/node'
import { startPostgres } from '../../scripts/postgresForTests.ts'

declare module 'vitest' {
  interface ProvidedContext {
    /** Address of a database on the test server, or why there is none. */
    postgres: { readonly address: string } | { readonly why: string }
  }
}

/** One server for all tests of the store, unless they were narrowed to the other engine. */
export default async function (project: TestProject): Promise<(() => Promise<void>) | undefined> {
  if (process.env.KUFE_TEST_ENGINE === 'sqlite') {
    project.provide('postgres', { why: 'narrowed to sqlite by KUFE_TEST_ENGINE' })
    return undefined
  }
  const server = await startPostgres({ durable: false })
  if ('why' in server) {
    project.provide('postgres', server)
    return undefined
  }
  project.provide('postgres', { address: server.address })
  return server.stop
}
