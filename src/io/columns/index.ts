export { columnsToParquet } from './columnsToParquet.ts'
export { minMaxPyramid, type Pyramid, type PyramidLevel, pyramidBase, pyramidFactor } from './minMaxPyramid.ts'
export { parquetToChannels } from './parquetToChannels.ts'
export { parquetToPyramid, pyramidToParquet } from './pyramidFile.ts'
