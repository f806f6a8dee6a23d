import { doingRoutes } from './doingRoutes.ts'
import { labRoutes } from './labRoutes.ts'
import { recordRoutes } from './recordRoutes.ts'

/** Every route of the server. */
export const routes = { ...labRoutes, ...recordRoutes, ...doingRoutes } as const
