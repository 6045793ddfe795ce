package undercroft.app.shelf;

import java.util.List;
import java.util.Optional;
import undercroft.cellar.Draw;
import undercroft.cellar.Reading;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.StockOutlook;
import undercroft.wording.EvidenceWords;
import undercroft.wording.Why;

/**
 * What the page of a batch says in words.
 *
 * @param where place, temperature, bottle and day; empty while the batch is planned
 * @param figures the key figures; none while the batch is planned
 * @param cautions what to heed before touching the bottles; none where the pressure is well
 * @param questions bottles that burst, and why
 * @param evidence what may explain what was seen; none while nothing was
 * @param learned what earlier batches taught of it; empty where they taught nothing
 * @param stock how the bottles go; empty while the batch is planned
 * @param lots one choice for each lot with bottles
 */
public record BatchPage(
        BatchOutlook batch,
        Optional<LotOutlook> lot,
        String title,
        String where,
        String headline,
        List<Figure> figures,
        List<String> cautions,
        List<EvidenceWords.Question> questions,
        List<EvidenceWords.Line> evidence,
        Optional<String> learned,
        List<LotChoice> lots,
        List<Row> readings,
        List<Row> draws,
        List<Row> moves,
        Optional<Stock> stock,
        String notes) {
    public BatchPage {
        figures = List.copyOf(figures);
        cautions = List.copyOf(cautions);
        questions = List.copyOf(questions);
        evidence = List.copyOf(evidence);
        lots = List.copyOf(lots);
        readings = List.copyOf(readings);
        draws = List.copyOf(draws);
        moves = List.copyOf(moves);
    }

    /** A key figure with what stands above and below it, and where it comes from. */
    public record Figure(String id, String label, String value, String detail, Alert alert, Why why) {}

    /** A lot as a person tells it from the others. */
    public record LotChoice(String lotId, String label, boolean chosen) {}

    /** Where the bottles are, how fast they go, and the picture's data. */
    public record Stock(StockOutlook outlook, String sentence, List<String> lots) {
        public Stock {
            lots = List.copyOf(lots);
        }
    }

    /** A line of a list; {@code reading} or {@code drawn} when it is one that can be taken back. */
    public record Row(String when, String what, String note, Optional<Reading> reading, Optional<Drawn> drawn) {
        static Row of(String when, String what, String note) {
            return new Row(when, what, note, Optional.empty(), Optional.empty());
        }
    }

    /** Bottles that left a lot. */
    public record Drawn(String lotId, Draw draw) {}

    /** What the alert is about, in the worst of its two senses. */
    public Alert alert() {
        return batch.alert();
    }
}
