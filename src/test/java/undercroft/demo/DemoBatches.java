package undercroft.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.BottleFeel;
import undercroft.catalogue.Cover;
import undercroft.catalogue.FillingMethod;
import undercroft.catalogue.Flocculation;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.cellar.Batch;
import undercroft.cellar.Beer;
import undercroft.cellar.BottleStock;
import undercroft.cellar.DatedGravity;
import undercroft.cellar.Draw;
import undercroft.cellar.FillingPlan;
import undercroft.cellar.Lot;
import undercroft.cellar.Priming;
import undercroft.cellar.Reading;
import undercroft.cellar.Stay;
import undercroft.cellar.SugarDose;
import undercroft.cellar.Yeast;

/** The demo's batches: one for each thing that can happen on a shelf. All of it is invented. */
final class DemoBatches {
    private static final Yeast ALE = new Yeast(YeastStrain.ALE, YeastState.ORDINARY, Flocculation.FLOCCULENT, false);
    private static final Yeast POWDERY = new Yeast(YeastStrain.ALE, YeastState.ORDINARY, Flocculation.POWDERY, false);

    private DemoBatches() {}

    static List<Batch> batches() {
        return List.of(
                overprimed(),
                green(),
                stalled(),
                honey(),
                young(),
                clearing(),
                strong(),
                ready(),
                partInFridge(),
                tired(),
                almostEmpty(),
                gone(),
                planned());
    }

    /** Too much sugar in worn bottles under a hot roof. */
    private static Batch overprimed() {
        Instant capped = at("2026-06-28T15:00:00Z");
        Lot lot = lot("box", "longneck-330", GlassColour.FLINT, 54, capped, "loft", Cover.CLOSED_BOX, true)
                .withDraws(List.of(
                        new Draw(at("2026-07-26T18:00:00Z"), 3, Draw.Fate.OPENED, "lively, foams over"),
                        new Draw(at("2026-08-12T13:30:00Z"), 1, Draw.Fate.BURST, "heard it from the stairs"),
                        new Draw(at("2026-08-29T19:00:00Z"), 1, Draw.Fate.OPENED, "over the sink")));
        return batch("millrace-saison", "Millrace Saison", beer(BeerStyle.SAISON_TRIPEL, 6.2, 26, 9, 24), ALE)
                .primed(18.2, "dextrose", 226)
                .capped(capped, lot)
                .notes("Weighed twice by mistake? The jar was lighter than it should be.")
                .make();
    }

    private static Batch green() {
        Instant capped = at("2026-10-04T11:00:00Z");
        Lot lot = lot("sill", "green-500", GlassColour.GREEN, 20, capped, "stair-cupboard", Cover.CLOSED_BOX, false)
                .movedTo("kitchen-sill", at("2026-11-08T09:30:00Z"), Cover.NONE)
                .withDraws(opened("2026-11-01T18:30:00Z", 2, "2026-11-14T19:00:00Z", 1));
        return batch("green-lane-blond", "Green Lane Blond", beer(BeerStyle.WHEAT, 4.9, 18, 7, 20), POWDERY)
                .primed(10.4, "sucrose", 62)
                .capped(capped, lot)
                .make();
    }

    private static Batch stalled() {
        Instant capped = at("2026-11-01T13:00:00Z");
        Lot lot = lot("crate", "returnable-500", GlassColour.AMBER, 38, capped, "outhouse", Cover.OPEN_CRATE, false);
        return batch("thornfield-mild", "Thornfield Mild", beer(BeerStyle.AMBER_BROWN, 3.7, 20, 38, 19), ALE)
                .primed(19.2, "sucrose", 84)
                .capped(capped, lot)
                .read(new Reading.Squeeze(at("2026-11-12T17:00:00Z"), "crate", BottleFeel.YIELDING))
                .make();
    }

    private static Batch honey() {
        Instant capped = at("2026-10-24T14:00:00Z");
        Lot lot = lot("box", "swingtop-500", GlassColour.AMBER, 30, capped, "stair-cupboard", Cover.CLOSED_BOX, false);
        return batch("larch-honey-ale", "Larch Honey Ale", beer(BeerStyle.PALE_ALE, 5.4, 24, 14, 20), ALE)
                .primed(15.3, "honey", 196)
                .capped(capped, lot)
                .notes("Honey from the market, no label.")
                .make();
    }

    private static Batch young() {
        Instant capped = at("2026-11-15T15:30:00Z");
        Lot lot =
                lot("crate", "longneck-330", GlassColour.AMBER, 60, capped, "stair-cupboard", Cover.OPEN_CRATE, false);
        return batch("lock-gate-bitter", "Lock Gate Bitter", beer(BeerStyle.PALE_ALE, 4.3, 34, 18, 19.5), ALE)
                .primed(20.1, "dextrose", 108)
                .capped(capped, lot)
                .read(new Reading.Gauge(at("2026-11-19T18:00:00Z"), "crate", "gauge bottle 1", 1.1))
                .make();
    }

    private static Batch clearing() {
        Instant capped = at("2026-11-05T12:00:00Z");
        Lot lot = lot("crate", "longneck-355", GlassColour.AMBER, 48, capped, "kitchen-sill", Cover.CLOSED_BOX, false);
        return batch("chalk-pit-amber", "Chalk Pit Amber", beer(BeerStyle.AMBER_BROWN, 5.1, 30, 24, 20), ALE)
                .primed(17.4, "dextrose", 104)
                .capped(capped, lot)
                .read(new Reading.Gauge(at("2026-11-09T18:00:00Z"), "crate", "gauge bottle 2", 1.2))
                .read(new Reading.Gauge(at("2026-11-13T18:00:00Z"), "crate", "gauge bottle 2", 2.2))
                .make();
    }

    private static Batch strong() {
        Instant capped = at("2026-09-20T10:00:00Z");
        Yeast weary = new Yeast(YeastStrain.ALE, YeastState.LONG_COLD, Flocculation.ORDINARY, false);
        Lot lot = lot(
                "row", "sparkling-375", GlassColour.DARK_GREEN, 28, capped, "stair-cupboard", Cover.CLOSED_BOX, false);
        return batch("gable-strong", "Gable Strong", beer(BeerStyle.STRONG_DARK, 10.6, 42, 70, 21), weary)
                .primed(10.7, "sucrose", 58)
                .capped(capped, lot)
                .read(new Reading.Opened(at("2026-10-25T19:00:00Z"), "row", PerceivedCarbonation.FAINT))
                .make();
    }

    private static Batch ready() {
        Instant capped = at("2026-09-05T15:00:00Z");
        Lot lot = lot(
                        "crate",
                        "returnable-500",
                        GlassColour.AMBER,
                        42,
                        capped,
                        "stair-cupboard",
                        Cover.OPEN_CRATE,
                        false)
                .withDraws(opened("2026-10-03T18:00:00Z", 6, "2026-10-24T18:00:00Z", 8, "2026-11-13T18:30:00Z", 5));
        return batch("quarry-porter", "Quarry Porter", beer(BeerStyle.PORTER_STOUT, 5.6, 32, 75, 21), ALE)
                .primed(21.3, "sucrose", 106)
                .capped(capped, lot)
                .read(new Reading.Gauge(at("2026-09-09T18:00:00Z"), "crate", "gauge bottle 1", 0.9))
                .read(new Reading.Gauge(at("2026-09-14T18:00:00Z"), "crate", "gauge bottle 1", 1.7))
                .read(new Reading.Gauge(at("2026-09-24T18:00:00Z"), "crate", "gauge bottle 1", 2.1))
                .read(new Reading.Opened(at("2026-10-03T19:00:00Z"), "crate", PerceivedCarbonation.FULL))
                .make();
    }

    private static Batch partInFridge() {
        Instant capped = at("2026-10-06T16:00:00Z");
        Lot lot = lot("crate", "longneck-330", GlassColour.AMBER, 56, capped, "stair-cupboard", Cover.OPEN_CRATE, false)
                .withDraws(opened("2026-10-31T18:00:00Z", 4));
        return batch("bramble-wheat", "Bramble Wheat", beer(BeerStyle.WHEAT, 5.0, 14, 9, 20.5), POWDERY)
                .primed(18.6, "dextrose", 148)
                .capped(capped, lot)
                .make()
                .withMove("crate", 12, "fridge", at("2026-11-14T10:00:00Z"), Cover.NONE);
    }

    private static Batch tired() {
        Instant capped = at("2026-03-21T14:00:00Z");
        Lot lot = lot("box", "longneck-330", GlassColour.AMBER, 58, capped, "loft", Cover.CLOSED_BOX, false)
                .withDraws(opened(
                        "2026-05-02T18:00:00Z",
                        10,
                        "2026-06-13T18:00:00Z",
                        14,
                        "2026-07-18T18:00:00Z",
                        12,
                        "2026-09-19T18:00:00Z",
                        8));
        return batch("first-cut-pale", "First Cut Pale", beer(BeerStyle.HOPPY_PALE, 5.5, 48, 10, 20), ALE)
                .primed(19.3, "dextrose", 118)
                .capped(capped, lot)
                .make();
    }

    private static Batch almostEmpty() {
        Instant capped = at("2026-07-25T13:00:00Z");
        Lot lot = lot("shelf", "swingtop-500", GlassColour.AMBER, 36, capped, "stair-cupboard", Cover.CLOSED_BOX, false)
                .withDraws(opened(
                        "2026-08-22T18:00:00Z",
                        9,
                        "2026-09-12T18:00:00Z",
                        8,
                        "2026-10-10T18:00:00Z",
                        9,
                        "2026-11-06T18:00:00Z",
                        8));
        return batch("rookery-brown", "Rookery Brown", beer(BeerStyle.AMBER_BROWN, 4.8, 25, 45, 20), ALE)
                .primed(18.4, "brown-sugar", 92)
                .capped(capped, lot)
                .make();
    }

    private static Batch gone() {
        Instant capped = at("2026-04-11T13:00:00Z");
        Lot lot = lot("shelf", "longneck-330", GlassColour.AMBER, 24, capped, "stair-cupboard", Cover.CLOSED_BOX, false)
                .withDraws(opened("2026-05-30T18:00:00Z", 12, "2026-06-27T18:00:00Z", 12));
        return batch("may-morning", "May Morning", beer(BeerStyle.WHEAT, 4.6, 16, 8, 19), ALE)
                .primed(8.1, "dextrose", 60)
                .capped(capped, lot)
                .make();
    }

    private static Batch planned() {
        Beer stout =
                new Beer(BeerStyle.PORTER_STOUT, 5.9, 36, 0, 90, 20, OptionalDouble.empty(), OptionalDouble.of(1.015));
        FillingPlan plan = FillingPlan.draft(19, 2.2)
                .withShares(new FillingPlan.Shares(19, 1, 0))
                .withBottles(List.of(
                        new BottleStock("returnable-500", GlassColour.AMBER, false, 24),
                        new BottleStock("longneck-330", GlassColour.AMBER, false, 16),
                        new BottleStock("pet-500", GlassColour.PET_AMBER, false, 1)))
                .withGravities(List.of(
                        new DatedGravity(LocalDate.of(2026, 11, 15), 1.016),
                        new DatedGravity(LocalDate.of(2026, 11, 18), 1.015),
                        new DatedGravity(LocalDate.of(2026, 11, 21), 1.015)));
        return Batch.planned("lantern-stout", "Lantern Stout", stout, ALE, plan);
    }

    private static Beer beer(BeerStyle kind, double abv, double ibu, double ebc, double warmest) {
        return new Beer(kind, abv, ibu, 0, ebc, warmest, OptionalDouble.empty(), OptionalDouble.empty());
    }

    private static Lot lot(
            String id,
            String type,
            GlassColour colour,
            int count,
            Instant capped,
            String place,
            Cover cover,
            boolean worn) {
        double fill = Double.parseDouble(type.replaceAll(".*-", ""));
        return new Lot(id, type, colour, count, fill, worn, List.of(new Stay(place, capped, cover)), List.of());
    }

    /** Draws given as instants and counts in turn. */
    private static List<Draw> opened(Object... instantsAndCounts) {
        List<Draw> draws = new ArrayList<>();
        for (int i = 0; i < instantsAndCounts.length; i += 2) {
            draws.add(new Draw(
                    at((String) instantsAndCounts[i]), (Integer) instantsAndCounts[i + 1], Draw.Fate.OPENED, ""));
        }
        return draws;
    }

    private static Instant at(String instant) {
        return Instant.parse(instant);
    }

    private static Draft batch(String id, String name, Beer beer, Yeast yeast) {
        return new Draft(id, name, beer, yeast);
    }

    /** A batch in the making. */
    private static final class Draft {
        private final String id;
        private final String name;
        private final Beer beer;
        private final Yeast yeast;
        private final List<Lot> lots = new ArrayList<>();
        private final List<Reading> readings = new ArrayList<>();
        private Priming priming;
        private Optional<Instant> capped = Optional.empty();
        private String notes = "";

        Draft(String id, String name, Beer beer, Yeast yeast) {
            this.id = id;
            this.name = name;
            this.beer = beer;
            this.yeast = yeast;
        }

        Draft primed(double litres, String sugar, double grams) {
            priming = new Priming(litres, List.of(new SugarDose(sugar, grams)), OptionalDouble.empty(), false);
            return this;
        }

        Draft capped(Instant when, Lot lot) {
            capped = Optional.of(when);
            lots.add(lot);
            return this;
        }

        Draft read(Reading reading) {
            readings.add(reading);
            return this;
        }

        Draft notes(String text) {
            notes = text;
            return this;
        }

        Batch make() {
            return new Batch(id, name, beer, yeast, priming, FillingMethod.CAREFUL, capped, lots, readings, notes);
        }
    }
}
