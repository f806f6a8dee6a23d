import type { Hold, Remark } from '../../terms/index.ts'

/** What was found on a hold. */
export function holdRemarks({ runIn, life }: Pick<Hold, 'runIn' | 'life'>): Remark[] {
  const remarks: Remark[] = []
  if (runIn.verdict !== 'runIn') {
    remarks.push({
      kind: 'notRunIn',
      seen: runIn.change.value,
      limit: runIn.margin,
      unit: '',
      sentence: runIn.sentence,
      next: 'Slide on and ask again, or take a larger margin and say so.',
    })
  }
  if (life !== null && life.distance !== null) {
    remarks.push({
      kind: 'coatingFailed',
      seen: life.distance.value,
      limit: life.watched,
      unit: 'm',
      sentence: life.sentence,
      next: 'Look at the track, and take only what was slid before as friction of the coating.',
    })
  }
  return remarks
}
