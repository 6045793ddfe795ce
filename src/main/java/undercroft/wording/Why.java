package undercroft.wording;

import java.util.List;
import undercroft.outlook.lot.FigureKind;

/**
 * Where a figure of a lot comes from.
 *
 * @param lotId the lot whose figure it is
 * @param number the number this explains, as shown
 * @param equation the calculation in words
 */
public record Why(
        FigureKind figure,
        String lotId,
        String number,
        String equation,
        List<Input> inputs,
        List<Assumption> assumptions,
        String source) {
    /** An input with its unit, as shown. */
    public record Input(String name, String value) {}

    /** Something taken for granted, with how well it is founded. */
    public record Assumption(String text, Grade grade) {}

    /** How well something is founded; best first. */
    public enum Grade {
        MEASURED_BY_YOU("measured by you"),
        PUBLISHED("published"),
        COMMON_PRACTICE("common practice"),
        ASSUMED("assumed");

        private final String label;

        Grade(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }
}
