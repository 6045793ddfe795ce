package undercroft.plot;

import java.util.List;
import undercroft.plot.mark.Role;
import undercroft.series.Span;

/**
 * Stretches of time shaded over the whole height. A ready window has a full line along its top, a warm spell a dashed
 * one, a gap is hatched.
 *
 * @param label written once, on the first stretch with room; empty for none
 */
public record SpanLayer(List<Span> spans, Role role, String label) implements Layer {
    public SpanLayer {
        spans = List.copyOf(spans);
    }

    public static SpanLayer of(Span span, Role role, String label) {
        return new SpanLayer(List.of(span), role, label);
    }
}
