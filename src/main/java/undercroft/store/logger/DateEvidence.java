package undercroft.store.logger;

import undercroft.store.logger.text.ClockText;
import undercroft.store.logger.text.TimeFormat;

/**
 * Tells the orders of a date apart. A number above 12 is no month; and a log runs on by small steps, so an order in which
 * the next line comes within two days speaks against one in which it comes weeks later.
 */
final class DateEvidence {
    private static final long TWO_DAYS = 2 * 86_400;
    private static final long TWENTY_DAYS = 20 * 86_400;
    private static final int ENOUGH = 20;

    private final ClockText clock = new ClockText();
    private int firstAboveTwelve;
    private int secondAboveTwelve;
    private int dayFirstSteps;
    private int monthFirstSteps;
    private int ownOrder;
    private int dots;
    private int shortYears;
    private int dated;
    private int firstChanges;
    private int thirdChanges;
    private int lastFirst = -1;
    private int lastThird = -1;
    private long lastDayFirst = ClockText.NO_TIME;
    private long lastMonthFirst = ClockText.NO_TIME;
    boolean twelveHour;
    boolean ownOffset;

    void add(String time) {
        if (!clock.read(time) || !clock.hasDate) {
            return;
        }
        dated++;
        twelveHour |= clock.twelveHour;
        ownOffset |= clock.offsetSeconds != ClockText.NO_OFFSET;
        if (clock.tellsItsOrder()) {
            ownOrder++;
            return;
        }
        shortYears += clock.thirdDigits <= 2 ? 1 : 0;
        dots += clock.dateSeparator == '.' ? 1 : 0;
        firstAboveTwelve += clock.first > 12 ? 1 : 0;
        secondAboveTwelve += clock.second > 12 ? 1 : 0;
        firstChanges += lastFirst >= 0 && clock.first != lastFirst ? 1 : 0;
        thirdChanges += lastThird >= 0 && clock.third != lastThird ? 1 : 0;
        lastFirst = clock.first;
        lastThird = clock.third;
        steps();
    }

    private void steps() {
        long dayFirst = clock.midnight(TimeFormat.DAY_FIRST);
        long monthFirst = clock.midnight(TimeFormat.MONTH_FIRST);
        if (dayFirst != ClockText.NO_TIME
                && monthFirst != ClockText.NO_TIME
                && lastDayFirst != ClockText.NO_TIME
                && lastMonthFirst != ClockText.NO_TIME) {
            long dayStep = Math.abs(dayFirst - lastDayFirst);
            long monthStep = Math.abs(monthFirst - lastMonthFirst);
            dayFirstSteps += dayStep <= TWO_DAYS && monthStep > TWENTY_DAYS ? 1 : 0;
            monthFirstSteps += monthStep <= TWO_DAYS && dayStep > TWENTY_DAYS ? 1 : 0;
        }
        lastDayFirst = dayFirst;
        lastMonthFirst = monthFirst;
    }

    private boolean isYearFirst() {
        return shortYears == dated - ownOrder && firstChanges == 0 && thirdChanges > 0 && firstAboveTwelve > 0;
    }

    /** One date such as 24/01/31, all through the file, might have its year at either end. */
    private boolean mayBeYearFirst() {
        return shortYears == dated - ownOrder
                && firstChanges == 0
                && thirdChanges == 0
                && firstAboveTwelve > 0
                && dots * 2 <= dated;
    }

    TimeFormat format() {
        if (ownOrder * 2 >= dated || isYearFirst()) {
            return TimeFormat.YEAR_FIRST;
        }
        if (firstAboveTwelve != secondAboveTwelve) {
            return firstAboveTwelve > secondAboveTwelve ? TimeFormat.DAY_FIRST : TimeFormat.MONTH_FIRST;
        }
        return monthFirstSteps > dayFirstSteps ? TimeFormat.MONTH_FIRST : TimeFormat.DAY_FIRST;
    }

    /** Whether the other orders are ruled out; a stray line does not overturn what fifty others say. */
    boolean isProven() {
        if (ownOrder * 2 >= dated || isYearFirst()) {
            return true;
        }
        if (mayBeYearFirst()) {
            return false;
        }
        if (firstAboveTwelve + secondAboveTwelve > 0) {
            return oneSided(firstAboveTwelve, secondAboveTwelve);
        }
        if (dayFirstSteps + monthFirstSteps > 0) {
            return oneSided(dayFirstSteps, monthFirstSteps);
        }
        return dots * 2 > dated;
    }

    /** Whether more lines would not change the answer. */
    boolean isSettled() {
        return isProven()
                && (ownOrder * 2 >= dated
                        || Math.max(
                                        Math.max(firstAboveTwelve, secondAboveTwelve),
                                        Math.max(dayFirstSteps, monthFirstSteps))
                                >= ENOUGH);
    }

    private static boolean oneSided(int one, int other) {
        return Math.min(one, other) * 50L < Math.max(one, other);
    }
}
