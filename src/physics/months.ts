/** Days of each month of a year that is no leap year, January first. */
export const MONTH_DAYS: readonly number[] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

export const SECONDS_PER_DAY = 86_400;
