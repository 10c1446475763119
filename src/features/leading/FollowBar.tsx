import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { words } from '#words/words.ts'

/** Says that another window leads this class, and takes it over by a press. */
export function FollowBar({ onTakeOver }: { onTakeOver: () => void }) {
  const follows = useApp((state) => state.ledElsewhere)
  if (!follows) return null
  return (
    <div className="lead-follows" role="status">
      <span>{words.leading.follows}</span>
      <Button tone="solid" onClick={onTakeOver}>
        {words.leading.teachHere}
      </Button>
    </div>
  )
}
