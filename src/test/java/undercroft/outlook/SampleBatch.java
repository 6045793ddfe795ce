package undercroft.outlook;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.Cover;
import undercroft.catalogue.FillingMethod;
import undercroft.catalogue.Flocculation;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.cellar.Batch;
import undercroft.cellar.Beer;
import undercroft.cellar.Draw;
import undercroft.cellar.Lot;
import undercroft.cellar.Packaging;
import undercroft.cellar.Priming;
import undercroft.cellar.Reading;
import undercroft.cellar.Stay;
import undercroft.cellar.SugarDose;
import undercroft.cellar.Yeast;

/** An invented batch, put together step by step. */
final class SampleBatch {
    private final String id;
    private final String name;
    private final Instant capped;
    private final List<Lot> lots = new ArrayList<>();
    private final List<Reading> readings = new ArrayList<>();
    private double abvPercent = 5.2;
    private SugarDose perLitre = new SugarDose("sucrose", 5.8);
    private boolean planned;
    private boolean leftOut;

    SampleBatch(String id, String name, double ageDays) {
        this.id = id;
        this.name = name;
        this.capped = OutlookSamples.NOW.minus(Duration.ofMinutes(Math.round(ageDays * 24 * 60)));
    }

    /** Bottles in an open crate, {@code drawn} of them opened in the second half of the time since. */
    SampleBatch lot(String place, String bottle, GlassColour colour, int count, int drawn) {
        List<Draw> draws = new ArrayList<>();
        for (int i = 0; i < drawn; i += 4) {
            Instant at = capped.plus(Duration.ofHours(Math.round(
                    Duration.between(capped, OutlookSamples.NOW).toHours() * (0.5 + 0.45 * i / Math.max(1, drawn)))));
            draws.add(new Draw(at, Math.min(4, drawn - i), Draw.Fate.OPENED, i == 0 ? "first taste" : ""));
        }
        double fill = Double.parseDouble(bottle.substring(bottle.indexOf('-') + 1));
        List<Stay> stays = List.of(new Stay(place, capped, Cover.OPEN_CRATE));
        lots.add(new Lot("lot-" + (lots.size() + 1), bottle, colour, count, fill, false, stays, draws));
        return this;
    }

    /** The newest lot went to another place so many days ago. */
    SampleBatch moved(String place, double daysAgo) {
        int last = lots.size() - 1;
        Instant at = OutlookSamples.NOW.minus(Duration.ofMinutes(Math.round(daysAgo * 24 * 60)));
        lots.set(last, lots.get(last).movedTo(place, at, Cover.OPEN_CRATE));
        return this;
    }

    SampleBatch primed(String sugar, double gramsPerLitre) {
        perLitre = new SugarDose(sugar, gramsPerLitre);
        return this;
    }

    SampleBatch strong(double percent) {
        abvPercent = percent;
        return this;
    }

    SampleBatch read(Reading reading) {
        readings.add(reading);
        return this;
    }

    /** Teaches nothing about later ones. */
    SampleBatch leftOut() {
        leftOut = true;
        return this;
    }

    SampleBatch planned() {
        planned = true;
        return this;
    }

    Batch batch() {
        double litres = lots.stream()
                        .mapToDouble(lot -> lot.count() * lot.fillMillilitres())
                        .sum()
                / 1000;
        SugarDose dose = new SugarDose(perLitre.sugarId(), perLitre.grams() * litres);
        return new Batch(
                id,
                name,
                new Beer(BeerStyle.PALE_ALE, abvPercent, 30, 0, 20, 20, OptionalDouble.empty(), OptionalDouble.empty()),
                new Yeast(YeastStrain.ALE, YeastState.ORDINARY, Flocculation.ORDINARY, false),
                new Priming(litres, List.of(dose), OptionalDouble.of(2.4), false),
                Packaging.of(FillingMethod.CAREFUL),
                planned ? Optional.empty() : Optional.of(capped),
                lots,
                readings,
                "Dry and a little smoky.",
                Optional.empty(),
                leftOut);
    }
}
