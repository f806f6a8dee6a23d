import type { ReactNode } from 'react'
import { type Dimension, printQuantity } from '../../../core/quantity/index.ts'
import type { RigSpec, SensorLimits } from '../../../core/terms/index.ts'
import type { SetupsAnswer } from '../../../server/contract/index.ts'
import { useKept } from '../../api/kept.ts'
import type { LabView } from '../../api/study.ts'
import { Waiting } from '../../frame/Waiting.tsx'
import { type Added, AddForm } from './AddForm.tsx'

/** Rigs with what they can do: those that records were measured on, and those that somebody wrote down. */
export function RigsPart({ lab }: { readonly lab: LabView }): ReactNode {
  const { value } = useKept<SetupsAnswer>('/api/setups')
  const used = new Map<string, { readonly rig: RigSpec; readonly records: number }>()
  for (const { setup, records } of value?.setups ?? []) {
    if (setup !== null)
      used.set(setup.rig.name, { rig: setup.rig, records: (used.get(setup.rig.name)?.records ?? 0) + records })
  }
  for (const rig of ownRigs(lab)) if (!used.has(rig.name)) used.set(rig.name, { rig, records: 0 })
  return (
    <>
      <AddForm
        kind="rig"
        what="rig"
        fields={[
          { key: 'torqueFloor', words: 'smallest torque to be trusted', dimension: 'torque', such: '5 µN·m' },
          { key: 'torqueCeiling', words: 'largest torque', dimension: 'torque', such: '150 mN·m' },
          { key: 'torqueAccuracy', words: 'accuracy of the torque', dimension: 'ratio', such: '1 %', must: true },
          { key: 'forceFloor', words: 'smallest axial force', dimension: 'force', such: '10 mN' },
          { key: 'forceCeiling', words: 'largest axial force', dimension: 'force', such: '50 N' },
          { key: 'forceAccuracy', words: 'accuracy of the axial force', dimension: 'ratio', such: '1 %', must: true },
          { key: 'slowest', words: 'slowest rotation', dimension: 'angularVelocity', such: '1e-5 rad/s' },
          { key: 'fastest', words: 'fastest rotation', dimension: 'angularVelocity', such: '300 rad/s' },
        ]}
        contentOf={rigOf}
      />
      {value === undefined && <Waiting what="Reading the setups" />}
      {value !== undefined && used.size === 0 && (
        <p className="quiet">No rig yet: one comes with the first setup, or is written down here.</p>
      )}
      <ul className="drawer-list">
        {[...used.values()].map(({ rig, records }) => (
          <li key={rig.name}>
            <p>
              <b>{rig.name}</b>{' '}
              <span className="quiet">
                {records} {records === 1 ? 'record' : 'records'}
              </span>
            </p>
            <p>
              Torque {rangeOf(rig.torque, 'torque')}; axial force {rangeOf(rig.axialForce, 'force')}; rotation{' '}
              {spanOf(rig.angularVelocity, 'angularVelocity')}.
            </p>
          </li>
        ))}
      </ul>
    </>
  )
}

const spanOf = (
  { floor, ceiling }: { readonly floor?: number; readonly ceiling?: number },
  dimension: Dimension,
): string => {
  const print = (value: number): string => printQuantity(value, dimension, { digits: 3 })
  if (floor === undefined && ceiling === undefined) return 'limits not said'
  if (floor === undefined || ceiling === undefined)
    return floor === undefined ? `up to ${print(ceiling ?? 0)}` : `from ${print(floor)}`
  return `${print(floor)} to ${print(ceiling)}`
}

const rangeOf = (limits: SensorLimits, dimension: Dimension): string =>
  `${spanOf(limits, dimension)}, accurate to ${printQuantity(limits.scaleAccuracy, 'ratio', { digits: 2 })}`

function rigOf(added: Added & { readonly name: string }): RigSpec {
  const number = (key: string): number | undefined => (typeof added[key] === 'number' ? added[key] : undefined)
  const sensor = (name: 'torque' | 'force'): SensorLimits => ({
    floor: number(`${name}Floor`),
    ceiling: number(`${name}Ceiling`),
    scaleAccuracy: number(`${name}Accuracy`) ?? 0,
  })
  return {
    name: added.name,
    torque: sensor('torque'),
    axialForce: sensor('force'),
    angularVelocity: { floor: number('slowest'), ceiling: number('fastest') },
  }
}

const ownRigs = (lab: LabView): readonly RigSpec[] =>
  lab.papers.flatMap(({ kind, content }) => {
    const looks = typeof content === 'object' && content !== null && 'torque' in content && 'axialForce' in content
    return kind === 'rig' && looks ? [content as RigSpec] : [] // written by this form
  })
