package undercroft.app.spells;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import undercroft.outlook.lot.Alert;
import undercroft.plot.PlotStack;

/**
 * A spell in words and as a plot of its place.
 *
 * @param title place and time
 * @param summary how warm, how long, how sure
 * @param caution what to heed before touching bottles; empty when nothing presses
 * @param groups tolls by what to do, the first things first
 * @param picture the temperature of the place with its spells shaded; empty without a climate
 * @param usualUntil where the picture's usual look ends, epoch second
 */
public record SpellPage(
        String title,
        String summary,
        Alert alert,
        List<String> caution,
        List<Group> groups,
        Optional<PlotStack> picture,
        long usualUntil) {
    public SpellPage {
        caution = List.copyOf(caution);
        groups = List.copyOf(groups);
    }

    /** Batches for which the same is to be done. */
    public record Group(String advice, List<Line> lines) {
        public Group {
            lines = List.copyOf(lines);
        }
    }

    /**
     * A batch's toll.
     *
     * @param worst when its bottles were warmest, or coldest, in the spell
     * @param isChosen whether the mark that is chosen is this one
     */
    public record Line(
            String batchId,
            String name,
            Alert alert,
            String verdict,
            List<String> figures,
            Instant worst,
            boolean isChosen) {
        public Line {
            figures = List.copyOf(figures);
        }
    }
}
