package undercroft.outlook.lot;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import undercroft.cellar.Batch;
import undercroft.cellar.Reading;
import undercroft.quantity.InvalidInput;

/**
 * A batch at an instant: its lots, and which of them speaks for it.
 *
 * @param lots one for each lot; empty while the batch is planned, and never empty once it is capped
 * @param learned what earlier batches taught of it; empty where none did
 */
public record BatchOutlook(Batch batch, List<LotOutlook> lots, Optional<Learned> learned) {
    public BatchOutlook {
        lots = List.copyOf(lots);
    }

    public String id() {
        return batch.id();
    }

    /** False while bottling is only planned: there is no carbonation, pressure or light to show. */
    public boolean isCapped() {
        return !lots.isEmpty();
    }

    public int bottlesLeft() {
        return lots.stream().mapToInt(LotOutlook::left).sum();
    }

    public Stage stage() {
        if (!isCapped()) {
            return Stage.FILLING;
        }
        return bottlesLeft() == 0 ? Stage.EMPTY : mainLot().stage();
    }

    /** All that is to be said of its lots; as grave as the gravest of them. */
    public Verdict verdict() {
        return Verdict.ofAll(lots);
    }

    public Alert alert() {
        return verdict().alert();
    }

    /** When something was read of it last, or burst, up to the outlook's instant. */
    public Optional<Instant> lastSeen() {
        if (!isCapped()) {
            return Optional.empty();
        }
        LotOutlook any = lots.get(0);
        return Stream.concat(
                        batch.readings().stream().map(Reading::at),
                        any.evidence().bursts().stream().map(Evidence.Burst::at))
                .filter(seen -> !seen.isAfter(any.at()))
                .max(Comparator.naturalOrder());
    }

    /**
     * One of its lots.
     *
     * @throws InvalidInput when it has none with that id
     */
    public LotOutlook lot(String lotId) {
        batch.lot(lotId);
        return lots.stream()
                .filter(lot -> lot.id().equals(lotId))
                .findFirst()
                .orElseThrow(() -> new InvalidInput(id(), "fault.uncapped"));
    }

    /** The lot whose figure stands for the batch. */
    public LotOutlook lotFor(FigureKind figure) {
        return switch (figure) {
            case CARBONATION, READY -> mainLot();
            case PRESSURE -> limitingLot();
            case HEAT_LIMIT -> heatLimitLot();
            case LIGHT -> brightestLot();
            case BEST_BEFORE -> oldestLot();
        };
    }

    /** The lot with most bottles left: stands for the batch where one figure is shown. */
    public LotOutlook mainLot() {
        return lots.stream()
                .max(Comparator.comparingInt(LotOutlook::left))
                .orElseThrow(() -> new InvalidInput(id(), "fault.uncapped"));
    }

    /** The lot whose pressure comes nearest to its working pressure, or goes furthest beyond it, in the weeks ahead. */
    public LotOutlook limitingLot() {
        return worst(lot -> lot.pressure().peakAhead().high() / lot.pressure().workingPressureBar());
    }

    /** The lot that stands the least heat: its heat limit is the batch's. */
    public LotOutlook heatLimitLot() {
        return worst(lot -> -lot.pressure().heatLimitCelsius());
    }

    /** The lot that has had most light. */
    public LotOutlook brightestLot() {
        return worst(lot -> lot.light().dose().median());
    }

    /** The lot that has aged most. */
    public LotOutlook oldestLot() {
        return worst(lot -> lot.ageing().daysUsed().median());
    }

    /** Of the lots with bottles left; of all where none has any. */
    private LotOutlook worst(ToDoubleFunction<LotOutlook> measure) {
        List<LotOutlook> withBottles =
                lots.stream().filter(lot -> lot.left() > 0).toList();
        return (withBottles.isEmpty() ? lots : withBottles)
                .stream().max(Comparator.comparingDouble(measure)).orElseGet(this::mainLot);
    }
}
