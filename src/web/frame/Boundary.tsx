import { Component, type ReactNode } from 'react'

interface BoundaryState {
  readonly error: Error | null
}

/** Holds a fault of ours to the station where it happened; what was typed is kept already. */
export class Boundary extends Component<{ readonly children: ReactNode }, BoundaryState> {
  override state: BoundaryState = { error: null }

  static getDerivedStateFromError(error: unknown): BoundaryState {
    return { error: error instanceof Error ? error : new Error(String(error)) }
  }

  override render(): ReactNode {
    const { error } = this.state
    if (error === null) return this.props.children
    return (
      <div className="refused" role="alert">
        <p>Something went wrong in this station, and it is a fault of the program: {error.message}</p>
        <p>
          What you typed is kept.{' '}
          <button type="button" onClick={() => this.setState({ error: null })}>
            Show it again
          </button>
        </p>
      </div>
    )
  }
}
