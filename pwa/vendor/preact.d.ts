/** What the screens use of the bundled preact, htm and signals; the bundle carries no types of its own. */
export interface Signal<T> {
  value: T;
  peek(): T;
  subscribe(listener: (value: T) => void): () => void;
}
export interface ReadonlySignal<T> {
  readonly value: T;
  peek(): T;
  subscribe(listener: (value: T) => void): () => void;
}
export interface VNode {
  type: unknown;
  props: Record<string, unknown>;
  key: unknown;
}
type Cleanup = () => void;
export const Fragment: (props: { children?: unknown }) => VNode;
export function h(type: unknown, props: Record<string, unknown> | null, ...children: unknown[]): VNode;
export function html(strings: TemplateStringsArray, ...values: unknown[]): VNode;
export function render(tree: VNode | null, place: Element): void;
export function useEffect(work: () => void | Cleanup, of?: readonly unknown[]): void;
export function useErrorBoundary(caught?: (error: unknown) => void): [unknown, () => void];
export function useLayoutEffect(work: () => void | Cleanup, of?: readonly unknown[]): void;
export function useMemo<T>(make: () => T, of: readonly unknown[]): T;
export function useRef<T>(first: T): { current: T };
export function useState<T>(first: T | (() => T)): [T, (next: T | ((before: T) => T)) => void];
export function batch<T>(work: () => T): T;
export function computed<T>(make: () => T): ReadonlySignal<T>;
export function effect(work: () => void | Cleanup): Cleanup;
export function signal<T>(first: T): Signal<T>;
export function untracked<T>(work: () => T): T;
export function useComputed<T>(make: () => T): ReadonlySignal<T>;
export function useSignal<T>(first: T): Signal<T>;
export function useSignalEffect(work: () => void | Cleanup): void;
