import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'

/** Says that another window leads this class, and takes it over by a press. */
export function FollowBar({ onTakeOver }: { onTakeOver: () => void }) {
  const follows = useApp((state) => state.ledElsewhere)
  if (!follows) return null
  return (
    <div className="lead-follows" role="status">
      <span>Another window leads this class. This one follows it.</span>
      <Button tone="solid" onClick={onTakeOver}>
        lead from here
      </Button>
    </div>
  )
}
