/** A number's unit: letters that a digit and a blank come before. */
const unit = /(?<=\d) (?=(?:[%‰°]|[nµmkMG]?(?:m|s|N|Pa|rad|Hz|g|K|J)(?!\p{L})|×))/gu

/** The text with blanks that no line may break at between a number and its unit and on both sides of an equals sign. */
export const heldTogether = (text: string): string => text.replace(unit, '\u00a0').replaceAll(' = ', '\u00a0=\u00a0')
