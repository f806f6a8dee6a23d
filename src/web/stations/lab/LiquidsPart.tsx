import type { ReactNode } from 'react'
import { type LiquidRecipe, liquidFrom, namedLiquids } from '../../../core/material/index.ts'
import { printQuantity } from '../../../core/quantity/index.ts'
import { useOwnThings } from '../../question/useOwnThings.ts'
import { type Added, AddForm } from './AddForm.tsx'

/** Liquids that a plan may name: the lab's own, and those that the program knows. */
export function LiquidsPart(): ReactNode {
  const own = useOwnThings().liquids
  return (
    <>
      <AddForm
        kind="liquid"
        what="liquid"
        fields={[
          { key: 'viscosity', words: 'viscosity', dimension: 'viscosity', such: '12 mPa·s', must: true },
          { key: 'temperature', words: 'at', dimension: 'temperature', such: '23 °C', must: true },
          { key: 'source', words: 'where it comes from', such: 'measured here, cone and plate', must: true },
        ]}
        contentOf={liquidOf}
        judge={(added) => {
          const made = liquidFrom(liquidOf(added))
          return made.ok ? undefined : made.problems.map(({ what, mend }) => `${what} ${mend}`).join(' ')
        }}
      />
      <table className="drawer-table">
        <thead>
          <tr>
            <th scope="col">liquid</th>
            <th scope="col">at 23 °C</th>
          </tr>
        </thead>
        <tbody>
          {own.map(({ name, synonyms, recipe }) => (
            <LiquidRow key={name} name={`${name} (our own)`} synonyms={synonyms} recipe={recipe} />
          ))}
          {namedLiquids.map(({ name, synonyms, recipe }) => (
            <LiquidRow key={name} name={name} synonyms={synonyms} recipe={recipe} />
          ))}
        </tbody>
      </table>
      <p className="quiet">
        Named with their number, the program also knows glycerol in water (“glycerol 60 %”), silicone oils (“silicone
        oil 100 cSt”) and mineral oils (“ISO VG 46”).
      </p>
    </>
  )
}

function LiquidRow({
  name,
  synonyms = [],
  recipe,
}: {
  readonly name: string
  readonly synonyms?: readonly string[]
  readonly recipe: LiquidRecipe
}): ReactNode {
  const liquid = liquidFrom(recipe)
  const at = liquid.ok ? liquid.value.viscosity(296.15) : undefined
  return (
    <tr>
      <td>
        <b>{name}</b> <span className="quiet">{synonyms.join(', ')}</span>
      </td>
      <td>{at?.ok === true ? printQuantity(at.value.viscosity, 'viscosity', { digits: 3 }) : 'not known'}</td>
    </tr>
  )
}

const liquidOf = ({ name, viscosity, temperature, source }: Added & { readonly name: string }): LiquidRecipe => ({
  kind: 'measured',
  name,
  source: String(source ?? 'our own'),
  points: [{ temperature: Number(temperature), viscosity: Number(viscosity) }],
})
