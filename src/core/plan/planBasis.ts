import { fixtureGeometry } from '../fixture/index.ts'
import { noiseOf } from './defaults.ts'
import { plannedContact } from './plannedContact.ts'
import type { PlanQuestion } from './question.ts'
import type { PlanBasis } from './windowAxes.ts'

/** What all of a plan leans on. Throws RangeError for a question that `questionFaults` refuses. */
export function planBasis(question: PlanQuestion): PlanBasis {
  const geometry = fixtureGeometry(question.fixture)
  return {
    question,
    geometry,
    contact: plannedContact(question, geometry),
    noise: noiseOf(question.rig, question.noise),
  }
}
