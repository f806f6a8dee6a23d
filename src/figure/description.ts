import { remarkWords } from '../core/terms/index.ts'
import { speedUnit } from './axes.ts'
import type { CurveFigureData } from './curveData.ts'
import { type Domain, isDrawable } from './domain.ts'
import { wetRegimes } from './regimeNames.ts'
import { stepsInWords } from './signKey.ts'
import type { Sign } from './signs.ts'
import { tickLabel } from './ticks.ts'

/** The figure in words, for people who hear it. */
export function description(data: CurveFigureData, domain: Domain, signs: readonly Sign[]): string {
  const drawable = data.points.filter(isDrawable)
  const unit = speedUnit(domain.speed)
  const speeds = drawable.map((point) => point.slidingSpeed / unit.metresPerSecond)
  const values = drawable.map((point) => point.friction)
  const range =
    drawable.length === 0
      ? 'No step gave a friction value.'
      : `Friction coefficient against sliding speed, ${drawable.length} of ${data.points.length} steps, from ${round(Math.min(...speeds))} to ` +
        `${round(Math.max(...speeds))} ${unit.text}; friction from ${round(Math.min(...values))} to ${round(Math.max(...values))}.`
  const marks = signs.map((sign) => `${capital(remarkWords[sign.kind].words)}: ${stepsInWords(sign)}.`)
  return [range, ...features(data, unit), data.window?.sentence ?? '', data.window?.plateau.sentence ?? '', ...marks]
    .filter((sentence) => sentence !== '')
    .join(' ')
}

function features(data: CurveFigureData, unit: ReturnType<typeof speedUnit>): readonly string[] {
  const [, between, fast] = data.regimes ?? wetRegimes
  const sentences: string[] = []
  for (const feature of data.curve?.features ?? []) {
    if (feature.value === null) continue
    const speed = `${round(feature.value / unit.metresPerSecond)} ${unit.text}`
    if (feature.name === 'minimumSpeed') sentences.push(`Least friction at ${speed}.`)
    if (feature.name === 'mixedBegins') sentences.push(`${capital(between)} begins at ${speed}.`)
    if (feature.name === 'filmBegins') sentences.push(`${capital(fast)} begins at ${speed}.`)
  }
  return sentences
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)

const round = (value: number): string => tickLabel(Number(value.toPrecision(3)))
