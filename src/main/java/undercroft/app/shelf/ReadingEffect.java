package undercroft.app.shelf;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.FigureKind;
import undercroft.quantity.Interval;
import undercroft.wording.FigureWords;
import undercroft.wording.Messages;
import undercroft.wording.ShelfWords;

/** What a reading that was just added did to the forecast of its batch, in a sentence: of the figure it told most about. */
public final class ReadingEffect {
    private static final double SAME = 0.02;

    private ReadingEffect() {}

    private record Figure(String label, String was, String is, double share) {
        static Figure of(String label, Interval was, Interval is, String wasWords, String isWords) {
            return new Figure(label, wasWords, isWords, 1 - (is.high() - is.low()) / (was.high() - was.low()));
        }
    }

    /** Empty where no batch has a reading more than before. */
    public static Optional<String> of(CellarOutlook before, CellarOutlook after, Messages messages) {
        if (before == null || after == null) {
            return Optional.empty();
        }
        return after.batches().stream()
                .filter(BatchOutlook::isCapped)
                .flatMap(now -> before.batches().stream()
                        .filter(then -> then.isCapped() && then.id().equals(now.id()))
                        .filter(then -> now.batch().readings().size()
                                > then.batch().readings().size())
                        .map(then -> sentence(then, now, ShelfWords.of(after, messages))))
                .findFirst();
    }

    private static String sentence(BatchOutlook then, BatchOutlook now, ShelfWords words) {
        FigureWords labels = new FigureWords(words);
        Interval wasBar = then.mainLot().pressure().atPresent();
        Interval isBar = now.mainLot().pressure().atPresent();
        Interval wasVolumes = then.mainLot().carbonation().atPresent();
        Interval isVolumes = now.mainLot().carbonation().atPresent();
        Figure most = Stream.of(
                        Figure.of(
                                labels.label(FigureKind.CARBONATION),
                                wasVolumes,
                                isVolumes,
                                words.format().volumeRange(wasVolumes),
                                words.format().volumeRange(isVolumes)),
                        Figure.of(
                                labels.label(FigureKind.PRESSURE),
                                wasBar,
                                isBar,
                                words.format().barRange(wasBar),
                                words.format().barRange(isBar)))
                .max(Comparator.comparingDouble(figure -> Math.abs(figure.share())))
                .orElseThrow();
        return words.of(
                key(most.share()),
                now.batch().name(),
                most.label(),
                most.is(),
                most.was(),
                words.format().percent(Math.abs(most.share())));
    }

    private static String key(double share) {
        if (Math.abs(share) <= SAME) {
            return "reading.effect.same";
        }
        return share > 0 ? "reading.effect.narrower" : "reading.effect.wider";
    }
}
