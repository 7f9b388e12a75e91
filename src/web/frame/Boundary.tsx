import { Component, type ReactNode } from "react";
import { Button } from "react-aria-components";

interface Bounded {
  /** What is shown, as in "The view Papers". */
  readonly what: string;
  /** Called before it is tried once more. */
  readonly onAgain?: () => void;
  readonly children: ReactNode;
}

interface Fallen {
  readonly error: unknown;
}

/** Keeps an error in one part of the window from taking the rest away. The open job lies outside of it, with all that was changed. */
export class Boundary extends Component<Bounded, { readonly fallen: Fallen | undefined }> {
  override readonly state: { readonly fallen: Fallen | undefined } = { fallen: undefined };

  static getDerivedStateFromError(error: unknown): { readonly fallen: Fallen } {
    return { fallen: { error } };
  }

  override render(): ReactNode {
    const { fallen } = this.state;
    const { what, children } = this.props;
    if (fallen === undefined) return children;
    return (
      <div className="f-fallen" role="alert">
        <p>
          <strong>{what} could not be shown.</strong> {wordsOf(fallen.error)} What you have changed is still here.
        </p>
        <Button className="button" onPress={this.again}>
          Try again
        </Button>
      </div>
    );
  }

  private readonly again = (): void => {
    this.props.onAgain?.();
    this.setState({ fallen: undefined });
  };
}

/** A part of the app that could not be fetched is a TypeError in every browser. */
function wordsOf(error: unknown): string {
  if (error instanceof TypeError && /import|fetch|load/i.test(error.message)) return "A part of the app could not be fetched from the server.";
  return error instanceof Error ? `${error.message}.` : "";
}
