import { type RefObject, useEffect, useRef } from 'react'

interface LineComingProps {
  label: string
  /** What has been typed so far. */
  begun: RefObject<string>
}

/** Stands where a line comes while its code is fetched, so that what is typed at once goes into it and is not taken for keys of the stage. */
export function LineComing({ label, begun }: LineComingProps) {
  const field = useRef<HTMLInputElement>(null)
  useEffect(() => field.current?.focus(), [])
  return (
    <div className="line-coming">
      <input
        ref={field}
        aria-label={label}
        autoComplete="off"
        onChange={(event) => {
          begun.current = event.target.value
        }}
      />
    </div>
  )
}
