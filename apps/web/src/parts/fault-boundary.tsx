import { Component, type ReactNode } from "react";
import "./states.css";

interface State {
  readonly fault: Error | null;
}

/** Catches a fault of the app itself, so that one screen's bug leaves the rest standing. */
export class FaultBoundary extends Component<{ readonly children: ReactNode }, State> {
  override state: State = { fault: null };

  static getDerivedStateFromError(error: unknown): State {
    return { fault: error instanceof Error ? error : new Error(String(error)) };
  }

  override render(): ReactNode {
    const { fault } = this.state;
    if (fault === null) return this.props.children;
    return (
      <main id="main" style={{ padding: "1.5rem" }}>
        <section className="state state-broken" role="alert">
          <h1>This page broke</h1>
          <p>Nothing that was saved is lost. The fault: {fault.message}</p>
          <div className="state-actions">
            <a className="button button-main" href={location.href}>
              Load the page again
            </a>
            <a className="button" href="/">
              Go to the front page
            </a>
          </div>
        </section>
      </main>
    );
  }
}
