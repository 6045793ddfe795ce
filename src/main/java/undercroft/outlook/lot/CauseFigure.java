package undercroft.outlook.lot;

/** A number behind a cause, with its unit. */
public enum CauseFigure {
    /** Upper estimate (95 %) of the strongest bottle left, bar gauge. */
    STRONGEST_GAUGE_BAR,
    /** Upper estimate (95 %) of the highest pressure of the strongest bottle in the weeks ahead, bar gauge. */
    PEAK_AHEAD_GAUGE_BAR,
    /** Upper estimate (95 %) of the highest pressure of the strongest bottle since capping, bar gauge. */
    PEAK_PAST_GAUGE_BAR,
    /** Upper estimate (95 %) of all pressure so far as one that acts for 60 seconds, bar gauge. */
    MEMORY_GAUGE_BAR,
    WORKING_PRESSURE_GAUGE_BAR,
    /** From here on worth watching, bar gauge. */
    CAUTION_GAUGE_BAR,
    HEAT_LIMIT_CELSIUS,
    /** Mean of the warmest week that is looked at. */
    WARMEST_WEEK_CELSIUS,
    /** Probability that the strongest bottle left is over its working pressure then, 0 to 1. */
    CHANCE,
    /** Of the bottles, now. */
    TEMPERATURE_CELSIUS,
    /** The coldest the bottles were. */
    COLDEST_CELSIUS,
    /** Here ice begins to form. */
    FREEZING_CELSIUS,
    /** Share of the coming carbonation that has formed, 0 to 1. */
    FRACTION_DONE,
    /** Light so far; 1 is just noticed. */
    LIGHT_DOSE,
    /** Light that falls in a day where the bottles stand. */
    LIGHT_DOSE_PER_DAY,
    /** Bottles that burst. */
    BOTTLES,
    SHELF_DAYS_USED,
    SHELF_DAYS_BUDGET
}
