package undercroft;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import undercroft.app.bottling.PlanSamples;
import undercroft.catalogue.Cover;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.LightPlace;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.cellar.Priming;
import undercroft.cellar.Stay;
import undercroft.cellar.SugarDose;
import undercroft.cellar.TemperatureSource;

/** Small invented cellars to begin a journey in. */
final class JourneyCellars {
    private JourneyCellars() {}

    private static Place shed() {
        return new Place(
                "shed", "Shed", new TemperatureSource.FixedGuess(12, 2), 6, LightSetting.usual(LightPlace.DIM_CELLAR));
    }

    /** A plan of a bottling day, and two places for what comes of it. */
    static Cellar planned() {
        return PlanSamples.cellar().withPlace(shed());
    }

    /** One batch in a cupboard that nobody has measured, capped 55 days ago. */
    static Cellar cupboard(Instant now) {
        Instant capped = now.minus(Duration.ofDays(55));
        Lot lot = new Lot(
                "lot-1",
                "longneck-330",
                GlassColour.AMBER,
                40,
                330,
                false,
                List.of(new Stay("cupboard", capped, Cover.OPEN_CRATE)),
                List.of());
        Batch ale = PlanSamples.cellar().batch("pale");
        return PlanSamples.cellar()
                .withPlace(shed())
                .withBatches(List.of(new Batch(
                        "ale",
                        "Ale",
                        ale.beer(),
                        ale.yeast(),
                        new Priming(13.2, List.of(new SugarDose("sucrose", 80)), OptionalDouble.of(2.4), false),
                        ale.packaging(),
                        Optional.of(capped),
                        List.of(lot),
                        List.of(),
                        "",
                        Optional.empty(),
                        ale.leaveOutOfLearning())));
    }
}
