import type { SheetPart } from '../terms/index.ts'
import type { Plan } from './planOf.ts'
import { spokenTime } from './planSentences.ts'
import type { SheetCautions } from './sheetCautions.ts'
import { around, atMost, done, entry, force, minutes } from './sheetEntry.ts'

/** The sweep, static friction, and what comes after. */
export const sweepParts = (plan: Plan, cautions: SheetCautions): readonly SheetPart[] => [
  sweepPart(plan, cautions),
  afterPart(plan, cautions),
]

function sweepPart(plan: Plan, cautions: SheetCautions): SheetPart {
  const { question, suggestion, points, totals } = plan
  const { axialForce } = suggestion
  const way = { up: 'from slow to fast', down: 'from fast to slow', upAndDown: 'from slow to fast and back' }[
    question.ask.direction
  ]
  const rest = question.ask.staticDwell
  const swept = points.reduce((sum, { distance }) => sum + distance, 0)
  return {
    name: 'sweep',
    heading: 'Sweep',
    entries: [
      entry('load', `Lower again and hold ${force(axialForce)}; no rest longer than 30 s unless it is written down.`, {
        cautions: cautions.moving,
        duration: minutes(1),
      }),
      entry(
        'sweep',
        `Run the ${points.length} steps of the table ${way}: ${spokenTime(totals.time)}. Record at every step torque, axial force, angle, gap, temperature.`,
        {
          cautions: cautions.sliding,
          duration: totals.time,
          distance: swept,
          check: done('all steps ran at the planned load', 'Note which did not; the reduction leaves them out.'),
        },
      ),
      ...(rest === undefined
        ? []
        : [
            entry(
              'static',
              `Rest ${spokenTime(rest)} under ${force(axialForce)}, then raise the torque at a steady rate until the fixture moves. Write rest and rate down.`,
              { duration: rest + minutes(1) },
            ),
          ]),
    ],
  }
}

function afterPart(plan: Plan, cautions: SheetCautions): SheetPart {
  const { question, suggestion, noise, wear } = plan
  const { axialForce } = suggestion
  return {
    name: 'after',
    heading: 'Afterwards',
    entries: [
      entry('secondForceZero', 'Lift off and read the axial force without touching its zero.', {
        cautions: cautions.moving,
        duration: minutes(1),
        check: around(
          'axial force hanging free, after the sweep',
          [0, Math.max(3 * noise.forceZero, 0.01 * axialForce)],
          {
            dimension: 'force',
            otherwise: 'The zero has drifted: give both zeroes to the reduction, and let it warm up longer next time.',
          },
        ),
      }),
      entry('scar', 'Measure two diameters of each scar, look at the track, photograph both.', {
        cautions: cautions.opening,
        duration: minutes(10),
        check:
          plan.contact.contactRadius === null
            ? null
            : atMost('scar diameter', 2 * plan.contact.contactRadius * question.ask.scarShare, {
                dimension: 'length',
                otherwise:
                  'The contact was worn flat and its pressure fell during the sweep: shorten the distance or lower the load.',
              }),
      }),
      entry('cleaning', 'Clean fixture and plate.', { cautions: cautions.cleaning, duration: minutes(10) }),
      entry(
        'change',
        wear.runsPerBallSet > 1
          ? `Change balls and track for the next replicate; the wear budget would bear ${wear.runsPerBallSet} records.`
          : 'Change balls and track.',
        { duration: minutes(5) },
      ),
    ],
  }
}
