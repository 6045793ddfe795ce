package undercroft.report.experiment;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import undercroft.catalogue.BottleClass;
import undercroft.catalogue.FillingMethod;
import undercroft.catalogue.Flocculation;
import undercroft.catalogue.Listed;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;

/**
 * What a line of an experiment's file may tell. Its kind stands in the first cell; a number is bounded and has the unit
 * given here, a word is one of a list and has none; only what has a course has hours since capping.
 */
enum ExperimentEntry {
    FORMAT("format", "", 1, 1, true),
    YEAST("yeast", YeastStrain.values(), true),
    YEAST_STATE("yeast-state", YeastState.values(), true),
    FLOCCULATION("flocculation", Flocculation.values(), true),
    FERMENTS_DEXTRINS("ferments-dextrins", "", 0, 1, false),
    STRENGTH("strength", "% vol", 0, 20, true),
    WARMEST("warmest-since-fermentation", "°C", -2, 45, true),
    GRAVITY("gravity-at-bottling", "", 0.980, 1.200, false),
    GRAVITY_WITH_SUGAR("gravity-includes-priming", "", 0, 1, false),
    FINAL_GRAVITY("expected-final-gravity", "", 0.980, 1.200, false),
    FILLING("filling", FillingMethod.values(), true),
    BEER_AT_CAPPING("beer-at-capping", "°C", -2, 45, false),
    ALTITUDE("altitude", "m", -400, 5_000, true),
    SUGAR_PER_BOTTLE("sugar-per-bottle", "", 0, 1, false),
    SUGAR("sugar", "g/L", 0, 100, true),
    SUGAR_GAS_LOW("carbon-dioxide-of-sugar-low", "g/g", 0.01, 0.53, true),
    SUGAR_GAS("carbon-dioxide-of-sugar", "g/g", 0.01, 0.53, true),
    SUGAR_GAS_HIGH("carbon-dioxide-of-sugar-high", "g/g", 0.01, 0.53, true),
    BOTTLE("bottle", BottleClass.values(), true),
    FILL("fill", "mL", 50, 10_000, true),
    BRIMFUL("brimful", "mL", 50, 11_000, true),
    WALL("wall", "mm", 0.1, 10, true),
    DIAMETER("diameter", "mm", 30, 250, true),
    MEASURED_SHARE("measured-share-of-temperatures", "", 0, 1, true),
    TEMPERATURE("temperature", "°C", -30, 60),
    PRESSURE("pressure", "bar", -0.5, 16),
    TASTE("taste", PerceivedCarbonation.values(), false);

    private final String kind;
    private final String unit;
    private final double least;
    private final double most;
    private final List<Listed> words;
    private final boolean isRequired;
    private final boolean isCourse;

    ExperimentEntry(
            String kind,
            String unit,
            double least,
            double most,
            List<Listed> words,
            boolean isRequired,
            boolean isCourse) {
        this.kind = kind;
        this.unit = unit;
        this.least = least;
        this.most = most;
        this.words = words;
        this.isRequired = isRequired;
        this.isCourse = isCourse;
    }

    ExperimentEntry(String kind, String unit, double least, double most, boolean isRequired) {
        this(kind, unit, least, most, List.of(), isRequired, false);
    }

    ExperimentEntry(String kind, Listed[] words, boolean isRequired) {
        this(kind, "", 0, 0, List.of(words), isRequired, false);
    }

    /** A number with a course. */
    ExperimentEntry(String kind, String unit, double least, double most) {
        this(kind, unit, least, most, List.of(), true, true);
    }

    static Optional<ExperimentEntry> of(String kind) {
        return Arrays.stream(values()).filter(entry -> entry.kind.equals(kind)).findFirst();
    }

    String kind() {
        return kind;
    }

    String unit() {
        return unit;
    }

    double least() {
        return least;
    }

    double most() {
        return most;
    }

    List<Listed> words() {
        return words;
    }

    boolean isWord() {
        return !words.isEmpty();
    }

    boolean isRequired() {
        return isRequired;
    }

    /** Whether there are many of it, one after the other. */
    boolean isCourse() {
        return isCourse;
    }

    /** Whether it is told with hours since capping. */
    boolean hasHours() {
        return isCourse || this == TASTE;
    }
}
