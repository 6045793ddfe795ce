package undercroft.store.logger.text;

/** In which order a date's parts stand, or that time is a count from 1970. Four-digit years tell themselves apart. */
public enum TimeFormat {
    YEAR_FIRST,
    DAY_FIRST,
    MONTH_FIRST,
    UNIX_SECONDS,
    UNIX_MILLISECONDS;

    public boolean isUnix() {
        return this == UNIX_SECONDS || this == UNIX_MILLISECONDS;
    }
}
