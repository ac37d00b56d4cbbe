/** Minutes since midnight of a time of day; 1440 and more is past the next midnight. */
export type ClockMinutes = number;

/** Reads `7:30`, `07:30`, `19.15`, `7 am` as minutes since midnight; null when it is no time of day. */
export function parseClockTime(text: string): ClockMinutes | null {
  const parts = /^\s*(\d{1,2})(?:[:.](\d{2}))?\s*(am|pm)?\s*$/i.exec(text);
  if (!parts) return null;
  if (parts[2] === undefined && parts[3] === undefined) return null;
  let hours = Number(parts[1]);
  const minutes = Number(parts[2] ?? 0);
  const half = parts[3]?.toLowerCase();
  if (half !== undefined) {
    if (hours < 1 || hours > 12) return null;
    hours = (hours % 12) + (half === 'pm' ? 12 : 0);
  }
  return hours > 23 || minutes > 59 ? null : hours * 60 + minutes;
}

/** Prints minutes since midnight as `07:30`; past midnight as `01:10 (+1 day)`. */
export function formatClockTime(minutes: ClockMinutes): string {
  const day = Math.floor(minutes / 1440);
  const inDay = minutes - day * 1440;
  const text = `${pad(Math.floor(inDay / 60))}:${pad(Math.floor(inDay % 60))}`;
  return day === 0 ? text : `${text} (${day > 0 ? '+' : '−'}${Math.abs(day)} day)`;
}

/** Prints a length in minutes as `2 h 05 min`, `45 min`, `11 h`. */
export function formatMinutes(minutes: number): string {
  const whole = Math.round(minutes);
  const hours = Math.floor(whole / 60);
  const rest = whole % 60;
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${pad(rest)} min`;
}

function pad(value: number): string {
  return String(value).padStart(2, '0');
}
