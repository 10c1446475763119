import { classBounds, type IntensityClass, intensityClassOf } from '#engine/response/intensityClass.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import rows from './rows.json' with { type: 'json' }

const bounds = ({ cls }: { cls: IntensityClass }) => ({
  hrr: classBounds(cls, 'hrr'),
  hrmax: classBounds(cls, 'hrmax'),
  vo2max: classBounds(cls, 'vo2max'),
  rpe6_20: classBounds(cls, 'rpe6_20'),
})

checkRows('classes of intensity', rows, {
  'acsm.class': bounds,
  'acsm.class.hrr': ({ hrr_percent }: { hrr_percent: number }) => intensityClassOf(hrr_percent),
})
