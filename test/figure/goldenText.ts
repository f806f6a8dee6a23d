const geometry = / (x|y|cx|cy|r|d|width|height|transform|points)="[^"]*"/g

/**
 * A picture as it lies in golden/: places and sizes to a tenth of a pixel, so that the last digit of a logarithm changes
 * no golden file, one element a line. Words keep every digit, those of tick labels above all.
 */
export const goldenText = (svg: string): string =>
  svg
    .replace(/<[^>]*>/g, (tag) => tag.replace(geometry, (attribute) => attribute.replace(/\d+\.\d+/g, toTenth)))
    .replaceAll('><', '>\n<')

const toTenth = (text: string): string => String(Math.round(Number(text) * 10) / 10)
