const unit = '(?:%|°C|K|nm|µm|mm|m|s|ms|min|h|mN|µN|N|kPa|MPa|GPa|Pa|mPa·s|Pa·s|µN·m|mN·m|N·m|nm/s|µm/s|mm/s|m/s)'
const beforeUnit = new RegExp(`(\\d) (?=${unit}(?![\\p{L}/·]))`, 'gu')

/** Numbers held to their units, so that no line ends between the two. */
export const glued = (text: string): string => text.replace(beforeUnit, '$1\u00a0')
