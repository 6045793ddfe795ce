package undercroft.app.form.place;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import undercroft.picture.ImportPicture;
import undercroft.plot.PlotStack;
import undercroft.series.TimeSeries;
import undercroft.session.LogImport;
import undercroft.wording.QuantityFormat;

/**
 * What bringing a file in would do.
 *
 * @param lines what was kept, repaired and left out and why, one sentence each
 * @param picture what is there already and what would be added
 */
public record ImportResult(LogImport coming, List<String> lines, PlotStack picture) {
    public ImportResult {
        lines = List.copyOf(lines);
    }

    static ImportResult of(QuantityFormat format, LogImport coming, TimeSeries before) {
        TimeSeries read = coming.log().celsius();
        List<String> lines = new ArrayList<>();
        lines.add(format.of(
                "form.import.kept",
                coming.log().kept(),
                format.shortDay(format.date(Instant.ofEpochSecond(read.firstTime()))),
                format.shortDay(format.date(Instant.ofEpochSecond(read.lastTime())))));
        lines.addAll(coming.lines(format));
        return new ImportResult(coming, lines, ImportPicture.of(before, read, format));
    }
}
