/** What the charts use of uPlot; the package's own types are not vendored. */
export default class UPlot {
  static paths: { bars(how: { size: [number, number] }): unknown };
  constructor(options: Record<string, unknown>, data: unknown[], place: HTMLElement);
  ctx: CanvasRenderingContext2D;
  bbox: { left: number; top: number; width: number; height: number };
  width: number;
  height: number;
  data: unknown[];
  valToPos(value: number, scale: string, canvas?: boolean): number;
  setSize(size: { width: number; height: number }): void;
  redraw(): void;
  destroy(): void;
}
