import { INTENSITY_CLASSES, type IntensityClass } from '#engine/response/intensityClass.ts'
import { secondsByClass } from '#engine/response/minutesByClass.ts'
import { checkRows } from '#tests/support/publishedRows.ts'
import rows from './rows.json' with { type: 'json' }

/** The class in which the page counts a minute at a per cent of the heart-rate reserve. */
function classAt(percent: number): IntensityClass {
  const seconds = secondsByClass([{ from: 0, to: 60, follower: [percent / 100, 0, 0], difference: 0, tau: 60 }])
  return INTENSITY_CLASSES.find(({ name }) => seconds[name] === 60)!.name
}

const PER_CENTS = Array.from({ length: 101 }, (_, percent) => percent)

checkRows('classes of intensity', rows, {
  'acsm.class': ({ cls }: { cls: IntensityClass }) => {
    const own = PER_CENTS.filter((percent) => classAt(percent) === cls)
    return [own[0], own.at(-1)]
  },
  'acsm.class.hrr': ({ hrr_percent }: { hrr_percent: number }) => classAt(hrr_percent),
})
