import { type ReactNode, useCallback, useState } from 'react'
import { printQuantity, printWithUncertainty } from '../../../../core/quantity/index.ts'
import { autocorrelationFigure, budgetFigure, turnPlotFigure } from '../../../../figure/index.ts'
import type { RecordAnswer, StepAnswer } from '../../../../server/contract/index.ts'
import { useKept } from '../../../api/kept.ts'
import type { Look } from '../../../frame/look.ts'
import { Refused } from '../../../frame/Refused.tsx'
import { Waiting } from '../../../frame/Waiting.tsx'
import { Picture } from '../../../pictures/Picture.tsx'
import { Computed } from '../../../sentence/Computed.tsx'
import type { StepWindow } from '../strip/WindowHandles.tsx'
import { CutTrace } from './CutTrace.tsx'
import { numbersOf } from './numbersOf.ts'
import { ratioWithin } from './ratioWithin.ts'
import type { MendsHold } from './useMends.ts'
import { whyFriction } from './whyFriction.ts'

interface StepPartProps {
  readonly record: string
  readonly step: number
  readonly hold: MendsHold
  readonly papers: RecordAnswer['papers']
}

/** One point opened: what was cut and why, its trace, its turn, how long its readings remember, what makes its uncertainty. */
export function StepPart({ record, step, hold, papers }: StepPartProps): ReactNode {
  const { value, refusal, waiting } = useKept<StepAnswer>(`/api/records/${record}/steps/${step}`)
  if (refusal !== undefined) return <Refused refusal={refusal} />
  if (value === undefined) return waiting ? <Waiting what={`Reading step ${step}`} /> : null
  return <OpenStep key={step} answer={value} hold={hold} papers={papers} />
}

function OpenStep({
  answer,
  hold,
  papers,
}: Pick<StepPartProps, 'hold' | 'papers'> & { readonly answer: StepAnswer }): ReactNode {
  const { step, point, cut, rows } = answer
  const [seen, setSeen] = useState<{ from: number; to: number }>()
  const window = stepWindow(answer, hold, setSeen)
  const preview = seen === undefined ? undefined : ratioWithin(rows, seen)
  const moved = hold.mends.windows.find((one) => one.step === step)
  return (
    <section className="open-step" aria-labelledby="open-step">
      <h3 id="open-step">Step {step}</h3>
      <p className="say">
        {point.friction === null ? (
          `At ${speedOf(answer)} this step gave no friction value.`
        ) : (
          <>
            At {speedOf(answer)}: µ ={' '}
            <Computed why={whyFriction(point)}>
              {printWithUncertainty(point.friction, point.ownUncertainty ?? 0)}
            </Computed>{' '}
            by itself, and {percent((point.sharedUncertainty ?? 0) / Math.abs(point.friction))} more that all points
            share.
          </>
        )}{' '}
        {cutInWords(answer, moved !== undefined)}{' '}
        {preview !== undefined && (
          <output className="preview">
            Between {seconds(seen?.from ?? 0)} and {seconds(seen?.to ?? 0)} the rows give about {preview.toPrecision(4)}
            .
          </output>
        )}
      </p>
      {moved !== undefined && (
        <p className="notice">
          <MendedBy papers={papers} step={step} />{' '}
          <button type="button" onClick={() => hold.move(step, null, moved)}>
            Put the program’s window back
          </button>
        </p>
      )}
      <p className="quiet">
        Drag the two edges to change which rows count, or reach them by Tab, move them by arrows and press Enter.
      </p>
      {hold.doing !== undefined && <Waiting what={hold.doing} stop={hold.stop} />}
      {hold.refusal !== undefined && <Refused refusal={hold.refusal} />}
      <CutTrace answer={answer} window={window} shown={seen ?? { from: cut.kept, to: cut.end }} />
      <Details answer={answer} />
    </section>
  )
}

/** Who moved a window and from where, as the record's papers tell it. */
function MendedBy({ papers, step }: { readonly papers: RecordAnswer['papers']; readonly step: number }): ReactNode {
  const mends = papers.filter(({ kind }) => kind === 'mends').sort((a, b) => b.version - a.version)
  const said = mends.find(({ why }) => why.includes(`step ${step}:`)) ?? mends[0]
  return said === undefined ? 'Somebody moved this window.' : `${said.by}, ${said.at.slice(0, 10)}: ${said.why}.`
}

/** The bars are what came; the weighing takes the turn's waves off first. */
const memoryNote =
  'The bars are of the readings as they came, with the waves of the turn; those are taken off before readings are weighed.'

function Details({ answer }: { readonly answer: StepAnswer }): ReactNode {
  const { step, point, rows, memory, cut } = answer
  const turns = useCallback(
    (width: number, palette: Look) => {
      const inside = rows.time.map((time) => time >= cut.kept && time <= cut.end)
      const friction = numbersOf(rows.friction).filter((_, row) => inside[row])
      const angle = numbersOf(rows.angle).filter((_, row) => inside[row])
      const fit = point.friction === null ? null : { friction: point.friction, harmonics: point.frictionHarmonics }
      return turnPlotFigure(
        { title: `Step ${step} over the turn`, angle, friction, fit },
        { palette, width, id: 'turn-plot' },
      )
    },
    [rows, cut, point, step],
  )
  const remembered = useCallback(
    (width: number, palette: Look) => {
      const data = {
        title: 'How long its readings remember',
        note: memoryNote,
        ...(memory ?? { correlations: [], readings: 0, lag: 1, time: null }),
      }
      return autocorrelationFigure(data, { palette, width, id: 'memory' })
    },
    [memory],
  )
  const budget = useCallback(
    (width: number, palette: Look) =>
      budgetFigure({ title: 'What makes its uncertainty', points: [point] }, { palette, width, id: 'step-budget' }),
    [point],
  )
  return (
    <div className="step-pictures">
      <Picture draw={turns} most={900} />
      {memory !== null && <Picture draw={remembered} most={900} />}
      {point.friction !== null && <Picture draw={budget} most={900} />}
    </div>
  )
}

function stepWindow(
  answer: StepAnswer,
  hold: MendsHold,
  preview: (seen: { from: number; to: number } | undefined) => void,
): StepWindow {
  const { step, cut, rows } = answer
  const before = { from: cut.kept, to: cut.end }
  return {
    step,
    ...before,
    least: Math.min(cut.begin, rows.time[0] ?? cut.begin),
    most: Math.max(cut.end, rows.time.at(-1) ?? cut.end),
    preview: (from, to) => preview(from === before.from && to === before.to ? undefined : { from, to }),
    moved: (from, to) => {
      preview(undefined)
      hold.move(step, { from, to }, before)
    },
  }
}

const speedOf = ({ point }: StepAnswer): string => printQuantity(point.slidingSpeed, 'velocity', { digits: 3 })
const seconds = (time: number): string => printQuantity(time, 'time', { digits: 5, unit: 's' })
const percent = (share: number): string => `${Number((100 * share).toPrecision(2))} %`

function cutInWords({ cut, point }: StepAnswer, moved: boolean): string {
  const whole = cut.end - cut.begin
  const head = cut.kept - cut.begin
  const print = (span: number): string => printQuantity(span, 'time', { digits: 3 })
  const turns = Number(point.turns.toPrecision(3))
  const spans = `${print(cut.end - cut.kept)} count, ${turns} ${turns === 1 ? 'turn' : 'turns'}`
  if (moved) return `${spans}.`
  return head > 1e-6 * whole
    ? `Of ${print(whole)}, ${spans}; the first ${print(head)} were cut, as long as it settled and ran in.`
    : `All of it counts: ${spans.replace(' count', '')}.`
}
