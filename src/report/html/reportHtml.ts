import type { ReportContent, ReportSection } from '../reportContent.ts'
import { isWideBlock } from '../words/isWide.ts'
import { blockHtml } from './blockHtml.ts'
import { escapeHtml } from './escapeHtml.ts'
import { pageStyle } from './pageStyle.ts'

/**
 * The report as one HTML file that needs nothing else: style and pictures inside, no script, nothing fetched. It follows the
 * reader's light or dark page and prints on A4.
 */
export function reportHtml(content: ReportContent): string {
  const { title, subtitle, summary, sections, identity } = content
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${escapeHtml(`${title}: friction report`)}</title>
<style>${pageStyle}</style>
</head>
<body>
<article>
<header>
<p class="kind">Friction report</p>
<h1>${escapeHtml(title)}</h1>
<p class="subtitle">${escapeHtml(subtitle)}</p>
${byLine(content)}</header>
${summary.length === 0 ? '' : `<section class="summary" aria-label="Summary">\n${summary.map((text) => `<p>${escapeHtml(text)}</p>`).join('\n')}\n</section>\n`}${sections.map(sectionHtml).join('\n')}
<footer><p>${escapeHtml(identity)}</p></footer>
</article>
</body>
</html>
`
}

function byLine({ author, date }: ReportContent): string {
  const parts = [author, date].filter((part) => part !== null)
  return parts.length === 0 ? '' : `<p class="by">${escapeHtml(parts.join(' · '))}</p>\n`
}

/** A section that begins with something wide has its heading above it, not beside it. */
const sectionHtml = ({ name, heading, blocks }: ReportSection): string =>
  `<section id="${name}"${isWideBlock(blocks[0]) ? ' class="reaching"' : ''} aria-labelledby="${name}-heading">
<h2 id="${name}-heading">${escapeHtml(heading)}</h2>
${blocks.map(blockHtml).join('\n')}
</section>`
