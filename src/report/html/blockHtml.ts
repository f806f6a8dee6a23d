import type { CheckedItem, Fact, NumberedFigure, RemarkEntry, ReportBlock } from '../reportContent.ts'
import { stateWords, weightWords } from '../words/markWords.ts'
import { escapeHtml } from './escapeHtml.ts'
import { tableHtml } from './tableHtml.ts'

/** One block of a section as HTML. */
export function blockHtml(block: ReportBlock): string {
  switch (block.kind) {
    case 'paragraph':
      return `<p>${block.lead === undefined ? '' : `<b class="lead">${escapeHtml(block.lead)}.</b> `}${escapeHtml(block.text)}</p>`
    case 'facts':
      return `<dl>\n${block.facts.map(factHtml).join('\n')}\n</dl>`
    case 'table':
      return tableHtml(block.table)
    case 'figure':
      return figureHtml(block.figure)
    case 'remarks':
      return `<ol class="remarks">\n${block.remarks.map(remarkHtml).join('\n')}\n</ol>`
    case 'checklist':
      return `<ul class="checklist">\n${block.items.map(itemHtml).join('\n')}\n</ul>`
    case 'list':
      return `<ul>\n${block.items.map((item) => `<li>${escapeHtml(item)}</li>`).join('\n')}\n</ul>`
  }
}

const factHtml = ({ term, value, code }: Fact): string =>
  `<dt>${escapeHtml(term)}</dt><dd>${code === true ? `<code>${escapeHtml(value)}</code>` : escapeHtml(value)}</dd>`

function figureHtml({ number, caption, svg, darkSvg }: NumberedFigure): string {
  const pictures =
    darkSvg === null
      ? `<div class="paper">${svg}</div>`
      : `<div class="light">${svg}</div>\n<div class="dark">${darkSvg}</div>`
  return `<figure>\n${pictures}\n<figcaption><b>Figure ${number}.</b> ${escapeHtml(caption)}</figcaption>\n</figure>`
}

/** The three shapes of the figures: triangle, diamond, disc, with the letter inside. */
const shapes: Readonly<Record<RemarkEntry['weight'], string>> = {
  stops: '<path d="M10 2l9 16H1z"/>',
  caution: '<path d="M10 1l9 9l-9 9l-9-9z"/>',
  note: '<circle cx="10" cy="10" r="8.5"/>',
}

function remarkHtml({ weight, letter, words, where, sentences, next }: RemarkEntry): string {
  const low = weight === 'stops' ? 15.5 : 13.7
  const sign = `<svg class="sign ${weight}" viewBox="0 0 20 20" role="img" aria-label="${weightWords[weight]}">${shapes[weight]}<text x="10" y="${low}">${escapeHtml(letter)}</text></svg>`
  const head = `<b>${escapeHtml(words)}</b>${where === '' ? '' : ` <span class="where">${escapeHtml(where)}</span>`}`
  const told = sentences.map((sentence) => `<p>${escapeHtml(sentence)}</p>`).join('')
  const todo = next.map((text) => `<p class="next">${escapeHtml(text)}</p>`).join('')
  return `<li>${sign}<div>${head}<div class="told">${told}</div>${todo}</div></li>`
}

const itemHtml = ({ item, state, text }: CheckedItem): string =>
  `<li class="${state}"><span class="state">${stateWords[state]}</span><div><b>${escapeHtml(item)}</b><p>${escapeHtml(text)}</p></div></li>`
