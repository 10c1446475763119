import type { LoadWords, OnlyWhere, Voice } from '#engine/roughIn/words/voice.ts'

/**
 * Which words go with which effort, 0–10. The order and the bands are the trade's (talk test and feel; common practice);
 * what is said of hands, shoulders, or feet is no load and is left out first.
 */
const LOADS: readonly LoadWords[] = [
  { name: 'next to nothing', words: /\b(?:next to|almost|just above|barely) (?:nothing|any)\b|\bno work\b/i, least: 0, most: 3 },
  { name: 'light', words: /\b(?:light|lightly|easy|easily|gentle|gently|loose|effortless)\b/i, least: 0, most: 4.5 },
  { name: 'chatty', words: /\b(?:chat|chatty|conversation|full sentences|whole sentences|sing along)\b/i, least: 0, most: 4.5 },
  {
    name: 'recovering',
    words: /\b(?:recover|recovers|recovery|rest|catch your breath|get your breath back|breath comes? back)\b/i,
    least: 0,
    most: 5,
  },
  { name: 'comfortable', words: /\b(?:comfortabl[ey]|cruis(?:e|ing))\b/i, least: 0, most: 5.5 },
  { name: 'firm', words: /\b(?:firm|solid|some grip|pushes back|push back|short sentences|honest work)\b/i, least: 4.5, most: 7.5 },
  { name: 'heavy', words: /\b(?:heavy|thick|steep|grind|grinding|big gear|weight of it)\b/i, least: 6, most: 10, weighted: true },
  {
    name: 'strong',
    words: /\b(?:strong|powerful|hard work|digging|dig in|few words|real climb|real hill|real work|breath loud)\b/i,
    least: 6,
    most: 10,
  },
  { name: 'hard', words: /\b(?:hard|burn|burning|burns|breathing hard|big effort)\b/i, least: 7, most: 10 },
  {
    name: 'hardest',
    words:
      /\b(?:one word|word at a time|breathless|out of breath|everything|all you have|all you've got|nothing left|hang on|hanging on)\b/i,
    least: 8,
    most: 10,
  },
  { name: 'heavier', words: /\b(?:heavier|steeper|tips up)\b/i, least: 0, most: 10, knob: 'up' },
  { name: 'lighter', words: /\b(?:lighter|levels? (?:off|out)|flattens? out|over the top)\b/i, least: 0, most: 10, knob: 'down' },
]

/** "light hands", "loose shoulders", "landing soft", "light on the bars", "strong legs" is how a body is held. */
const OF_THE_BODY =
  /\b(?:light|easy|soft|loose|gentle|heavy|strong|firm)\s+(?:(?:and|,)\s+\p{L}+\s+)?(?:(?:in|on) the\s+)?(?:\p{L}+\s+)?(?:hands?|grip|bars?|elbows?|shoulders?|arms?|face|jaw|neck|feet|foot|knees?|core|upper body)\b|\b(?:hands?|grip|elbows?|shoulders?|arms?|face|jaw|neck|feet|foot|knees?|core|upper body)\s+(?:(?:are|stay|is|stays)\s+)?(?:light|easy|soft|loose|gentle|strong|firm)\b|\b(?:up|land|landing|touch)\s+(?:light|lightly|easy|gently)\b/giu

/** Words that are true only somewhere, and where that is. */
const ONLY: readonly OnlyWhere[] = [
  // Feet that keep their own pace have no beat, and nobody counts with them.
  [
    /\b(?:beat|downbeat|rhythm|ride the count|\p{L}+ counts|eights? (?:left|more)|last (?:\p{L}+ )?eights?|last sixteen|sixteen more)\b/iu,
    ({ onBeat }) => onBeat,
  ],
  // What builds is neither even nor held at one pace.
  [/\b(?:steady|even|one pace|same pressure|hold it|hold one|hold steady)\b/i, ({ block: { effort } }) => effort.to <= effort.from],
  [/\b(?:wake|warm(?:s|ing)?|gets the legs ready)\b/i, ({ role }) => role === 'warmUp'],
  [
    /\b(?:here comes the hill|starts to rise|the road goes up|here's the hill|rise in the road)\b/i,
    ({ before }) => before?.block.terrain !== 'hill',
  ],
  [/\b(?:all the way home|bring(?:s)? it home|last part of class|last song)\b/i, ({ isLast }) => isLast],
  [/\b(?:saddle each time|on the saddle|in the saddle)\b/i, ({ block }) => block.posture === 'seated' || block.move !== undefined],
]

export const tells: Voice['tells'] = {
  loads: LOADS,
  body: OF_THE_BODY,
  form: /\b(?:hips?|hands?|shoulders?|elbows?|knees?|land|chest)\b/i,
  length: /\b(?:seconds?|minutes?|counts)\b/,
  numbers: /seconds|minute|out of ten/,
  only: ONLY,
}
