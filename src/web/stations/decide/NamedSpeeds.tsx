import type { ReactNode } from 'react'
import { printQuantity } from '../../../core/quantity/index.ts'
import type { Comparison } from '../../../core/terms/index.ts'
import { glued } from '../../sentence/glued.ts'

/** The effect at single speeds, each by a test of its own with Holm's allowance for all of them. */
export function NamedSpeeds({ comparison: { differences, scale } }: { readonly comparison: Comparison }): ReactNode {
  const rows = differences.flatMap(({ first, second, named }) =>
    named.map((effect) => ({ pair: `${second} against ${first}`, ...effect })),
  )
  if (rows.length === 0) return null
  const effect = (value: number): string =>
    glued(
      (scale === 'ratio' ? printQuantity(value, 'ratio', { digits: 2, unit: '%' }) : value.toFixed(4)).replace(
        '-',
        '−',
      ),
    )
  const chance = (p: number): string => (p < 0.001 ? 'under 0.001' : p.toFixed(3))
  return (
    <section className="named-speeds" aria-labelledby="named-speeds">
      <h2 id="named-speeds">At single speeds</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">pair</th>
            <th scope="col">speed</th>
            <th scope="col">difference</th>
            <th scope="col">95 %, this speed alone</th>
            <th scope="col">p by Holm</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ pair, slidingSpeed, value, low, high, adjusted }) => (
            <tr key={`${pair} ${slidingSpeed}`}>
              <th scope="row">{pair}</th>
              <td>{glued(printQuantity(slidingSpeed, 'velocity', { digits: 3 }))}</td>
              <td>{effect(value)}</td>
              <td>
                {effect(low)} to {effect(high)}
              </td>
              <td>{chance(adjusted)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="quiet">Speeds that were chosen before the data were seen. For any other, the band counts.</p>
    </section>
  )
}
