import type { ReactNode } from 'react'
import { chosenSamples } from '../../../core/decide/index.ts'
import type { ReplicatesAnswer } from '../../../server/contract/index.ts'
import { useEdits } from '../../work/useEdits.ts'
import type { ComparisonHold } from './useComparison.ts'

interface SampleChoiceProps {
  readonly hold: ComparisonHold
  readonly gathered: ReplicatesAnswer
}

/** Which samples are compared; without a word those that have two replicates or more. */
export function SampleChoice({ hold: { decision, paper }, gathered }: SampleChoiceProps): ReactNode {
  const edit = useEdits(paper)
  const all = [...new Set(gathered.replicates.map(({ sample }) => sample))]
  if (all.length < 3) return null
  const { aside } = chosenSamples(gathered.replicates, decision.samples)
  const turn = (sample: string): void => {
    const chosen = all.filter((one) => (one === sample ? aside.includes(one) : !aside.includes(one)))
    if (chosen.length > 0) {
      edit({ ...decision, samples: chosen }, `${sample} ${aside.includes(sample) ? 'compared' : 'left aside'}`)
    }
  }
  return (
    <fieldset className="samples">
      <legend>Samples that are compared</legend>
      {all.map((sample) => (
        <label key={sample}>
          <input type="checkbox" checked={!aside.includes(sample)} onChange={() => turn(sample)} /> {sample}
        </label>
      ))}
    </fieldset>
  )
}
