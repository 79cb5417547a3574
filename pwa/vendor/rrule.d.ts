/** What of rrule the app uses; the package's own types are not vendored. */
export class Weekday {
  constructor(weekday: number, n?: number);
}
export class RRule {
  static DAILY: number;
  static WEEKLY: number;
  static MONTHLY: number;
  static YEARLY: number;
  constructor(options: Record<string, unknown>, noCache?: boolean);
  between(after: Date, before: Date, inc?: boolean): Date[];
}
