const words = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve']

/** A small count in letters, as sentences have it. */
export const spelled = (count: number): string => words[count] ?? String(count)

/** One ball, three balls. */
export const plural = (count: number, one: string, many = `${one}s`): string => (count === 1 ? one : many)
