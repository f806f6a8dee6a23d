import { useMemo } from 'react'
import { type OwnThings, ownFromPapers } from '../../core/plan/index.ts'
import { useKept } from '../api/kept.ts'
import type { LabView } from '../api/study.ts'

/** The lab's own bodies and liquids; none while they are not here. */
export function useOwnThings(): OwnThings {
  const { value } = useKept<LabView>('/api/lab')
  const papers = value?.papers
  return useMemo(() => ownFromPapers(papers ?? []), [papers])
}
