import { type ReactNode, useMemo, useState } from 'react'
import { type Material, materials, type OwnMaterial, ownValue, withOwnMaterials } from '../../../core/material/index.ts'
import { printQuantity } from '../../../core/quantity/index.ts'
import { useOwnThings } from '../../question/useOwnThings.ts'
import { type Added, AddForm } from './AddForm.tsx'

/** All materials that a plan may name: the lab's own first, then the table that comes with the program. */
export function MaterialsPart(): ReactNode {
  const [wanted, setWanted] = useState('')
  const own = useOwnThings().materials
  const all = useMemo(() => {
    const merged = withOwnMaterials(own)
    return merged.ok ? merged.value : materials
  }, [own])
  const names = new Set(own.map(({ name }) => name))
  const word = wanted.trim().toLowerCase()
  const found = all.filter(({ name, synonyms }) => [name, ...synonyms].some((one) => one.toLowerCase().includes(word)))
  return (
    <>
      <AddForm
        kind="material"
        what="material"
        fields={[
          { key: 'elasticModulus', words: 'elastic modulus', dimension: 'pressure', such: '2.4 GPa', must: true },
          { key: 'poissonRatio', words: 'Poisson ratio', dimension: 'ratio', such: '0.35', must: true },
          { key: 'source', words: 'where it comes from', such: 'our own bending test, 2026', must: true },
        ]}
        contentOf={materialOf}
        judge={(added) => {
          const merged = withOwnMaterials([materialOf(added)])
          return merged.ok ? undefined : merged.problems.map(({ what, mend }) => `${what} ${mend}`).join(' ')
        }}
      />
      <label className="drawer-find">
        Find <input type="search" value={wanted} onChange={(event) => setWanted(event.target.value)} />
      </label>
      <table className="drawer-table">
        <thead>
          <tr>
            <th scope="col">material</th>
            <th scope="col">modulus</th>
            <th scope="col">Poisson ratio</th>
          </tr>
        </thead>
        <tbody>
          {found.map((material) => (
            <MaterialRow key={material.name} material={material} own={names.has(material.name)} />
          ))}
        </tbody>
      </table>
      {found.length === 0 && <p className="quiet">No material of this name.</p>}
    </>
  )
}

const MaterialRow = ({
  material: { name, synonyms, family, elasticModulus, poissonRatio },
  own,
}: {
  readonly material: Material
  readonly own: boolean
}): ReactNode => (
  <tr>
    <td>
      <b>{name}</b>
      {own && ' (our own)'} <span className="quiet">{[family, ...synonyms].join(', ')}</span>
      <br />
      <span className="quiet">{elasticModulus.source}</span>
    </td>
    <td>{printQuantity(elasticModulus.value, 'pressure', { digits: 3 })}</td>
    <td>{Number(poissonRatio.value.toPrecision(3))}</td>
  </tr>
)

function materialOf({ name, elasticModulus, poissonRatio, source }: Added & { readonly name: string }): OwnMaterial {
  const from = String(source ?? 'our own')
  return {
    name,
    elasticModulus: ownValue(Number(elasticModulus), from),
    poissonRatio: ownValue(Number(poissonRatio), from),
  }
}
