import type { ReactNode } from 'react'
import type { Range } from '#engine/band/riderBand.ts'
import { sayBand } from '#engine/band/sayBand.ts'
import type { RiderReport } from '#engine/report.ts'
import { RECOVERIES } from '#engine/reserve/recovery.ts'
import { heartRateAt } from '#engine/response/heartReserve.ts'
import { INTENSITY_CLASSES } from '#engine/response/intensityClass.ts'
import { MEASURED_CLASSES } from '#engine/response/measuredClasses.ts'
import { nameOfItem } from '#plan/names.ts'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { formatClock } from '#units/formatClock.ts'
import { formatNumber } from '#units/formatNumber.ts'
import type { Seconds } from '#units/units.ts'
import './riders.css'

interface Props {
  /** Goes to a block; absent where there is no stage to go to. */
  onShow?: (blockId: string) => void
  /** Goes to where the riders are described. */
  onOpen: () => void
}

/** Less is the last beat of a song, which changes no figure. */
const SHORTEST_UNPLANNED: Seconds = 1

/** What the ride would be to each modelled rider: heart, reserve, time by intensity, energy and load. All of it estimates. */
export function RidersSummary({ onShow, onOpen }: Props) {
  const riders = useApp((state) => state.shownReport?.riders)
  const isEmpty = useApp((state) => state.shownReport?.blocks.length === 0)
  const allowed = useApp((state) => state.shownReport && sayBand(state.shownReport))
  const unplanned = useApp((state) => state.shownReport?.overall.unplanned ?? 0)
  if (!riders || isEmpty) return null
  const { uptakePercent, heartPercent, source } = MEASURED_CLASSES
  const outside = riders.some(({ energy }) => energy.outsideSeconds >= 0.5)
  return (
    <section className="panel-group" aria-label="riders, estimated">
      <h3>
        riders <span className="panel-quiet">estimates for modelled people</span>
      </h3>
      <div className="panel-riders-scroll">
        <table className="panel-riders">
          <thead>
            <tr>
              <td />
              {riders.map(({ rider, reference }) => (
                <th key={rider.id} scope="col" data-reference={reference}>
                  {shortName(rider.name)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            <Row label="highest heart" riders={riders} cell={(report) => heartWords(report, 'highest', report.response.maximum.share)} />
            <Row label="mean heart" riders={riders} cell={(report) => heartWords(report, 'mean', report.response.mean)} />
            <Row
              label="lowest reserve"
              riders={riders}
              cell={({ reserve, band }) => <About middle={left(reserve.minimum.share)} range={rangeOf(band.lowestReserve, left)} />}
            />
            <Row label="" riders={riders} cell={(report) => <LowestPlace report={report} onShow={onShow} />} />
          </tbody>
          <tbody>
            {INTENSITY_CLASSES.toReversed().map(({ name }) => (
              <Row key={name} label={name} riders={riders} cell={({ response }) => clockOrNone(response.secondsByClass[name])} />
            ))}
          </tbody>
          {riders.some(({ response }) => response.secondsByThreshold) && (
            <tbody>
              {THRESHOLDS.map(({ label, key }) => (
                <Row key={key} label={label} riders={riders} cell={({ response }) => thresholdWords(response.secondsByThreshold?.[key])} />
              ))}
            </tbody>
          )}
          <tbody>
            <Row
              label="energy, kcal"
              riders={riders}
              cell={({ energy, band }) => <About middle={tens(energy.kcal)} range={rangeOf(band.energy, tens)} />}
            />
            {outside && <Row label="rougher for" riders={riders} cell={({ energy }) => clockOrNone(energy.outsideSeconds)} />}
            <Row label="load" riders={riders} cell={({ load }) => formatNumber(load, 0)} />
          </tbody>
        </table>
      </div>
      {unplanned >= SHORTEST_UNPLANNED && (
        <p className="panel-note">
          For {formatClock(unplanned)} of this class nothing is planned yet. Its lines stop there, and these figures leave it out.
        </p>
      )}
      <Button onClick={onOpen}>change the riders</Button>
      {allowed && <p className="panel-note">{allowed}</p>}
      <p className="panel-note">
        Heart is a share of the rider’s reserve, with beats a minute under it; intensity is time by that share. Load is the effort demanded
        times minutes.
      </p>
      {outside && (
        <p className="panel-note">
          {sayOutside(riders)} outside the 50 to 200 watts the oxygen equation was stated for; energy, heart, and demand are rougher there.
        </p>
      )}
      <p className="panel-note">
        Plans read lower than measured classes, whose riders go over the target most of the time: whole classes averaged{' '}
        {uptakePercent.join('–')} % of maximal oxygen uptake and {heartPercent.join('–')} % of maximal heart rate ({source}).
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
  const most = runsOut && runsOut.recoveries < RECOVERIES.length ? ` in ${runsOut.recoveries} of ${RECOVERIES.length} models` : ''
  const words = runsOut ? `runs out${most}` : 'lowest'
  const at = formatClock(reserve.runsOut?.at ?? reserve.minimum.at)
  return (
    <button
      type="button"
      className="panel-riders-place"
      onClick={() => onShow?.(block.id)}
      aria-label={`${words} for the ${rider.name} in ${nameOfItem(block)} at ${at}: show`}
    >
      {runsOut && <b>{words} </b>}
      {at}
      <span>{nameOfItem(block)}</span>
    </button>
  )
}

function heartWords({ response, band }: RiderReport, figure: 'highest' | 'mean', share: number) {
  const { share: shares, beats } = band.heart[figure]
  return (
    <>
      <About middle={percent(share)} range={rangeOf(shares, percent)} />
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
  return first === last ? first : `${first}–${last}`.replaceAll(' %', '')
}

/** "7:15 of 19:36 minutes of the new rider" for whoever is outside longest. */
function sayOutside(riders: readonly RiderReport[]): string {
  const most = riders.reduce((longest, one) => (one.energy.outsideSeconds > longest.energy.outsideSeconds ? one : longest))
  return `${formatClock(most.energy.outsideSeconds)} of ${formatClock(most.energy.pedalSeconds)} minutes of the ${most.rider.name} are`
}

/** What is left of the reserve; what the model holds below nothing is shown as nothing. */
const left = (share: number): string => percent(Math.max(0, share))

const whole = (value: number): string => formatNumber(value, 0)

/** Time by a rider's own thresholds, hardest first. */
const THRESHOLDS = [
  { label: 'over second threshold', key: 'over' },
  { label: 'between thresholds', key: 'between' },
  { label: 'under first threshold', key: 'under' },
] as const

/** Nothing where a threshold is not known. */
const thresholdWords = (seconds: Seconds | null | undefined): string =>
  seconds === null || seconds === undefined ? '' : clockOrNone(seconds)

const percent = (share: number): string => `${formatNumber(100 * share, 0)} %`

const clockOrNone = (seconds: number): string => (seconds < 0.5 ? '–' : formatClock(seconds))

/** An estimate is told in tens. */
const tens = (kcal: number): string => formatNumber(10 * Math.round(kcal / 10), 0)

/** "regular rider" → "regular" */
const shortName = (name: string): string => name.replace(/ rider$/, '')
