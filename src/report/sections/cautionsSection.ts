import type { ReportInput } from '../reportInput.ts'
import type { SectionOf } from './sectionOf.ts'

/** Above this a metal part burns the skin at a touch: 60 °C, 333 K (common practice, no source). */
const burning = 333.15

/** What a reader must not take from the numbers, and where repeating them can hurt. */
export const cautionsSection: SectionOf = (input) => ({
  heading: 'Cautions',
  blocks: [
    {
      kind: 'paragraph',
      text: 'General cautions. The manual of the instrument, the safety data sheets, local rules and trained or licensed people come first; this program guards nothing and nobody.',
    },
    { kind: 'list', items: [...reading, ...handling(input)] },
  ],
})

const reading: readonly string[] = [
  'These values rank inside their own tribosystem: another load, fixture, surface, cleaning or humidity gives others. They predict no life, and no behaviour outside the conditions above.',
  'They are no safety class of a floor, a tyre, a brake or a step. Such classes rest on their own methods and on people who are licensed to give them.',
]

function handling({ setup }: ReportInput): string[] {
  const { run, liquid, fixture } = setup
  const hot = run.temperature !== undefined && run.temperature > burning
  const cautions = [
    'Keep hands out of the space between fixture and plate while the stage can move; know the stop; set limits of force and travel before the approach.',
    'Glass, ceramic and silicon plates break without warning and leave sharp edges; no cold solvent on a hot plate. Wear eye protection.',
    'Solvents: no heater near, no vapour in a heated chamber, no flammable solvent in an ultrasonic bath that is not made for it; gloves that suit the solvent; collect the waste.',
    'The supply of an air bearing is on before the shaft turns and stays on while it does.',
    'Wear debris and coatings may hold metals, fluoropolymers or fibres: no blowing with compressed air.',
    'Heaters that run alone or over night need a cut-out of their own.',
  ]
  if ('ballDiameter' in fixture) cautions.push('A ball can be thrown out when its holder lets go at speed.')
  if (hot) cautions.push('Fixture and plate were hot enough to burn; metal that looks cold may not be.')
  if (liquid !== undefined) {
    cautions.push('Liquid splashes at high speed. Nothing that has been on the rig is eaten or put on skin.')
  }
  return cautions
}
