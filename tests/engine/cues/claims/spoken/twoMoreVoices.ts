import type { Spoken } from './sentences.ts'

/** Two more strangers’ sentences for the ride of the reference. At first sight the grammar found 0.87 of what is wrong in these, at a precision of 1.00. */
export const BRISK: Readonly<Record<string, readonly Spoken[]>> = {
  turns: [
    {
      block: 'p1',
      ride: 'reference',
      right: [
        'Gimme three quarters, right now, go.',
        'Load it, three-quarters of a turn.',
        'Half a turn, plus another quarter. Go.',
        'Knob goes right, 3/4, no haggling.',
      ],
      wrong: [
        'Full turn on, don’t be shy.',
        'Half a turn. Quick hands, people.',
        'Turn and a quarter, come on, pay up.',
        'One and a half on, let’s go.',
        '1/4 turn up and hit it.',
      ],
    },
    {
      block: 'r1',
      ride: 'reference',
      right: ['Back it off a turn and a quarter.', 'Lose one and a quarter and breathe.', '1 1/4 off. Shake it out.'],
      wrong: ['Give back a half turn, breathe.', 'Two full turns off, shake it out.', 'Back it off three quarters.'],
    },
    {
      block: 'hill',
      ride: 'reference',
      right: ['Half turn on, up and out.', 'Add a half and get tall.'],
      wrong: ['Three quarters on, out of the saddle.', 'Full turn more and up we go.'],
    },
    { block: 'hold', ride: 'reference', wrong: ['Take a half off and sit.'] },
    {
      block: 'range',
      ride: 'reference',
      right: ['Build it to five turns, six if you’re hungry.'],
      wrong: ['Take it up to nine turns, heavy.'],
    },
    {
      block: 'su',
      ride: 'reference',
      right: ['Up to one and three quarters, punch it.'],
      wrong: ['Up to two and a quarter, go get it.', 'Back up to three, surge.'],
    },
    { block: 'ea', ride: 'reference', right: ['Down to three quarters, easy, easy.'], wrong: ['Ease it down to one and a half.'] },
  ],
  seconds: [
    {
      block: 'p1',
      ride: 'reference',
      right: [
        'Twenty seconds, express train, no stops.',
        'You owe me twenty seconds.',
        '20 secs, leave it all here.',
        'Twenty hard, forty easy.',
        'Under half a minute. Anybody can do that.',
      ],
      wrong: [
        'Forty seconds, let’s get loud.',
        'A full minute, dig.',
        '10 seconds, blink and it’s over.',
        'Thirty on the clock, go.',
        'Thirty hard, thirty easy.',
      ],
    },
    {
      block: 'p3',
      ride: 'reference',
      right: ['Thirty seconds, biggest of the night.', 'Half a minute. Empty the tank.'],
      wrong: ['Twenty seconds, same as before.'],
    },
    { block: 'r1', ride: 'reference', wrong: ['You got a full minute, breathe.'] },
    { block: 'r3', ride: 'reference', right: ['One minute to breathe. Take all of it.'], wrong: ['Thirty seconds, grab your water.'] },
    {
      block: 'hill',
      ride: 'reference',
      right: ['Ninety seconds on your feet.', 'Minute and a half, straight uptown.'],
      wrong: ['Two minutes standing, own it.', '60 seconds on your feet.'],
    },
    { block: 'climb', ride: 'reference', right: ['Sixty seconds of climb, settle in.'], wrong: ['Two minutes to warm those legs.'] },
    { block: 'hold', ride: 'reference', right: ['Sit and stay, forty-five seconds.'], wrong: ['Half a minute in the saddle, hold it.'] },
  ],
  counts: [
    { block: 'p1', ride: 'reference', right: ['Forty counts, make ’em matter.'], wrong: ['Sixty-four counts, all business.'] },
    {
      block: 'jump',
      ride: 'reference',
      right: ['Eight eights of jumps, stay sharp.', 'Sixteen bars of jumps, look alive.'],
      wrong: ['Four eights of jumps, that’s it.'],
    },
    { block: 'p3', ride: 'reference', wrong: ['Forty counts, all gas.'] },
  ],
  moves: [
    {
      block: 'jump',
      ride: 'reference',
      right: ['Eight up, eight down, snap to it.', 'Jumps every eight, stay with me.', 'Switch it every 8 counts.'],
      wrong: ['Up four counts, down four counts.', 'Jumps on twos, fast feet.', 'Switch it every sixteen.', 'Two-count jumps, pop, pop.'],
    },
  ],
  rounds: [
    { block: 'su', ride: 'reference', wrong: ['Six rounds, here we go.'] },
    {
      block: 'r3',
      ride: 'reference',
      right: ['Four surges up next, sip now.'],
      wrong: ['Three surges coming, drink something.', 'Five rounds of surges on deck.'],
    },
    { block: 'climb', ride: 'reference', right: ['Three pushes after this, pace yourself.'] },
    {
      block: 'p1',
      ride: 'reference',
      right: ['Push one of three, let’s go.'],
      wrong: ['First push of four, let’s work.', 'Only one more after this.'],
    },
    {
      block: 'p2',
      ride: 'reference',
      right: ['Second of three, no slowing down.', 'One left after this, let’s move.'],
      wrong: ['Last push, spend it all.', 'Push one, here we go.', 'Still two more behind this one.'],
    },
    { block: 'r2', ride: 'reference', right: ['One push left, get your air.'] },
    { block: 'r1', ride: 'reference', right: ['One down, two to go.'], wrong: ['Two down, one to go.', 'Just one more push, folks.'] },
    { block: 'p3', ride: 'reference', right: ['Number three, last push, let’s go.'], wrong: ['Push two, go, go, go.'] },
  ],
  share: [
    {
      block: 'hill',
      ride: 'reference',
      moment: 'form',
      lead: 20,
      right: ['Ten seconds, don’t you sit.', 'Last ten, finish it standing.'],
      wrong: ['Thirty seconds left, stay up.', 'A third of the way up.'],
    },
    {
      block: 'hill',
      ride: 'reference',
      moment: 'form',
      lead: 90,
      right: ['Halfway up, keep climbing.'],
      wrong: ['Ten seconds, finish strong.'],
    },
    { block: 'hill', ride: 'reference', moment: 'form', lead: 120, right: ['One third done, stay with me.'] },
    { block: 'hill', ride: 'reference', moment: 'form', lead: 30, wrong: ['That’s half the hill, keep going.'] },
  ],
  clock: [
    { block: 'p3', ride: 'reference', wrong: ['Five minutes in and you look great.'] },
    { block: 'hill', ride: 'reference', right: ['It’s 6:08, and we’re going uphill.'] },
    { block: 'jump', ride: 'reference', wrong: ['Quarter past six, let’s jump.'] },
    { block: 'end', ride: 'reference', right: ['Eleven minutes in the bank, nice work.'] },
  ],
  effort: [
    { block: 'p1', ride: 'reference', right: ['Give me an eight out of ten.'], wrong: ['This one’s a six out of ten.'] },
    { block: 'p3', ride: 'reference', wrong: ['Call it a five out of ten.'] },
  ],
  cadence: [{ block: 'p1', ride: 'reference', right: ['Legs at sixty rpm, lock it in.'], wrong: ['Push it to 85 rpm.'] }],
  'no claim': [
    {
      block: 'p1',
      ride: 'reference',
      right: [
        'Five, six, seven, eight, and go.',
        'I want 110 percent, no discounts.',
        'Two words: no excuses.',
        'Row three, I see that face.',
        'Told you a thousand times: shoulders down.',
        'One team, one beat.',
        'Somebody in the first row is smiling.',
        'Zero traffic, wide-open road.',
        'No second-guessing, just ride.',
        'Everyone, elbows soft.',
        'Weight back, chin up.',
      ],
    },
    {
      block: 'hill',
      ride: 'reference',
      right: ['Fifth Avenue’s all yours.', 'Penthouse view up here, fortieth floor.', 'Nobody climbs alone in here.'],
    },
    { block: 'jump', ride: 'reference', right: ['Land soft, somebody’s asleep one floor down.'] },
    { block: 'hold', ride: 'reference', right: ['Breathe in four, breathe out four.', 'Nose at twelve o’clock, shoulders down.'] },
    { block: 'climb', ride: 'reference', right: ['Thanks for beating the 6 train here.'] },
    { block: 'su', ride: 'reference', right: ['Wait for the chorus, then fly.'] },
  ],
}

/** And 0.89 in these, at a precision of 0.98. */
export const WARM: Readonly<Record<string, readonly Spoken[]>> = {
  turns: [
    {
      block: 'p1',
      ride: 'reference',
      right: [
        'Y’all add three quarters of a turn for me.',
        'A little more sugar, three quarters on top.',
        'Three quarter-turns to the right, darlin’.',
        'Turn it up ¾, sweet and smooth.',
      ],
      wrong: [
        'Honey, put a whole turn on there.',
        'Just a half turn, nice and gentle.',
        'Y’all give me one and a quarter more.',
        'Two turns on, don’t you fuss.',
        'Scoot it up one quarter, sugar.',
      ],
    },
    {
      block: 'r1',
      ride: 'reference',
      right: ['Come on down a turn and a quarter.', 'Y’all take off 1.25 turns.', 'Let one and a quarter go, honey.'],
      wrong: ['Let half a turn go, honey.', 'Ease off one whole turn, y’all.', 'Take two and a quarter off and rest.'],
    },
    {
      block: 'hill',
      ride: 'reference',
      right: ['Half a turn more, then rise on up.', 'Put a ½ on and stand, y’all.'],
      wrong: ['Quarter turn more, then rise on up.', 'One and a half more and up we go.'],
    },
    { block: 'hold', ride: 'reference', wrong: ['Add a quarter and have a seat.'] },
    { block: 'range', ride: 'reference', right: ['Five to six turns, thick as molasses.'], wrong: ['Climb on up to ten turns, y’all.'] },
    {
      block: 'su',
      ride: 'reference',
      right: ['Up to 1¾, y’all, let’s fly.'],
      wrong: ['Bring it up to two and three quarters.', 'Bring it right up to four turns.'],
    },
    { block: 'ea', ride: 'reference', right: ['Ease on down to three quarters, sweetie.'], wrong: ['Ease on down to one and a quarter.'] },
  ],
  seconds: [
    {
      block: 'p1',
      ride: 'reference',
      right: [
        'Twenty seconds, y’all, with your whole heart.',
        'Stay with me for twenty.',
        'Just twenty little seconds, sugar.',
        '20 seconds of sunshine, give it all.',
        'Not even half a minute, y’all got this.',
      ],
      wrong: [
        'Forty-five seconds, honey, dig on in.',
        'Just ten little seconds, sugar.',
        'One minute, y’all, steady as she goes.',
        'Half a minute, push with me.',
        'Stay with me for sixty.',
      ],
    },
    {
      block: 'p3',
      ride: 'reference',
      right: ['Ten seconds longer than last time, y’all.', 'Thirty seconds, bring it on home.'],
      wrong: ['Fifteen seconds, then you can rest.'],
    },
    { block: 'r1', ride: 'reference', wrong: ['A minute and a half to rest up, y’all.'] },
    {
      block: 'r3',
      ride: 'reference',
      right: ['Sixty seconds, sip some water, love.'],
      wrong: ['Two minutes to catch your breath, honey.'],
    },
    {
      block: 'hill',
      ride: 'reference',
      right: ['A minute and a half, y’all, rise and shine.', 'More than a minute up here, so settle in.'],
      wrong: ['Forty-five seconds standing, honey.', 'Three minutes up, pretty as a picture.'],
    },
    {
      block: 'climb',
      ride: 'reference',
      right: ['One minute of climbing, nice and slow.'],
      wrong: ['Thirty seconds to wake those legs up.'],
    },
    { block: 'hold', ride: 'reference', right: ['Have a seat, 45 seconds.'], wrong: ['Have a seat for twenty seconds.'] },
    { block: 'end', ride: 'reference', right: ['One last minute, y’all, easy as Sunday.'] },
  ],
  counts: [
    { block: 'p1', ride: 'reference', right: ['Ten bars, y’all, ride the music.'], wrong: ['Ten eights, y’all, ride the music.'] },
    {
      block: 'jump',
      ride: 'reference',
      right: ['Eight sets of eight, y’all, jump pretty.'],
      wrong: ['Six eights of jumps, then rest.', 'Thirty-two counts, light and bouncy.'],
    },
    { block: 'p3', ride: 'reference', right: ['Sixty counts, straight from the heart.'] },
  ],
  moves: [
    {
      block: 'jump',
      ride: 'reference',
      right: ['Jump on the eights, soft as a biscuit.', 'Stand for eight, sit for eight, y’all.', 'Every 8 counts we swap, honey.'],
      wrong: [
        'Stand for sixteen, sit for sixteen.',
        'Every four counts we swap, honey.',
        'Jump on the twos, quick as a bunny.',
        'Up for two, down for two, y’all.',
      ],
    },
  ],
  rounds: [
    { block: 'su', ride: 'reference', right: ['Four times through, y’all, all together.'] },
    {
      block: 'r3',
      ride: 'reference',
      right: ['We got four surges coming, sip up.'],
      wrong: ['Two surges coming, y’all, get ready.', 'Fixin’ to do six rounds of surges.'],
    },
    { block: 'climb', ride: 'reference', wrong: ['Five pushes waiting on us, y’all.'] },
    {
      block: 'p1',
      ride: 'reference',
      right: ['Here’s your first of three, honey.'],
      wrong: ['First of five, pace yourself, sugar.', 'Three more behind this one, y’all.'],
    },
    {
      block: 'p2',
      ride: 'reference',
      right: ['Here’s number two, y’all.', 'After this, just one more, I promise.'],
      wrong: ['Number three, y’all, here it comes.', 'This is the last push, I promise.', 'After this, three more, bless you.'],
    },
    { block: 'r2', ride: 'reference', right: ['Only one push left, sweet pea.'] },
    {
      block: 'r1',
      ride: 'reference',
      right: ['Two more pushes, y’all, rest up.'],
      wrong: ['Four more pushes, y’all, rest up.', 'That’s two pushes done, darlin’.'],
    },
    { block: 'p3', ride: 'reference', right: ['Third push, the last one, y’all.'], wrong: ['Two more pushes after this, sweet pea.'] },
  ],
  share: [
    {
      block: 'hill',
      ride: 'reference',
      moment: 'form',
      lead: 20,
      right: ['Ten seconds till we sit, sugar.', 'Twenty counts left, stay tall.'],
      wrong: ['Y’all are halfway up.'],
    },
    {
      block: 'hill',
      ride: 'reference',
      moment: 'form',
      lead: 30,
      right: ['Last fifteen seconds, y’all.'],
      wrong: ['Thirty seconds left, y’all, keep smiling.'],
    },
    {
      block: 'hill',
      ride: 'reference',
      moment: 'form',
      lead: 90,
      right: ['Forty-five seconds left, y’all.'],
      wrong: ['Ten more seconds, hang on, honey.'],
    },
    { block: 'hill', ride: 'reference', moment: 'form', lead: 120, wrong: ['Two thirds done, honey.'] },
  ],
  clock: [
    { block: 'p3', ride: 'reference', right: ['Three minutes in, y’all look wonderful.'] },
    { block: 'hill', ride: 'reference', wrong: ['It’s six thirty, y’all, time to climb.'] },
    { block: 'jump', ride: 'reference', right: ['Seven and a half minutes in, y’all.'] },
    { block: 'end', ride: 'reference', wrong: ['Twenty minutes done, proud of y’all.'] },
  ],
  effort: [
    { block: 'p1', ride: 'reference', wrong: ['Keep it a four out of ten, honey.', 'Six out of ten’s plenty, y’all.'] },
    { block: 'p3', ride: 'reference', right: ['Nine out of ten, y’all, shine.'] },
  ],
  cadence: [
    { block: 'p1', ride: 'reference', right: ['Pedal at sixty rpm, sweet and steady.'], wrong: ['Hundred rpm, y’all, hurry on up.'] },
  ],
  'no claim': [
    {
      block: 'p1',
      ride: 'reference',
      right: [
        'Hundred and ten percent, bless your heart.',
        'One big ol’ breath, here we go.',
        'Bike nine, honey, I see that smile.',
        'Ride like you’re nineteen again.',
        'My grandmama’s eighty and she’d love this.',
        'That’s worth two biscuits and gravy.',
        'Y’all are one in a million.',
        'Hit the beat on one, honey.',
        'Second wind’s on its way, y’all.',
        'No one’s fixin’ to quit on me.',
        'Someone’s gettin’ stronger, y’all.',
      ],
    },
    {
      block: 'hill',
      ride: 'reference',
      right: ['Drop those shoulders an inch or two.', 'You’re a thousand miles from where you started.', 'Add a little joy to it.'],
    },
    { block: 'jump', ride: 'reference', right: ['Light as a feather, ten happy toes.'] },
    { block: 'hold', ride: 'reference', right: ['Saturday at nine, y’all bring a friend.', 'Take two slow breaths, darlin’.'] },
    { block: 'climb', ride: 'reference', right: ['First time here? So glad you came.'] },
    { block: 'su', ride: 'reference', right: ['Turn to your neighbor and grin.'] },
  ],
}

/** Kinds of sentences that were true of a class somebody planned, and were told to be wrong. */
export const ENTERED: Readonly<Record<string, readonly Spoken[]>> = {
  stretch: [
    {
      block: 'end',
      ride: 'reference',
      moment: 'form',
      lead: 60,
      right: ['Hips, hamstrings, calves. Fifteen seconds a side.', 'Quads and calves, twenty seconds a side.'],
    },
    {
      block: 'end',
      ride: 'reference',
      right: [
        'Hold each stretch twenty seconds.',
        'Twenty seconds each leg.',
        'Four stretches, twenty seconds each.',
        'Thirty-second stretch, right leg first.',
      ],
    },
  ],
  left: [
    {
      block: 'hill',
      ride: 'reference',
      moment: 'form',
      lead: 40,
      right: ['Twenty seconds to the saddle.'],
      wrong: ['Fifty seconds to the saddle.'],
    },
    { block: 'hill', ride: 'reference', moment: 'form', lead: 10, right: ['Last five.'] },
  ],
  moves: [
    { block: 'jump', ride: 'reference', moment: 'form', lead: 32, right: ['Two jumps done, two to go.', 'Four jumps done, four to go.'] },
  ],
  part: [
    {
      block: 'r3',
      ride: 'reference',
      right: ['Thirty seconds with eyes closed.', 'Take a ten-second drink.', 'Count four beats in and four beats out.'],
    },
    { block: 'r3', ride: 'reference', moment: 'form', lead: 60, right: ['One hand down, grab your water, ten seconds.'] },
  ],
  difference: [
    { block: 'p3', ride: 'reference', right: ['Third push, ten seconds longer than the last one.', 'Ten seconds longer than the first.'] },
  ],
  class: [{ block: 'end', ride: 'reference', moment: 'form', lead: 20, right: ['Thank you for spending forty minutes with me.'] }],
  about: [
    { block: 'hold', ride: 'reference', right: ['Forty-five seconds here.'] },
    { block: 'r3', ride: 'reference', right: ['A minute of easy legs.'], wrong: ['Two minutes of easy legs.'] },
  ],
}
