import type { Plan } from './planOf.ts'

// General cautions. They defer to the instrument's manual, the safety data sheets, local rules and licensed people.

/** Above this a metal part burns the skin at a touch: 60 °C (common practice, no source). */
const burning = 333.15

/** Below this a cold part may harm the skin or gather ice: 0 °C (common practice, no source). */
const freezing = 273.15

/** What stands above the whole sheet. */
export const sheetForeword: readonly string[] = [
  'The manual of the instrument, the safety data sheets, the rules of your place and trained or licensed people come first. This sheet is an aid to memory; it guards nothing and nobody.',
  'Where a step and the manual disagree, the manual is right.',
]

/** Cautions of a plan by the step in front of which they belong. */
export interface SheetCautions {
  readonly cleaning: readonly string[]
  readonly mounting: readonly string[]
  readonly temperature: readonly string[]
  readonly moving: readonly string[]
  readonly sliding: readonly string[]
  readonly opening: readonly string[]
}

/** The cautions that this plan needs. */
export function sheetCautions({ question }: Plan): SheetCautions {
  const { fixture, run, pair, liquid } = question
  const temperature = run.temperature ?? 296.15
  const hot = temperature > burning
  const cold = temperature < freezing
  const brittle = /glass|ceramic|alumina|zirconia|nitride|silicon\b|porcelain|quartz/i.test(
    `${pair.upper.name} ${pair.lower.name}`,
  )
  const balls = 'ballDiameter' in fixture
  const when = (applies: boolean, text: string): readonly string[] => (applies ? [text] : [])
  return {
    cleaning: [
      'Solvents: no heater and no spark near, no flammable solvent in an ultrasonic bath that is not made for it; air the room, wear gloves that suit the solvent, collect the waste.',
      ...when(
        brittle,
        'Glass and ceramic break without warning and leave sharp edges: eye protection; no cold solvent on a hot plate.',
      ),
    ],
    mounting: [
      'The supply of an air bearing is on before the shaft is touched and stays on while it turns.',
      'Keep the drive and the stage switched off, as the manual says, while hands are between fixture and plate.',
      ...when(balls, 'Balls roll underfoot and may be thrown out when a holder lets go: see that each is held.'),
    ],
    temperature: [
      ...when(
        hot,
        `The fixture gets hot enough to burn (${Math.round(temperature - 273.15)} °C); metal that looks cold may not be. Heaters that run alone need a cut-out of their own.`,
      ),
      ...when(cold, 'Cold parts burn the skin, ice may lock the fixture; cooling gas takes the air from a small room.'),
      'Circulator: look at hoses, clamps and level before it heats or cools; leaks near mains are a hazard.',
    ],
    moving: [
      'The stage moves by motor: hands out of the space between fixture and plate, know the stop, set limits of force and travel before the approach.',
      ...when(
        brittle,
        'A hard ball may crack a brittle plate at a force far above the plan: set the force limit first, shield the eyes.',
      ),
    ],
    sliding: [
      ...when(
        balls,
        'Balls can be thrown out at speed: close the cover, if there is one, and keep out of the plane of rotation.',
      ),
      ...when(liquid !== undefined, 'Liquid may splash at the fast steps.'),
    ],
    opening: [
      ...when(hot, 'Let hot parts cool before they are touched; never bring solvent into a hot chamber.'),
      'Wear debris and coatings may hold metals, fluoropolymers or fibres: wipe, do not blow.',
      ...when(liquid !== undefined, 'Nothing that has been on the rig is eaten or put on skin.'),
    ],
  }
}
