import type { ReactNode } from 'react'
import type { Range } from '#engine/band/riderBand.ts'
import { sayBand } from '#engine/band/sayBand.ts'
import type { RiderReport } from '#engine/report.ts'
import { RECOVERIES } from '#engine/reserve/recovery.ts'
import { heartRateAt } from '#engine/response/heartReserve.ts'
import { INTENSITY_CLASSES } from '#engine/response/intensityClass.ts'
import { MEASURED_CLASSES } from '#engine/response/measuredClasses.ts'
import { shortName } from '#features/drafting/panel/shortName.ts'
import { itemName, riderInSentence } from '#plan/names.ts'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { Source } from '#ui/Source.tsx'
import type { Seconds } from '#units/units.ts'
import { clock, number, percent } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'
import './riders.css'

interface Props {
  /** Goes to a block; absent where there is no stage to go to. */
  onShow?: (blockId: string) => void
  /** Goes to where the riders are described. */
  onOpen: () => void
}

/** Less is the last beat of a song, which changes no figure. */
const EST_UNPLANNED: Seconds = 1

/** What the ride would be to each modelled rider: heart, reserve, time by intensity, energy and load. All of it estimates. */
export function RidersSummary({ onShow, onOpen }: Props) {
  const riders = useApp((state) => state.shownReport?.riders)
  const isEmpty = useApp((state) => state.shownReport?.blocks.length === 0)
  const allowed = useApp((state) => state.shownReport && tell(sayBand(state.shownReport)))
  const unplanned = useApp((state) => state.shownReport?.overall.unplanned ?? 0)
  if (!riders || isEmpty) return null
  const { uptakePercent, heartPercent, source } = MEASURED_CLASSES
  const outside = riders.some(({ energy }) => energy.outsideSeconds >= 0.5)
  return (
    <section className="panel-group" aria-label={words.panelsRide.ridersEstimated}>
      <h3>
        {words.panelsRide.riders} <span className="panel-quiet">{words.panelsRide.modeled}</span>
      </h3>
      <div className="panel-riders-scroll">
        <table className="panel-riders">
          <thead>
            <tr>
              <td />
              {riders.map(({ rider, reference }) => (
                <th key={rider.id} scope="col" data-reference={reference}>
                  {shortName(rider)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            <Row
              label={words.panelsRide.highestHeart}
              riders={riders}
              cell={(report) => heartWords(report, 'highest', report.response.maximum.share)}
            />
            <Row label={words.panelsRide.meanHeart} riders={riders} cell={(report) => heartWords(report, 'mean', report.response.mean)} />
            <Row
              label={words.panelsRide.leastLeft}
              riders={riders}
              cell={({ reserve, band }) => (
                <About
                  middle={left(reserve.minimum.share)}
                  range={rangeOf(band.lowestReserve, (share) => hundredths(Math.max(0, share)))}
                />
              )}
            />
            <Row label="" riders={riders} cell={(report) => <LowestPlace report={report} onShow={onShow} />} />
          </tbody>
          <tbody>
            {INTENSITY_CLASSES.toReversed().map(({ name }) => (
              <Row
                key={name}
                label={words.panelsRide.intensity({ name })}
                riders={riders}
                cell={({ response }) => clockOrNone(response.secondsByClass[name])}
              />
            ))}
          </tbody>
          {riders.some(({ response }) => response.secondsByThreshold) && (
            <tbody>
              {(['over', 'between', 'under'] as const).map((key) => (
                <Row
                  key={key}
                  label={thresholdName(key)}
                  riders={riders}
                  cell={({ response }) => thresholdWords(response.secondsByThreshold?.[key])}
                />
              ))}
            </tbody>
          )}
          <tbody>
            <Row
              label={words.panelsRide.energy}
              riders={riders}
              cell={({ energy, band }) => <About middle={tens(energy.kcal)} range={rangeOf(band.energy, tens)} />}
            />
            {outside && (
              <Row label={words.panelsRide.rougherFor} riders={riders} cell={({ energy }) => clockOrNone(energy.outsideSeconds)} />
            )}
            <Row label={words.panelsRide.load} riders={riders} cell={({ load }) => number(load, 0)} />
          </tbody>
        </table>
      </div>
      {unplanned >= EST_UNPLANNED && <p className="panel-note">{words.panelsRide.unplanned({ seconds: unplanned })}</p>}
      <Button onClick={onOpen}>{words.panelsRide.changeRiders}</Button>
      {allowed && <p className="panel-note">{allowed}</p>}
      <p className="panel-note">{words.panelsRide.heartNote}</p>
      {outside && <p className="panel-note">{sayOutside(riders)}</p>}
      <p className="panel-note">
        {words.panelsRide.measuredNote({ uptake: uptakePercent, heart: heartPercent })} <Source text={source} />
      </p>
    </section>
  )
}

interface RowProps {
  label: string
  riders: readonly RiderReport[]
  cell: (report: RiderReport) => ReactNode
}

function Row({ label, riders, cell }: RowProps) {
  return (
    <tr>
      {label === '' ? <td /> : <th scope="row">{label}</th>}
      {riders.map((report) => (
        <td key={report.rider.id}>{cell(report)}</td>
      ))}
    </tr>
  )
}

/** Where the reserve runs out, or else is lowest, as a way there. */
function LowestPlace({ report: { reserve, rider }, onShow }: { report: RiderReport; onShow?: (blockId: string) => void }) {
  const index = reserve.runsOut?.block ?? reserve.minimum.block
  const block = useApp((state) => (index === undefined ? undefined : state.shownReport?.blocks[index]?.block))
  if (!reserve.drawnOn || !block) return null
  const { runsOut } = reserve
  const { panelsRide: ours } = words
  const place = { rider: tell(riderInSentence(rider)), block: tell(itemName(block)), at: runsOut?.at ?? reserve.minimum.at }
  const models = runsOut && { models: runsOut.recoveries, of: RECOVERIES.length }
  return (
    <button
      type="button"
      className="panel-riders-place"
      onClick={() => onShow?.(block.id)}
      aria-label={models ? ours.showRunsOut({ ...place, ...models }) : ours.showLowest(place)}
    >
      {models && <b>{models.models < models.of ? ours.runsOutInSome(models) : ours.runsOut} </b>}
      {clock(place.at)}
      <span>{place.block}</span>
    </button>
  )
}

function heartWords({ response, band }: RiderReport, figure: 'highest' | 'mean', share: number) {
  const { share: shares, beats } = band.heart[figure]
  return (
    <>
      <About middle={percent(share)} range={rangeOf(shares, hundredths)} />
      <About middle={whole(heartRateAt(share, response.range))} range={rangeOf(beats, whole)} />
    </>
  )
}

/** A figure, and small under it where nine of ten would lie. */
function About({ middle, range }: { middle: string; range: string }) {
  return (
    <>
      {middle}
      <span className="panel-riders-beats">{range}</span>
    </>
  )
}

/** "110–190"; a single figure where both ends read the same. */
function rangeOf({ low, high }: Range, say: (value: number) => string): string {
  const [first, last] = [say(low), say(high)]
  return first === last ? first : `${first}–${last}`
}

/** For whoever is outside longest. */
function sayOutside(riders: readonly RiderReport[]): string {
  const most = riders.reduce((longest, one) => (one.energy.outsideSeconds > longest.energy.outsideSeconds ? one : longest))
  return words.panelsRide.outsideNote({
    outside: most.energy.outsideSeconds,
    of: most.energy.pedalSeconds,
    rider: tell(riderInSentence(most.rider)),
  })
}

/** What is left of the reserve; what the model holds below nothing is shown as nothing. */
const left = (share: number): string => percent(Math.max(0, share))

const whole = (value: number): string => number(value, 0)

/** Time by a rider's own thresholds, hardest first. */
const thresholdName = (key: 'over' | 'between' | 'under'): string =>
  ({ over: words.panelsRide.overSecond, between: words.panelsRide.between, under: words.panelsRide.underFirst })[key]

/** Nothing where a threshold is not known. */
const thresholdWords = (seconds: Seconds | null | undefined): string =>
  seconds === null || seconds === undefined ? '' : clockOrNone(seconds)

/** Without its sign, where two of them stand together. */
const hundredths = (share: number): string => number(100 * share, 0)

const clockOrNone = (seconds: number): string => (seconds < 0.5 ? '–' : clock(seconds))

/** An estimate is told in tens. */
const tens = (kcal: number): string => number(10 * Math.round(kcal / 10), 0)
