export { addDays, compareDays, type Day, dayNumber, dayOfMs, dayOfNumber, daysBetween, isDay } from './day';
export { type DayRange, firstOverdueDay, isPastDue, rangesOverlap, sharedDays } from './day-range';
export { dayLabel, monthLabel, relativeDayText } from './day-text';
export { type IsoWeek, isoWeek, isoWeekday, isoWeekText, weekStartDay } from './iso-week';
