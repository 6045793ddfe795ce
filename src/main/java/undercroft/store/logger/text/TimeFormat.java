package undercroft.store.logger.text;

/** In which order a date's parts stand, or that time is a count from 1970. Four-digit years tell themselves apart. */
public enum TimeFormat {
    YEAR_FIRST("year, month, day"),
    DAY_FIRST("day, month, year"),
    MONTH_FIRST("month, day, year"),
    UNIX_SECONDS("seconds since 1970"),
    UNIX_MILLISECONDS("milliseconds since 1970");

    private final String words;

    TimeFormat(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    public boolean isUnix() {
        return this == UNIX_SECONDS || this == UNIX_MILLISECONDS;
    }
}
