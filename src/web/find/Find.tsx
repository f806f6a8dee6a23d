import { type ReactNode, useState } from 'react'
import { useKept } from '../api/kept.ts'
import type { StudyView } from '../api/study.ts'
import { go, useAddress } from '../frame/address.ts'
import type { Change } from '../frame/addressOf.ts'
import { Dialog } from '../frame/Dialog.tsx'
import { Link } from '../frame/Link.tsx'
import { stationNames, stationWords } from '../frame/stations.ts'
import { words } from '../glossary/words.ts'

interface Found {
  readonly name: string
  readonly about: string
  readonly to: Change
}

/** All that can be gone to: stations, records, samples, the drawer, words. */
function everything(study: StudyView | undefined): readonly Found[] {
  const stations = stationNames.map(
    (name): Found => ({
      name: stationWords[name].name,
      about: stationWords[name].about,
      to: { station: name },
    }),
  )
  const records = (study?.records ?? []).map(
    ({ id, name, sample }): Found => ({
      name,
      about: sample ? `record of ${sample}` : 'record',
      to: { station: 'read', rest: [id] },
    }),
  )
  const terms = words.map(({ key, name, meaning }): Found => ({ name, about: meaning, to: { search: { word: key } } }))
  const drawer: Found = {
    name: 'Lab',
    about: 'rigs, fixtures, bodies, liquids, people',
    to: { search: { lab: 'rigs' } },
  }
  const home: Found = { name: 'Studies', about: 'all studies of the lab', to: { study: null } }
  return [...(study === undefined ? [] : [...stations, drawer, ...records]), home, ...terms]
}

/** Find anything: type a few letters, Enter goes to the first. */
export default function Find({ close }: { readonly close: () => void }): ReactNode {
  const { study: id } = useAddress()
  const study = useKept<StudyView>(id === null ? null : `/api/studies/${encodeURIComponent(id)}`).value
  const [text, setText] = useState('')
  const parts = text.toLowerCase().split(/\s+/)
  const found = everything(study)
    .filter(({ name, about }) => parts.every((part) => `${name} ${about}`.toLowerCase().includes(part)))
    .slice(0, 12)
  const take = (to: Change): void => {
    close()
    go(to)
  }
  return (
    <Dialog title="Find" close={close}>
      <form
        onSubmit={(event) => {
          event.preventDefault()
          if (found.length > 0) take(found[0].to)
        }}
      >
        <label>
          <span className="unseen">Find a station, a record, a word</span>
          <input
            className="find-field"
            data-first
            value={text}
            onChange={(event) => setText(event.target.value)}
            placeholder="a station, a record, a word"
          />
        </label>
      </form>
      <ul className="found">
        {found.map(({ name, about, to }) => (
          <li key={`${name} ${about}`}>
            <Link to={to} onClick={close}>
              {name}
            </Link>{' '}
            <span className="quiet">{about}</span>
          </li>
        ))}
      </ul>
      {found.length === 0 && <p>Nothing is called so.</p>}
    </Dialog>
  )
}
