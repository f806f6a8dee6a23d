import type { ReactNode } from 'react'
import type { DecisionPaper } from '../../../core/decide/index.ts'
import { printQuantity } from '../../../core/quantity/index.ts'
import { Term } from '../../glossary/Term.tsx'
import { Choice } from '../../sentence/Choice.tsx'
import { Quantity } from '../../sentence/Quantity.tsx'
import { useEdits } from '../../work/useEdits.ts'
import type { ComparisonHold } from './useComparison.ts'

interface MarginSentenceProps {
  readonly hold: ComparisonHold
  readonly preview: (margin: number | undefined) => void
}

/** What counts as the same, and how samples are compared, as a sentence to be changed. */
export function MarginSentence({ hold, preview }: MarginSentenceProps): ReactNode {
  const { decision, margin, marginAssumed, paper } = hold
  const edit = useEdits(paper)
  const change = (said: Partial<DecisionPaper>, words: string): void => edit({ ...decision, ...said }, words)
  const ratio = decision.scale === 'ratio'
  const print = (value: number): string => printQuantity(value, 'ratio', { digits: 3, unit: ratio ? '%' : '1' })
  return (
    <p className="say">
      Samples count as the same within a <Term word="margin">margin</Term> of{' '}
      <Quantity
        name="margin"
        value={margin}
        dimension="ratio"
        unit={ratio ? '%' : '1'}
        least={ratio ? 0.001 : 0.0001}
        most={ratio ? 2 : 1}
        digits={3}
        assumed={marginAssumed}
        change={(value) => change({ margin: value }, `margin ${print(margin)} → ${print(value)}`)}
        preview={preview}
      />
      , comparing{' '}
      <Choice
        name="how samples are compared"
        value={decision.scale}
        options={[
          { value: 'ratio', words: 'the ratio of their frictions' },
          { value: 'difference', words: 'friction less friction' },
        ]}
        change={(scale) => change({ scale, margin: null }, `comparing by ${scale}`)}
      />
      , with{' '}
      <Choice
        name="whose scatter"
        value={decision.scatter}
        options={[
          { value: 'pooled', words: 'one scatter for all samples' },
          { value: 'separate', words: 'a scatter for each sample' },
        ]}
        change={(scatter) => change({ scatter }, `${scatter} scatter`)}
      />
      .
    </p>
  )
}
