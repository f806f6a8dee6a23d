import { printQuantity } from '../quantity/index.ts'
import type { SheetPart } from '../terms/index.ts'
import type { Plan } from './planOf.ts'
import type { SheetCautions } from './sheetCautions.ts'
import { around, atMost, done, entry, force, length, minutes } from './sheetEntry.ts'

/** Zeroes, approach, alignment under load, conditioning, blank. */
export const contactParts = (plan: Plan, cautions: SheetCautions): readonly SheetPart[] => [
  zeroesPart(plan, cautions),
  approachPart(plan, cautions),
  conditioningPart(plan, cautions),
]

function zeroesPart(plan: Plan, cautions: SheetCautions): SheetPart {
  const { question, suggestion, noise } = plan
  const { axialForce } = suggestion
  const wet = question.liquid === undefined ? '' : ' after filling, with the fixture in place,'
  return {
    name: 'zeroes',
    heading: 'Zeroes at the test temperature',
    entries: [
      entry('gapZero', 'Zero the gap by touch.', {
        cautions: cautions.moving,
        duration: minutes(2),
        check: done('gap zero set', 'Zero again; trapped air or dust makes tens of micrometres.'),
      }),
      entry('forceZero', `Zero the axial force${wet} hanging free.`, {
        duration: minutes(1),
        check: around('axial force hanging free', [0, Math.max(3 * noise.forceZero, 1e-3)], {
          dimension: 'force',
          otherwise: `Zero again. An error of the zero moves all friction values together, by itself over ${force(axialForce)}.`,
        }),
      }),
    ],
  }
}

function approachPart(plan: Plan, cautions: SheetCautions): SheetPart {
  const { suggestion, geometry } = plan
  const { axialForce } = suggestion
  return {
    name: 'approach',
    heading: 'Approach and alignment',
    entries: [
      entry(
        'approach',
        `Set a force limit of ${force(2 * axialForce)}. Approach at 0.1 mm/s or slower, the last 0.1 mm at 10 to 50 µm/s, then hold ${force(axialForce)}.`,
        {
          cautions: cautions.moving,
          duration: minutes(3),
          check: around('axial force', [axialForce, 0.02 * axialForce], {
            dimension: 'force',
            otherwise: 'Wait or set the control again; contact lost or stuck shows here.',
          }),
        },
      ),
      entry('forceRipple', 'Turn slowly under load, two whole turns, and look at the axial force over the angle.', {
        duration: minutes(2),
        distance: 2 * geometry.pathPerTurn,
        check: atMost('ripple of the axial force, amplitude over mean', 0.05, {
          dimension: 'ratio',
          otherwise:
            'Mount again or take the compliant coupling; over 20 % stop. Turn the plate by 90° in its seat: what follows it is its tilt.',
        }),
      }),
      entry('frictionRipple', 'In the same turns look at the friction over the angle.', {
        check: atMost('ripple of friction, amplitude over mean', 0.1, {
          dimension: 'ratio',
          otherwise: 'Align again; until then steps under one turn are not to be believed.',
        }),
      }),
    ],
  }
}

function conditioningPart(plan: Plan, cautions: SheetCautions): SheetPart {
  const { question, suggestion, noise } = plan
  const { axialForce } = suggestion
  const residual = Math.max(noise.torqueZero * 10, question.rig.torque.floor ?? 0)
  const run = question.ask.conditioningDistance
  const speed = Math.sqrt(suggestion.slowest * suggestion.fastest)
  return {
    name: 'conditioning',
    heading: 'Conditioning and blank',
    entries: [
      ...(run > 0
        ? [
            entry(
              'conditioning',
              `Run in over ${length(run)} at ${printQuantity(speed, 'velocity', { digits: 2 })} and ${force(axialForce)}.`,
              {
                cautions: cautions.sliding,
                duration: run / speed,
                distance: run,
                check: atMost(
                  'drift of friction over the last third, share of friction',
                  question.deciding.difference / 2,
                  {
                    dimension: 'ratio',
                    otherwise: 'Run on until it holds, and note the distance; if it never does, say so in the report.',
                  },
                ),
              },
            ),
          ]
        : []),
      entry('blank', 'Lift the fixture just off contact and run the speeds of the sweep once, a few seconds each.', {
        cautions: cautions.moving,
        duration: 5 * new Set(plan.points.map(({ slidingSpeed }) => slidingSpeed)).size,
        check: atMost('largest torque without contact', residual, {
          dimension: 'torque',
          otherwise:
            'Keep the record as a blank for the reduction; if it is not repeatable, look for a rubbing cable or cover.',
        }),
      }),
    ],
  }
}
