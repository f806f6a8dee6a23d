/** Step numbers for people, ascending: `step 3`, `steps 1–4, 7`; a list of more than six ranges becomes a count, `9 steps`. */
export function printSteps(steps: readonly number[]): string {
  const ranges: string[] = []
  let start = 0
  for (let index = 1; index <= steps.length; index++) {
    const last = steps[index - 1] ?? 0
    if (steps[index] === last + 1) continue
    const first = steps[start] ?? 0
    ranges.push(first === last ? String(last) : last === first + 1 ? `${first}, ${last}` : `${first}–${last}`)
    start = index
  }
  if (ranges.length > 6) return `${steps.length} steps`
  return `${steps.length === 1 ? 'step' : 'steps'} ${ranges.join(', ')}`
}
