import { Component, type ErrorInfo, type ReactNode } from 'react'
import { Button } from '#ui/Button.tsx'
import { words } from '#words/words.ts'

interface Props {
  children: ReactNode
  /** Saves the ride as it stands as a file; false where there is none. */
  onDownload: () => boolean
  /** Loads the page anew; a part of it that did not arrive is asked for again by nothing less. */
  onReload: () => void
  /** Leaves the broken screen for the list of rides. */
  onLeave: () => void
}

interface State {
  error: Error | null
  /** What became of the download. */
  told: string
}

/** Stands between a screen that broke and the rest: says so, and hands out the ride before anything else is tried. */
export class ErrorBoundary extends Component<Props, State> {
  override state: State = { error: null, told: '' }

  static getDerivedStateFromError(error: unknown): Partial<State> {
    return { error: error instanceof Error ? error : new Error(String(error)) }
  }

  override componentDidCatch(error: unknown, info: ErrorInfo): void {
    console.error(error, info.componentStack)
  }

  override render(): ReactNode {
    const { error, told } = this.state
    if (error === null) return this.props.children
    return (
      <div className="app-broken" role="alert">
        <h1>{words.app.broken}</h1>
        <p>{words.app.brokenMeans}</p>
        <p className="app-broken-actions">
          <Button tone="solid" onClick={this.download}>
            {words.app.download}
          </Button>
          <Button onClick={this.props.onReload}>{words.app.reload}</Button>
          <Button onClick={this.leave}>{words.actions.place({ place: 'start' })}</Button>
        </p>
        <p role="status">{told}</p>
        <p className="app-broken-reason">{words.app.brokenReason({ reason: error.message || error.name })}</p>
      </div>
    )
  }

  private readonly download = () => {
    this.setState({
      told: this.props.onDownload() ? words.app.downloaded : words.app.nothingToDownload,
    })
  }

  private readonly leave = () => {
    this.props.onLeave()
    this.setState({ error: null, told: '' })
  }
}
