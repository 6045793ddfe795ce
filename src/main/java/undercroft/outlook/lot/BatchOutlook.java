package undercroft.outlook.lot;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import undercroft.calc.conditioning.ReadingsVerdict.Agreement;
import undercroft.cellar.Batch;
import undercroft.quantity.InvalidInput;

/**
 * A batch at an instant.
 *
 * @param headline one sentence a person would say
 * @param readings whether its readings fit what is computed
 * @param lots one for each lot with bottles; empty while the batch is planned, and never empty once it is capped
 */
public record BatchOutlook(
        Batch batch,
        Stage stage,
        Alert alert,
        String headline,
        int bottlesLeft,
        List<LotOutlook> lots,
        Agreement readings,
        List<Why> whys) {
    public BatchOutlook {
        lots = List.copyOf(lots);
        whys = List.copyOf(whys);
    }

    public String id() {
        return batch.id();
    }

    /** False while bottling is only planned: there is no carbonation, pressure or light to show. */
    public boolean isCapped() {
        return !lots.isEmpty();
    }

    /** The lot with most bottles left: stands for the batch where one figure is shown. */
    public LotOutlook mainLot() {
        return lots.stream()
                .max(Comparator.comparingInt(LotOutlook::left))
                .orElseThrow(() -> new InvalidInput("batch " + id(), "is not capped yet; finish bottling day first"));
    }

    /** The lot whose pressure is nearest to, or furthest beyond, its limit. */
    public LotOutlook tightestLot() {
        return worst(lot -> lot.pressure().peakAhead().high() / lot.pressure().workingPressureBar());
    }

    /** The lot that has had most light. */
    public LotOutlook brightestLot() {
        return worst(lot -> lot.light().dose().median());
    }

    /** The lot that has aged most. */
    public LotOutlook oldestLot() {
        return worst(lot -> lot.ageing().daysUsed().median());
    }

    private LotOutlook worst(ToDoubleFunction<LotOutlook> measure) {
        List<LotOutlook> withBottles =
                lots.stream().filter(lot -> lot.left() > 0).toList();
        return (withBottles.isEmpty() ? lots : withBottles)
                .stream().max(Comparator.comparingDouble(measure)).orElseGet(this::mainLot);
    }
}
