/**
 * Words and turns of phrase that cues, labels and options are made of: the trade's own and
 * plain English, no name, no sentence of anyone's. Part of link format 1, so never to be
 * changed, not even in their order, or old links would read wrong.
 */

const words = (list: string) => list.trim().split(/\s+/)
const phrases = (list: string) =>
  list
    .trim()
    .split('|')
    .map((phrase) => phrase.trim().replace(/\s+/g, ' '))

/** Those likely to be met most often; each takes one byte. At most 156. */
export const COMMON: readonly string[] = [
  ...words(`
    on off turn half quarter one two three four five six eight ten fifteen sixteen twenty thirty forty a and the to it in of at for is
    with from your you over sit up down rise seated standing climb hill flat run jump jumps push surge step tempo ease easy recover
    breathe drink hold keep stay go again last first next left right leg legs feet foot lead hands heavy light smooth steady strong
    quick slow soft long tall same more less add take seconds minute fours eights sixteens counts beat option base gear wheel turns song
    songs now then all no not this that out back home finish build settle set set-up flush stretch shoulders hips lean roll but can own
    loose hills pushes halfway leads minutes swap shoulder road
  `),
  ...phrases(`
    quarter turn|half turn|three quarters|one turn|one and a quarter|one and a half|one and three quarters|two turns|stay seated|and up|
    and rise|left foot|right foot|over the top|on the one|to the beat|to the top|seated climb|standing climb|
    standing run|half a turn|one minute
  `),
]

/** The others; each takes two bytes. At most 512. */
export const RARER: readonly string[] = [
  ...words(`
    travel-back travel travels side leans press presses crunch pulse freeze corner combo pattern layer add-on sprint jog hover hovering
    saddle bar bars handlebar pedal pedals stroke strokes circles knob brake resistance effort cadence flywheel tighten loosen load
    heavier lighter harder easier faster slower stronger quicker higher lower smoother softer longer shorter recovery water rest sip
    towel shake breath inhale exhale relax release open drop lift drive pull reach bend neck chest core belly arms elbows wrists palms
    fingers grip knees ankles heels toes hip thighs calves hamstrings glutes quads spine head chin jaw face eyes rolling rollers false
    summit crest ridge valley downhill uphill mountain path lap laps gate line bridge river sea wind sun rain sky interval intervals
    ladder pyramid attack breakaway chase race round rounds repeat repeats part double time off-beat phrase chorus verse intro outro
    music rhythm ride rider riders room class bike team friends everyone together alone our my we me us they will would should could do
    does did be are was have has had need want feel find look let come get give make bring leave put stop stopped start end begin work
    working move moves moving ready good great well done nice here there where when while until before after between under above into
    through around across behind ahead still only just almost nearly about every each both other another any some none never always once
    twice new old hard big small short fast high low deep wide close centre bright clean clear warm cool dry full empty seven nine
    eleven twelve thirteen fourteen eighteen twenty-two twenty-four twenty-five thirty-five forty-five fifty sixty ninety hundred second
    third fourth count counting count-in twos threes posture position form control comfortable talk chat sing listen smile cue switch
    change changes warm-up cool-down flats climbs climbing surges runs sprints steps stretches easing pace speed power heart zone like
    as so or by than too very much many most least best max all-out moderate even level tonight today morning evening night day week
    moment think trust hear see pick catch radio mix remix edit live version extended club featuring ends land lands weight balance
    quiet loud ones
  `),
  ...phrases(`
    half a minute|two minutes|twenty seconds|forty seconds|a quarter|in the saddle|out of the saddle|side lean|
    shoulder roll|shoulder rolls|rolling hills|on the beat|off the beat|half time|double time|up and down|if you have it|at least|
    if you need|no resistance|each side|of each|to finish|and down|and hold|and breathe|a little|one more|two more|two left|three left|
    four left|let it go|hold it|keep it|stay with me|hands wide|hands centre|hands at the ends|count of four|count of eight|lower back|
    last eight|from the top|with the music
  `),
]
