import { Component, type ComponentChild, type FunctionComponent, h } from 'preact';

type Props = Readonly<Record<string, unknown>>;

/** Equal in everything but functions. */
export function sameButHandlers(before: Props, after: Props): boolean {
  for (const name in after) {
    if (after[name] !== before[name] && typeof after[name] !== 'function') return false;
  }
  return true;
}

/**
 * A component that is not rendered anew while its data stay the same: in a drag only the control in hand changes, and
 * the others cost nothing. Its handlers may be those of an earlier render, so they must set state from the state before.
 */
export function stillWhileSame<P extends object>(inner: FunctionComponent<P>): new () => Component<P> {
  return class extends Component<P> {
    override shouldComponentUpdate(after: Readonly<P>): boolean {
      return !sameButHandlers(this.props as Props, after as Props);
    }

    override render(): ComponentChild {
      return h(inner, this.props);
    }
  };
}
