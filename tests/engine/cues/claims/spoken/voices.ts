import type { Spoken } from './sentences.ts'

/** In the voices of ten instructors, for the ride of the reference. At first sight the grammar found 0.80 of what is wrong in these, at a precision of 0.98. */
export const VOICES: Readonly<Record<string, readonly Spoken[]>> = {
  turns: [
    {
      block: 'p1',
      ride: 'reference',
      right: ['Three quarters to the right, my loves, and breathe', 'gonna go three quarters of a turn heavier here'],
      wrong: [
        'Okay team a full turn to the right',
        'Lemme see one and a half more on that wheel',
        'gonna go a turn and a quarter heavier here',
        'That gets us to two and a half turns all in',
      ],
    },
    {
      block: 'r1',
      ride: 'reference',
      right: ['One and a quarter to the left, let it go', 'We end up at half a turn, nice and loose'],
      wrong: ['Half a turn to the left, let it go', 'Two turns come back off, exhale', 'We end up at one turn, nice and loose'],
    },
    {
      block: 'p3',
      ride: 'reference',
      right: ['A turn and a half goes on, yes really', 'This one is a quarter turn more than the last one'],
      wrong: ['A turn and a quarter goes on, yes really', 'Turn that knob two turns right and hold on'],
    },
    {
      block: 'hill',
      ride: 'reference',
      right: ['Another half, and up outta the saddle'],
      wrong: ['A turn and a half goes on before you stand', 'You’re looking for three turns under you on this one'],
    },
  ],
  seconds: [
    {
      block: 'p2',
      ride: 'reference',
      right: ['Twenty seconds all told, that’s it, that’s the tweet', 'push for twenty seconds are you with me'],
      wrong: [
        'Forty-five seconds all told, that’s it',
        'push for a minute straight are you with me',
        'A full thirty on the clock, y’all, let’s work',
      ],
    },
    {
      block: 'r3',
      ride: 'reference',
      right: ['One whole minute to get it together', 'Recover for sixty seconds, you deserve it'],
      wrong: [
        'Two whole minutes to get it together',
        'Recover for thirty seconds, you deserve it',
        'You’ve got twenty seconds to shake it out',
      ],
    },
    {
      block: 'hill',
      ride: 'reference',
      right: ['A minute and a half up here, hips back, we good?'],
      wrong: ['Three minutes up here, hips back, we good?', 'Stand tall for forty-five seconds, okay?'],
    },
  ],
  counts: [
    {
      block: 'p2',
      ride: 'reference',
      moment: 'preview',
      lead: 16,
      right: ['Sixteen counts and we’re back in it', 'Two eights till we go again'],
      wrong: ['Forty-eight counts and we’re back in it', 'Six eights till we go again', 'Thirty-two beats until we push'],
    },
    {
      block: 'su',
      ride: 'reference',
      right: ['Sixty counts of surge, top to bottom'],
      wrong: ['Thirty-two counts of surge, top to bottom', 'Twenty-four beats, end to end, can you do that?'],
    },
    {
      block: 'hill',
      ride: 'reference',
      moment: 'form',
      lead: 32,
      right: ['Four eights left of this standing work'],
      wrong: ['Eight eights left of this standing work', 'Last eight up here'],
    },
  ],
  moves: [
    {
      block: 'jump',
      ride: 'reference',
      right: [
        'Every eight counts we switch, up or down',
        'Up for a count of eight, down for a count of eight',
        'Four jumps up, four jumps down, that’s the song',
      ],
      wrong: [
        'Every four counts we switch',
        'Up for a count of two, down for a count of two',
        'Six times up, six times down',
        'Up four and down four, got it?',
      ],
    },
  ],
  rounds: [
    {
      block: 'p2',
      ride: 'reference',
      right: ['Welcome to our second', 'One push behind us, two pushes in front of us', 'Here comes number two of three'],
      wrong: [
        'Welcome to our third',
        'Here comes number three of three',
        'And this is our last, so spend it all',
        'A couple more pushes after this one? No. Three more pushes after this',
      ],
    },
    {
      block: 'r2',
      ride: 'reference',
      right: ['One push still ahead of you, and it’s a good one', 'That’s two outta three'],
      wrong: [
        'Two pushes still to come',
        'A couple of pushes coming up',
        'Still got two more pushes up the road',
        'That’s one outta three',
      ],
    },
    {
      block: 'r3',
      ride: 'reference',
      right: ['Four surges coming your way'],
      wrong: ['Half a dozen surges coming your way', 'A pair of surges coming up next', 'three rounds is all I’m asking'],
    },
    {
      block: 'p3',
      ride: 'reference',
      right: ['Third time’s the charm, last push of the bunch', 'Same gear change as you’ve never felt before? No. Just our last push'],
      wrong: ['Second to last push of the bunch', 'Push number two y’all, here it comes'],
    },
  ],
  share: [
    {
      block: 'hill',
      ride: 'reference',
      moment: 'form',
      lead: 90,
      right: ['Half of this hill is in the books', 'You’re halfway up, how’s it feel?', 'Forty-five seconds in front of you still'],
      wrong: [
        'Three quarters of this hill is in the books',
        'A third of the climb is still in front of you',
        'We’ve been standing for a minute and a half',
        'Only ten seconds in front of us',
        'Quarter of the way, people',
      ],
    },
    {
      block: 'r1',
      ride: 'reference',
      moment: 'form',
      lead: 40,
      right: ['Twenty seconds till we’re back at it', 'Halfway through your rest'],
      wrong: ['A minute till we’re back at it', 'Fifty seconds and we’re on it again', 'Ninety percent done with this rest'],
    },
  ],
  clock: [
    {
      block: 'jump',
      ride: 'reference',
      right: ['We’ve been riding for seven and a half minutes', 'It’s almost six-oh-eight, who’s counting?'],
      wrong: [
        'We’ve been riding for twenty minutes',
        'It’s a quarter to seven, who’s counting?',
        'You’ve been at this three quarters of an hour',
      ],
    },
    {
      block: 'end',
      ride: 'reference',
      right: ['We’ve been at it eleven minutes', 'One minute and we’re done here'],
      wrong: ['We’ve been at it for a quarter of an hour and then some', 'Five more minutes and you’re free'],
    },
  ],
  effort: [
    {
      block: 'p3',
      ride: 'reference',
      right: ['This oughta feel like a nine', 'Nine outta ten, no talking', 'we’re at an honest nine here'],
      wrong: ['This oughta feel like a six', 'Six outta ten, no talking', 'we’re at a comfortable five here', 'Settle in at a four for me'],
    },
    {
      block: 'r2',
      ride: 'reference',
      right: ['Let it drop to a three'],
      wrong: ['Let it drop to a seven', 'It should be about a seven out of ten'],
    },
  ],
  cadence: [
    {
      block: 'hill',
      ride: 'reference',
      right: ['We’re right at sixty rpm, on that beat'],
      wrong: ['We’re right at eighty-five rpm, on that beat', 'Take it up to ninety-five y’all'],
    },
  ],
  noClaim: [
    {
      block: 'p2',
      ride: 'reference',
      right: [
        'Same as the first one, just meaner',
        'If you loved the last one, you’ll love this',
        'Who’s got one more in ’em?',
        'Can we make it three in a row, team?',
        'Two legs, one heart, zero excuses',
        'Feels like a Monday, rides like a Friday',
        'I’ve got a dozen donuts waiting at home',
        'Take a right at the light, we’re going downtown',
        'Half of you lied about your resistance',
        'I see a dozen smiles in here',
        'Your third eye is on the road',
        'Give me a five-star finish',
      ],
    },
    {
      block: 'hill',
      ride: 'reference',
      moment: 'form',
      lead: 60,
      right: [
        'You’ve been to a hundred of these, trust it',
        'Eyes ten feet in front of you',
        'The last song was a warm-up for this',
        'Harder than the last hill, and you’re stronger too',
        'Every two weeks I play this song',
        'It’s a nine-to-five world out there, not in here',
        'Two inches taller, come on',
        'Every four counts check your shoulders',
      ],
    },
  ],
}
