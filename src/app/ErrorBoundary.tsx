import { Component, type ErrorInfo, type ReactNode } from 'react'
import { Button } from '#ui/Button.tsx'

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
        <h1>This screen broke.</h1>
        <p>
          The ride itself is not lost: it is still in memory, and the last saved state is on this machine. Keep a copy first, then try
          again.
        </p>
        <p className="app-broken-actions">
          <Button tone="solid" onClick={this.download}>
            download the ride
          </Button>
          <Button onClick={this.props.onReload}>load the page again</Button>
          <Button onClick={this.leave}>all rides</Button>
        </p>
        <p role="status">{told}</p>
        <p className="app-broken-reason">What the program said: {error.message || error.name}</p>
      </div>
    )
  }

  private readonly download = () => {
    this.setState({
      told: this.props.onDownload() ? 'The file is in your downloads.' : 'No ride was open, so there is nothing to download.',
    })
  }

  private readonly leave = () => {
    this.props.onLeave()
    this.setState({ error: null, told: '' })
  }
}
