import type { Hono } from 'hono'
import { readQuestionDocument, setupFromQuestion } from '../../bench/plan/index.ts'
import { readSetupDocument, setupsInLab } from '../../bench/serve/index.ts'
import { done } from '../../core/terms/index.ts'
import { bind } from '../bind.ts'
import { routes } from '../contract/index.ts'
import type { ServerDesk } from '../desk.ts'

/** Setups and questions as texts. */
export function setupRoutes(app: Hono, { held }: ServerDesk): void {
  bind(app, routes.setups, async () => {
    const setups = await setupsInLab(held)
    return setups.ok ? done({ setups: setups.value.map((setup) => ({ ...setup })) }) : setups
  })
  bind(app, routes.checkSetup, ({ body }) => {
    const read = readSetupDocument(body.text)
    return read.ok ? done({ id: read.value.sha256, text: body.text, setup: read.value.setup }) : read
  })
  bind(app, routes.setupFromQuestion, ({ body }) => {
    const made = setupFromQuestion(body.question)
    return made.ok ? done({ id: made.value.sha256, text: made.value.text, setup: made.value.setup }) : made
  })
  bind(app, routes.readQuestion, ({ body }) => {
    const read = readQuestionDocument(body.question)
    return read.ok ? done({ question: { ...read.value.question }, taken: [...read.value.taken] }) : read
  })
}
