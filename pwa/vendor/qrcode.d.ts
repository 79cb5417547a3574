/** What of qrcode-generator the app uses. */
export default function qrcode(version: number, correction: "L" | "M" | "Q" | "H"): {
  addData(text: string): void;
  make(): void;
  getModuleCount(): number;
  isDark(row: number, column: number): boolean;
};
