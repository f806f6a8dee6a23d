import { lazy, type ReactNode, Suspense, useEffect, useState } from 'react'
import { useKept } from '../api/kept.ts'
import { patiently } from '../api/patiently.ts'
import type { LabView } from '../api/study.ts'
import { usualWriter } from '../api/writer.ts'
import { useKeys } from '../work/keys.ts'
import { redo, undo } from '../work/undo.ts'
import { go, useAddress } from './address.ts'
import { Home } from './Home.tsx'
import { LostBanner } from './LostBanner.tsx'
import { toggleLook } from './look.ts'
import { StudyFrame } from './StudyFrame.tsx'
import { UndoLine } from './UndoLine.tsx'
import { Waiting } from './Waiting.tsx'

const loadKeys = patiently(() => import('./KeyList.tsx'))
const loadFind = patiently(() => import('../find/Find.tsx'))
const KeyList = lazy(loadKeys)
const Find = lazy(loadFind)
const Glossary = lazy(patiently(() => import('../glossary/Glossary.tsx')))
const Guide = lazy(patiently(() => import('../guide/Guide.tsx')))

/** The whole page: the study or the list of studies, and what lies over either. */
export function Bench(): ReactNode {
  const address = useAddress()
  const [over, setOver] = useState<'keys' | 'find' | null>(null)
  const lab = useKept<LabView>('/api/lab').value
  useEffect(() => usualWriter(lab?.people[0] ?? ''), [lab])
  // Who presses a key and types on at once must find the field there.
  useEffect(() => {
    const timer = setTimeout(() => void Promise.all([loadFind(), loadKeys()]), 1500)
    return () => clearTimeout(timer)
  }, [])
  useKeys('Everywhere', [
    { key: '?', words: 'this list', press: () => setOver('keys') },
    { key: '/', words: 'find anything', press: () => setOver('find') },
    { key: 'z', words: 'undo the last change', press: undo },
    { key: 'Shift+z', words: 'do it again', press: redo },
    { key: 'l', words: 'light or dark', press: toggleLook },
    { key: 'g', words: 'the glossary', press: () => go({ search: { word: 'list' } }) },
  ])
  const close = (): void => setOver(null)
  return (
    <>
      <LostBanner />
      {address.unknown && (
        <p className="lost" role="alert">
          No page lies at {location.pathname}; this is the nearest one.
        </p>
      )}
      {address.study === null ? (
        <Home find={() => setOver('find')} keys={() => setOver('keys')} />
      ) : (
        <StudyFrame
          key={address.study}
          study={address.study}
          find={() => setOver('find')}
          keys={() => setOver('keys')}
        />
      )}
      <UndoLine />
      <Suspense fallback={<Waiting what="Opening" />}>
        {over === 'keys' && <KeyList close={close} />}
        {over === 'find' && <Find close={close} />}
        {address.search.word !== undefined && <Glossary word={address.search.word} />}
        {address.search.tour !== undefined && <Guide page={Number(address.search.tour)} />}
      </Suspense>
    </>
  )
}
