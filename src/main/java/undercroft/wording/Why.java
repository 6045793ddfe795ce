package undercroft.wording;

import java.util.List;
import undercroft.outlook.lot.FigureKind;

/**
 * Where a figure of a lot comes from.
 *
 * @param lotId the lot whose figure it is
 * @param value the figure this explains, just as it is shown elsewhere
 * @param title what it is called, with its value and its range
 * @param how the calculation in words
 */
public record Why(
        FigureKind figure,
        String lotId,
        String value,
        String title,
        String how,
        List<Input> inputs,
        List<Assumption> assumptions,
        String source) {
    public Why {
        inputs = List.copyOf(inputs);
        assumptions = List.copyOf(assumptions);
    }

    /** An input with its unit, as shown. */
    public record Input(String name, String value) {}

    /** Something taken for granted, with how well it is founded. */
    public record Assumption(String text, Grade grade) {}

    /** How well something is founded; best first. */
    public enum Grade {
        MEASURED_BY_YOU,
        PUBLISHED,
        COMMON_PRACTICE,
        ASSUMED
    }
}
