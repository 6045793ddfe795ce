package undercroft.cellar;

import java.time.Instant;
import java.util.function.UnaryOperator;
import undercroft.quantity.Check;

/**
 * The newest label on a batch's crates.
 *
 * @param heatLimitCelsius what it says; infinite where no storage temperature passes the working pressure
 */
public record PrintedLabel(Instant at, double heatLimitCelsius) {
    /** When a limit has fallen by this much, paper that says the old one misleads, K. */
    private static final double MISLEADING_KELVIN = 3;

    public PrintedLabel {
        if (!Double.isInfinite(heatLimitCelsius)) {
            Check.within("heatLimitCelsius", heatLimitCelsius, -300, 300, "°C");
        }
    }

    /** Whether it says much more than the limit is now. */
    public boolean misleads(double heatLimitCelsiusNow) {
        return heatLimitCelsius - heatLimitCelsiusNow >= MISLEADING_KELVIN;
    }

    /** Notes it with its batch, where the cellar has that. */
    public UnaryOperator<Cellar> on(String batchId) {
        return cellar -> cellar.withBatches(cellar.batches().stream()
                .map(batch -> batch.id().equals(batchId)
                        ? batch.withPackaging(batch.packaging().withLabel(this))
                        : batch)
                .toList());
    }
}
