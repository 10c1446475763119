/** Where rules and figures come from. */
export const sources = {
  commonPractice: 'Common practice, no source.',
  arithmetic: 'Arithmetic from the plan.',
  resistanceNeeded:
    'Public position statement of an instructor-training body: resistance before standing and sprinting. The amount is common practice.',
  neverNoResistance: 'Public position statement of an instructor-training body: low resistance is never no resistance.',
  resistanceFirst: 'Public position statement of an instructor-training body; common practice.',
  cadenceBounds: 'Public position statement of an instructor-training body; studios differ.',
  groupTeaching: 'Group-exercise teaching; common practice.',
  ridersAsk: 'Common practice: how long, how many, and how hard is what riders ask.',
  warmUp: 'Common practice; ACSM’s Complete Guide to Fitness & Health: a warm-up of at least 5–10 minutes.',
  workToRest:
    'NSCA, Essentials of Strength Training and Conditioning, 4th ed., work-to-rest table (times and ratios seen in a public copy).',
  noise: 'NIOSH 98-126 (85 dB for 8 hours, half the time for every 3 dB more); level: Beach & Nie 2014.',
  firstClass: 'Brogan and others 2017, Am J Med 130:484–487: muscle breakdown after a first class.',
  criticalPower:
    'Critical-power model with three published recoveries (Skiba et al., Med Sci Sports Exerc 2012 and Eur J Appl Physiol 2015; Ferguson et al., J Appl Physiol 2010). An estimate for a modeled rider.',
  avoidedMoves: 'This ride’s own list of moves to avoid.',
}
