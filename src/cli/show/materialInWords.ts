import type { FoundThing, KeptThing, MaterialTable, OwnThing } from '../../bench/material/index.ts'
import { type Dimension, printQuantity } from '../../core/quantity/index.ts'
import { schemaVersion } from '../../core/terms/index.ts'
import { painted, type Screen } from '../screen.ts'
import { bodyInWords } from './bodyInWords.ts'
import { printable } from './printable.ts'
import { type TableColumn, textTable } from './textTable.ts'
import { wrap } from './wrap.ts'

const widest = 110

/** Any answer of the verb for machines. */
export const asJson = (answer: object): string => `${JSON.stringify({ schemaVersion, ...answer }, null, 2)}\n`

const said = (value: number, dimension: Dimension): string => printQuantity(value, dimension, { digits: 2 })

/** All bodies in a table, all liquids by their names. */
export function materialTableInWords({ bodies, liquids }: MaterialTable, screen: Screen): string {
  const column = (head: string, unit: string, cells: readonly string[]): TableColumn => ({
    head,
    unit,
    align: 'left',
    cells,
  })
  const table = textTable([
    column(
      'body',
      '',
      bodies.map(({ name, own }) => `${printable(name, 40)}${own ? ' *' : ''}`),
    ),
    column(
      'family',
      '',
      bodies.map(({ family }) => family),
    ),
    column(
      'modulus',
      '',
      bodies.map(({ elasticModulus }) => said(elasticModulus.value, 'pressure')),
    ),
    column(
      'from–to',
      '',
      bodies.map(({ elasticModulus: { low, high } }) => `${said(low, 'pressure')}–${said(high, 'pressure')}`),
    ),
    column(
      'Poisson',
      '',
      bodies.map(({ poissonRatio }) => String(poissonRatio.value)),
    ),
  ])
  const names = liquids.map(({ name, own }) => `${printable(name, 40)}${own ? ' *' : ''}`).join(' · ')
  const width = Math.min(screen.width, widest)
  const notes = [
    'Also any share of mass, "glycerol 60 %", and any grade, "silicone oil 500".',
    ...(bodies.some(({ own }) => own) || liquids.some(({ own }) => own) ? ['* your own'] : []),
    'kufe material NAME tells the values of one, their spans and their sources.',
  ]
  return `${table}\n\n${painted(screen, 'Liquids', 'strong')}\n${wrap(names, width, { indent: '  ' })}\n${notes.map((note) => wrap(note, width, { indent: '  ' })).join('\n')}\n`
}

/** One body or liquid with sources. */
export const materialInWords = (found: FoundThing, screen: Screen): string =>
  found.kind === 'body' ? bodyInWords(found.body, screen) : liquidInWords(found, screen)

function liquidInWords(
  { name, limits, pressureCoefficient, viscosities, recipe }: Extract<FoundThing, { kind: 'liquid' }>,
  screen: Screen,
): string {
  const width = Math.min(screen.width, widest)
  const line = (text: string): string => wrap(text, width, { indent: '  ' })
  const rates = viscosities.some(({ shearRate }) => shearRate !== null)
  const column = (head: string, unit: string, cells: readonly string[]): TableColumn => ({
    head,
    unit,
    align: 'right',
    cells,
  })
  const table = textTable([
    column(
      'temperature',
      '',
      viscosities.map(({ temperature }) => printQuantity(temperature, 'temperature', { digits: 4 })),
    ),
    ...(rates
      ? [
          column(
            'shear rate',
            '1/s',
            viscosities.map(({ shearRate }) => String(Number((shearRate ?? 0).toPrecision(3)))),
          ),
        ]
      : []),
    column(
      'viscosity',
      '',
      viscosities.map(({ at }) => printQuantity(at.viscosity, 'viscosity', { digits: 4 })),
    ),
    column(
      'uncertainty',
      '%',
      viscosities.map(({ at }) =>
        at.viscosityUncertainty === null
          ? 'not stated'
          : String(Number(((100 * at.viscosityUncertainty) / at.viscosity).toPrecision(2))),
      ),
    ),
  ])
  const first = viscosities[0]?.at
  const doubts = [...new Set(viscosities.flatMap(({ at }) => at.doubts.map(({ sentence }) => sentence)))]
  const { low, high } = limits.temperature
  return `${[
    painted(screen, name, 'accent'),
    table,
    ...(first === undefined ? [] : [line(`Law: ${first.law} (${first.source}). ${first.valid}`)]),
    ...(recipe?.kind === 'flowCurve' ? [line(lawWords(recipe))] : []),
    line(
      `Known from ${printQuantity(low, 'temperature', { digits: 4 })} to ${printQuantity(high, 'temperature', { digits: 4 })}.`,
    ),
    line(
      pressureCoefficient === null
        ? 'No pressure–viscosity coefficient is known.'
        : `Pressure–viscosity coefficient ${perGigapascal(pressureCoefficient.value)} (${perGigapascal(pressureCoefficient.low)} to ${perGigapascal(pressureCoefficient.high)}; ${pressureCoefficient.source}).`,
    ),
    ...doubts.map(line),
  ].join('\n')}\n`
}

const perGigapascal = (value: number): string => `${Number((value * 1e9).toPrecision(3))} 1/GPa`

const lawWords = ({
  law,
  parameters,
}: {
  readonly law: string
  readonly parameters: Readonly<Record<string, number>>
}): string =>
  `${law}: ${Object.entries(parameters)
    .map(([name, value]) => `${name} ${Number(value.toPrecision(3))}`)
    .join(', ')} (SI).`

/** What was kept, and how the fit of a flow curve went. */
export function keptThingInWords({ thing, id, version, isNew }: KeptThing, screen: Screen): string {
  const name = thing.kind === 'material' ? thing.material.name : thing.liquid.name
  const what = isNew
    ? `Kept "${printable(name, 60)}" as ${id}, version ${version}.`
    : `"${printable(name, 60)}" is kept as ${id} already, version ${version}.`
  return `${what}\n${flowInWords(thing, screen)}`
}

function flowInWords(thing: OwnThing, screen: Screen): string {
  if (thing.kind !== 'liquid' || thing.flow === undefined) return ''
  const { points, fits, file } = thing.flow
  const column = (head: string, unit: string, cells: readonly string[]): TableColumn => ({
    head,
    unit,
    align: 'left',
    cells,
  })
  const table = textTable([
    column(
      'law',
      '',
      fits.map(({ law }, i) => `${law}${i === 0 ? ' (taken)' : ''}`),
    ),
    column(
      'scatter',
      '%',
      fits.map(({ scatter }) => (scatter === null ? '' : String(Number((100 * scatter).toPrecision(2))))),
    ),
    column(
      'criterion',
      '',
      fits.map(({ criterion }) => (Number.isFinite(criterion) ? criterion.toFixed(1) : '')),
    ),
    column(
      'ended',
      '',
      fits.map(({ end }) => (end.why === 'atBound' ? `at a bound of ${end.parameter}` : end.why)),
    ),
    column(
      'parameters',
      'SI',
      fits.map(({ estimates }) =>
        estimates
          .map(
            ({ name, value, uncertainty }) =>
              `${name} ${Number(value.toPrecision(3))}${uncertainty === null ? '' : ` ± ${Number(uncertainty.toPrecision(2))}`}`,
          )
          .join(', '),
      ),
    ),
  ])
  const head = `${points.length} points of ${printable(file, 60)}, ${Number(fits[0].shearRate.low.toPrecision(3))} to ${Number(fits[0].shearRate.high.toPrecision(3))} 1/s:`
  return `${painted(screen, head, 'strong')}\n${table}\n`
}
