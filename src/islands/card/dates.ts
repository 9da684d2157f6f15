/** Dates on a card: of print, and by which it is to be checked. */

/** `25 Nov 2026`: no reader takes the day for the month. */
export const day = (date: Date): string => new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' }).format(date);

/** So many months on; the last day of the month where it has no such day. */
export const later = (date: Date, months: number): Date => {
  const on = new Date(date.getFullYear(), date.getMonth() + months, date.getDate());
  return on.getDate() === date.getDate() ? on : new Date(date.getFullYear(), date.getMonth() + months + 1, 0);
};
