import { printQuantity } from '../quantity/index.ts'
import type { SheetPart } from '../terms/index.ts'
import type { Plan } from './planOf.ts'
import type { SheetCautions } from './sheetCautions.ts'
import { around, done, entry, minutes } from './sheetEntry.ts'

/** Surfaces, mounting and the test's temperature. */
export const readyParts = (plan: Plan, cautions: SheetCautions): readonly SheetPart[] => [
  surfacesPart(plan, cautions),
  mountingPart(plan, cautions),
]

function surfacesPart(plan: Plan, cautions: SheetCautions): SheetPart {
  const { pair, liquid } = plan.question
  return {
    name: 'surfaces',
    heading: 'Surfaces',
    entries: [
      entry('air', 'Write down room temperature, relative humidity, batch and age of both bodies.'),
      entry(
        'clean',
        `Clean ${pair.upper.name} and ${pair.lower.name}; use them within the hour. Say with what, how long, how dried.`,
        {
          cautions: cautions.cleaning,
          duration: minutes(20),
          check: done('cleaned as the method says', 'Note what was different; it is part of the result.'),
        },
      ),
      ...(liquid === undefined
        ? []
        : [
            entry('sample', `Take ${liquid.name} as the method says; note batch, temperature and time.`, {
              duration: minutes(2),
            }),
          ]),
    ],
  }
}

function mountingPart(plan: Plan, cautions: SheetCautions): SheetPart {
  const { question, suggestion } = plan
  const { temperature } = question.run
  return {
    name: 'mounting',
    heading: 'Mounting',
    entries: [
      entry(
        'mount',
        `Mount the fixture with a ${suggestion.coupling} coupling, fresh balls or faces, and a fresh track.`,
        {
          cautions: cautions.mounting,
          duration: minutes(10),
          check: done('fresh surfaces, firmly held', 'Mount again: a used scar or track is another sample.'),
        },
      ),
      ...(temperature === undefined
        ? []
        : [
            entry(
              'temperature',
              `Bring all of it to ${printQuantity(temperature, 'temperature')} and wait until it has settled.`,
              {
                cautions: cautions.temperature,
                duration: minutes(15),
                check: around('temperature', [temperature, 1], {
                  dimension: 'temperature',
                  otherwise: 'Wait; if it stays off, note it and expect the viscosity to be off too.',
                }),
              },
            ),
          ]),
    ],
  }
}
