import type { ReactNode } from 'react'
import { type SmallCurveData, smallCurve, smallCurveAxes } from '../../../../figure/index.ts'
import { useLook } from '../../../frame/look.ts'
import { Svg } from '../Svg.tsx'
import { demoCurves } from './demoCurves.ts'

/** A shelf as it will look, from the demo. */
export function DemoShelf(): ReactNode {
  const palette = useLook()
  const curves = demoCurves.map(({ name, places }): SmallCurveData => {
    const line = places.map(([slidingSpeed, friction]) => ({ slidingSpeed, friction }))
    return { points: line.map((place) => ({ ...place, trusted: true })), line, words: `${name}, invented` }
  })
  const axes = smallCurveAxes(curves)
  return (
    <div className="shelf">
      <ul>
        {curves.map((curve, index) => (
          <li key={demoCurves[index].name} className="shelf-record">
            <Svg markup={smallCurve({ ...curve, ...axes }, { palette, width: 176, height: 88 })} />
            <span className="quiet">{demoCurves[index].name}</span>
          </li>
        ))}
      </ul>
    </div>
  )
}
