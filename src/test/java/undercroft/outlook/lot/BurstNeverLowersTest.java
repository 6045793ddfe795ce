package undercroft.outlook.lot;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import undercroft.cellar.Batch;
import undercroft.cellar.BurstCause;
import undercroft.cellar.Draw;
import undercroft.demo.DemoShelf;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Outlooks;

/**
 * Whatever a person answers, a burst is no good news for the bottles that are left. One of 54 glass bottles burst in a hot
 * week; that the other 53 did not once made the forecast lower than it was before.
 */
final class BurstNeverLowersTest {
    private static final String BATCH = "millrace-saison";
    private static final PressureOutlook BEFORE = pressure(List.of());

    static Stream<Optional<BurstCause>> answers() {
        return Stream.concat(
                Stream.of(Optional.empty()), Stream.of(BurstCause.values()).map(Optional::of));
    }

    private static CellarOutlook outlook(List<Optional<BurstCause>> bursts) {
        Batch batch = DemoShelf.cellar().batch(BATCH);
        for (var lot : batch.lots()) {
            List<Draw> draws = lot.draws().stream()
                    .filter(draw -> draw.fate() != Draw.Fate.BURST || !bursts.isEmpty())
                    .map(draw -> draw.fate() == Draw.Fate.BURST
                            ? new Draw(draw.at(), draw.count(), draw.fate(), draw.note(), bursts.get(0))
                            : draw)
                    .toList();
            batch = batch.withLot(lot.withDraws(draws));
        }
        return Outlooks.of(
                DemoShelf.cellar().withServings(List.of()).withBatches(List.of(batch)),
                DemoShelf.temperatures(),
                DemoShelf.NOW);
    }

    private static PressureOutlook pressure(List<Optional<BurstCause>> bursts) {
        return outlook(bursts).batch(BATCH).mainLot().pressure();
    }

    @ParameterizedTest
    @MethodSource("answers")
    void noAnswerLowersTheStrongestBottleOrRaisesTheHeatLimit(Optional<BurstCause> answer) {
        PressureOutlook after = pressure(List.of(answer));
        assertTrue(
                after.strongestBottle().high() >= BEFORE.strongestBottle().high(),
                after.strongestBottle() + " after " + BEFORE.strongestBottle());
        assertTrue(after.heatLimitCelsius() <= BEFORE.heatLimitCelsius(), after + " after " + BEFORE);
    }

    @ParameterizedTest
    @MethodSource("answers")
    void noAnswerClearsTheLot(Optional<BurstCause> answer) {
        Verdict verdict = outlook(List.of(answer)).batch(BATCH).verdict();
        assertTrue(verdict.alert().compareTo(Alert.WATCH) >= 0);
    }

    @Test
    void overPrimedAndUnfinishedRaiseMost() {
        double unknown = pressure(List.of(Optional.of(BurstCause.UNKNOWN)))
                .strongestBottle()
                .high();
        for (BurstCause cause : List.of(BurstCause.OVER_PRIMED, BurstCause.UNFINISHED)) {
            assertTrue(pressure(List.of(Optional.of(cause))).strongestBottle().high() > unknown, cause.id());
        }
    }
}
