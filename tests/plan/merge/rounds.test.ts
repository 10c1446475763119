import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { contentRevision } from '#plan/document/contentRevision.ts'
import { LIMITS } from '#plan/document/schema.ts'
import { receivedVersion, sentVersion, type Version } from '#plan/kept/version.ts'
import { encodeLink } from '#plan/link/encodeLink.ts'
import { findBase, ownRideOf, sentOf } from '#plan/merge/findBase.ts'
import { joinLineages } from '#plan/merge/joinLineages.ts'
import { descendedFrom, editionOf, handedOver, mergedWith } from '#plan/merge/lineage.ts'
import { mergeRides } from '#plan/merge/mergeRides.ts'
import type { Ride } from '#plan/model.ts'
import { arbitraryRecipes, commandOf, type Recipe } from '#tests/support/arbitraryCommand.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { decodeLink } from '#tests/support/decodeLink.ts'
import { countedIds } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

/** Somebody with a ride and the versions of it that were kept: what the page and its storage do, without either. */
class Person {
  readonly name: string
  ride: Ride | null = null
  versions: Version[] = []
  private readonly newId: () => string
  private clock = 0

  constructor(name: string) {
    this.name = name
    this.newId = countedIds(name)
  }

  work(recipes: readonly Recipe[]): void {
    for (const recipe of recipes) this.ride = commandOf(recipe, this.ride!, this.newId).apply(this.ride!)
  }

  send(): string {
    const going = handedOver(this.ride!, sentOf(this.ride!.id, this.versions))
    this.keep(sentVersion(going))
    return encodeLink(going)
  }

  /** Keeps a copy at first; later takes the changes in, mine first in every conflict. Returns whether a common version was known. */
  receive(link: string, choose: 'mine' | 'theirs' = 'mine'): boolean {
    const decoded = decodeLink(link)
    if (!decoded.ok) throw new Error(told(decoded.problems[0]!.text))
    const theirs = decoded.ride
    if (!this.ride || ownRideOf(theirs, [this.ride.id], this.versions) === undefined) {
      this.ride = descendedFrom({ ...theirs, id: this.name, parent: { rideId: theirs.id, revision: 'whatever' } }, [editionOf(theirs)])
      this.keep(receivedVersion(theirs, this.ride.id))
      return true
    }
    const base = findBase(this.ride, theirs, this.versions)
    const ride = base.kind === 'theirs' ? theirs : base.kind === 'version' ? this.version(base.id) : null
    const first = mergeRides(ride, this.ride, theirs)
    const merged = mergeRides(ride, this.ride, theirs, Object.fromEntries(first.conflicts.map(({ id }) => [id, choose]))).merged
    this.ride = mergedWith(merged, theirs)
    this.keep(receivedVersion(theirs, this.ride.id))
    return base.kind !== 'unknown'
  }

  private version(id: string): Ride {
    return this.versions.find((version) => version.id === id)!.ride
  }

  private keep(version: Omit<Version, 'at'>): void {
    this.versions = [...this.versions.filter(({ id }) => id !== version.id), { ...version, at: ++this.clock }]
  }
}

const arbitraryRounds = fc.array(
  fc.record({ sender: arbitraryRecipes(), receiver: arbitraryRecipes(), choose: fc.constantFrom('mine' as const, 'theirs' as const) }),
  {
    minLength: 1,
    maxLength: 8,
  },
)

const start = arbitraryRide({ sections: 3, items: 3, parts: 2 }).map(
  (ride) => ({ ...ride, id: 'start', ancestors: undefined, parent: undefined }) as Ride,
)

describe('a ride passed back and forth', () => {
  it('always has a version in common, however often, and is the same for both in the end', () => {
    fc.assert(
      fc.property(start, arbitraryRounds, (ride, rounds) => {
        const [ann, ben] = [new Person('a'), new Person('b')]
        ann.ride = ride
        ben.receive(ann.send())
        let [sender, receiver] = [ben, ann]
        for (const round of rounds) {
          sender.work(round.sender)
          receiver.work(round.receiver)
          expect(receiver.receive(sender.send(), round.choose)).toBe(true)
          ;[sender, receiver] = [receiver, sender]
        }
        expect(receiver.receive(sender.send())).toBe(true)
        expect(contentRevision(receiver.ride!)).toBe(contentRevision(sender.ride!))
      }),
      { numRuns: 15 },
    )
  })

  it('keeps what each did alone although links cross on their way', () => {
    fc.assert(
      fc.property(start, arbitraryRecipes(), arbitraryRecipes(), (ride, anns, bens) => {
        const [ann, ben] = [new Person('a'), new Person('b')]
        ann.ride = ride
        ben.receive(ann.send())
        ann.work(anns)
        ben.work(bens)
        const [fromAnn, fromBen] = [ann.send(), ben.send()]
        expect(ann.receive(fromBen, 'mine')).toBe(true)
        expect(ben.receive(fromAnn, 'theirs')).toBe(true)
        expect(ben.receive(ann.send(), 'theirs')).toBe(true)
        expect(ann.receive(ben.send(), 'mine')).toBe(true)
        expect(contentRevision(ann.ride!)).toBe(contentRevision(ben.ride!))
      }),
      { numRuns: 15 },
    )
  })

  it('is found again among three people who each have it from the first', () => {
    fc.assert(
      fc.property(start, arbitraryRounds, (ride, rounds) => {
        const [ann, ...others] = [new Person('a'), new Person('b'), new Person('c')] as const
        ann.ride = ride
        const first = ann.send()
        for (const other of others) other.receive(first)
        for (const [turn, round] of rounds.entries()) {
          const other = others[turn % 2]!
          other.work(round.sender)
          ann.work(round.receiver)
          expect(ann.receive(other.send(), round.choose)).toBe(true)
          if (turn % 3 === 2) expect(others[(turn + 1) % 2]!.receive(ann.send(), round.choose)).toBe(true)
        }
        const last = ann.send()
        for (const other of others) expect(other.receive(last, 'theirs')).toBe(true)
      }),
      { numRuns: 15 },
    )
  })

  it('sent many times without an answer is still known by what was last had of it', () => {
    const [ann, ben] = [new Person('a'), new Person('b')]
    ann.ride = { ...fc.sample(start, { seed: 7, numRuns: 1 })[0]!, title: '0' }
    ben.receive(ann.send())
    let link = ''
    for (let turn = 1; turn <= 2 * LIMITS.ancestors; turn++) {
      ann.ride = { ...ann.ride, title: String(turn) }
      link = ann.send()
    }
    ben.ride = { ...ben.ride!, aim: 'legs' }
    expect(ben.receive(link)).toBe(true)
    expect(ben.ride).toMatchObject({ title: String(2 * LIMITS.ancestors), aim: 'legs' })
  })

  it('of strangers is known to have nothing in common', () => {
    const [one, other] = fc.sample(start, { seed: 3, numRuns: 2 }) as [Ride, Ride]
    expect(findBase({ ...one, id: 'one' }, { ...other, id: 'other' }, [])).toEqual({ kind: 'unknown' })
    expect(ownRideOf({ ...other, id: 'other' }, ['one'], [])).toBeUndefined()
  })
})

describe('two lineages as one', () => {
  it('keep the order of both where they agree, and hold everything once', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.nat(30), { maxLength: 12 }),
        fc.array(fc.constantFrom('a', 'b', 'both'), { minLength: 12, maxLength: 12 }),
        (all, where) => {
          const words = all.map(String)
          const a = words.filter((_, i) => where[i] !== 'b')
          const b = words.filter((_, i) => where[i] !== 'a')
          const joined = joinLineages(a, b)
          expect(joined.toSorted()).toEqual(words.toSorted())
          expect(joined.filter((word) => a.includes(word))).toEqual(a)
          expect(joined.filter((word) => b.includes(word))).toEqual(b)
        },
      ),
    )
  })
})
