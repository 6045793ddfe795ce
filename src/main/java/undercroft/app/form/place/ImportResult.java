package undercroft.app.form.place;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import undercroft.app.form.DateText;
import undercroft.cellar.Cellar;
import undercroft.picture.ImportPicture;
import undercroft.plot.PlotStack;
import undercroft.series.TimeSeries;
import undercroft.session.LogImport;
import undercroft.store.logger.ImportedLog;
import undercroft.wording.QuantityFormat;
import undercroft.wording.Texts;

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

    static ImportResult of(TimeSeries before, ImportedLog log, String placeId, Cellar cellar) {
        LogImport coming = LogImport.of(cellar, placeId, before, log);
        List<String> lines = new ArrayList<>();
        lines.add(Texts.counted(
                "form.import.kept",
                log.kept(),
                day(log.celsius().firstTime(), cellar.zone()),
                day(log.celsius().lastTime(), cellar.zone())));
        lines.addAll(coming.lines(
                QuantityFormat.of(Texts.messages(), cellar.settings().units(), cellar.zone())));
        return new ImportResult(
                coming,
                lines,
                ImportPicture.of(
                        before, log.celsius(), cellar.zone(), cellar.settings().units()));
    }

    private static String day(long epochSecond, ZoneId zone) {
        return DateText.of(Instant.ofEpochSecond(epochSecond).atZone(zone).toLocalDate());
    }
}
