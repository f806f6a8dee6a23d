/** Edge of the lowest layer and area of each of 256 layers: Marsaglia & Tsang 2000. */
export const zigguratTail = 3.654152885361009
const layerArea = 0.00492867323399

/**
 * Right edges of the layers, widest first; layer 0 is the strip with the tail. The density here is e^(−x²/2), without its
 * constant.
 */
export const zigguratEdges: Float64Array = edges()

/** Share of each layer that lies wholly under the density. */
export const zigguratRatios: Float64Array = ratios()

function edges(): Float64Array {
  const x = new Float64Array(257)
  x[0] = layerArea / Math.exp(-0.5 * zigguratTail * zigguratTail)
  x[1] = zigguratTail
  for (let i = 2; i < 256; i++) {
    x[i] = Math.sqrt(-2 * Math.log(layerArea / x[i - 1] + Math.exp(-0.5 * x[i - 1] * x[i - 1])))
  }
  return x
}

function ratios(): Float64Array {
  const share = new Float64Array(256)
  for (let i = 0; i < 256; i++) share[i] = zigguratEdges[i + 1] / zigguratEdges[i]
  return share
}
