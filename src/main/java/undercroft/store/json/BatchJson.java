package undercroft.store.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.FillingMethod;
import undercroft.catalogue.Flocculation;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.cellar.Batch;
import undercroft.cellar.Beer;
import undercroft.cellar.FillingPlan;
import undercroft.cellar.Lot;
import undercroft.cellar.Packaging;
import undercroft.cellar.Priming;
import undercroft.cellar.PrintedLabel;
import undercroft.cellar.Reading;
import undercroft.cellar.SugarDose;
import undercroft.cellar.Yeast;

/** A batch as JSON, with its beer, yeast and priming. */
final class BatchJson {
    private BatchJson() {}

    static Batch read(JsonFields fields) {
        String id = fields.text("id");
        String name = fields.text("name");
        Beer beer = fields.object("beer", BatchJson::readBeer);
        Yeast yeast = fields.object("yeast", BatchJson::readYeast);
        Priming priming = fields.object("priming", BatchJson::readPriming);
        FillingMethod method = fields.listed(FillingMethod.class, "fillingMethod");
        OptionalDouble beerCelsius = fields.optionalNumber("beerCelsiusAtCapping");
        OptionalDouble kegged = fields.optionalNumber("keggedLitres");
        Optional<Instant> cappedAt = fields.optionalInstant("cappedAt");
        List<Lot> lots = fields.list("lots", LotJson::read);
        List<Reading> readings = fields.optionalList("readings", ReadingJson::read);
        String notes = fields.note("notes");
        Optional<FillingPlan> plan = Optional.ofNullable(fields.optionalObject("plan", FillingPlanJson::read, null));
        Optional<PrintedLabel> label = Optional.ofNullable(fields.optionalObject("label", BatchJson::readLabel, null));
        boolean leaveOut = fields.optionalFlag("leaveOutOfLearning");
        return fields.made(() -> new Batch(
                id,
                name,
                beer,
                yeast,
                priming,
                new Packaging(method, beerCelsius, kegged.orElse(0), label),
                cappedAt,
                lots,
                readings,
                notes,
                plan,
                leaveOut));
    }

    static ObjectNode write(Batch batch) {
        JsonWriter writer = new JsonWriter()
                .put("id", batch.id())
                .put("name", batch.name())
                .put("beer", writeBeer(batch.beer()))
                .put("yeast", writeYeast(batch.yeast()))
                .put("priming", writePriming(batch.priming()))
                .put("fillingMethod", batch.fillingMethod())
                .putTold("beerCelsiusAtCapping", batch.packaging().beerCelsiusAtCapping())
                .putTold("keggedLitres", aboveZero(batch.packaging().keggedLitres()))
                .put("cappedAt", batch.cappedAt().map(Instant::toString).orElse(null))
                .put("lots", batch.lots(), LotJson::write)
                .put("readings", batch.readings(), ReadingJson::write)
                .put("notes", batch.notes())
                .putTold("leaveOutOfLearning", batch.leaveOutOfLearning());
        batch.packaging().label().ifPresent(label -> writer.put("label", writeLabel(label)));
        batch.plan().ifPresent(plan -> writer.put("plan", FillingPlanJson.write(plan)));
        return writer.node();
    }

    /** A label without a limit says that no storage temperature passes it. */
    private static PrintedLabel readLabel(JsonFields fields) {
        Instant at = fields.instant("at");
        OptionalDouble limit = fields.optionalNumber("heatLimitCelsius");
        return fields.made(() -> new PrintedLabel(at, limit.orElse(Double.POSITIVE_INFINITY)));
    }

    private static ObjectNode writeLabel(PrintedLabel label) {
        double limit = label.heatLimitCelsius();
        return new JsonWriter()
                .put("at", label.at().toString())
                .putTold(
                        "heatLimitCelsius",
                        Double.isInfinite(limit) ? OptionalDouble.empty() : OptionalDouble.of(limit))
                .node();
    }

    private static OptionalDouble aboveZero(double litres) {
        return litres > 0 ? OptionalDouble.of(litres) : OptionalDouble.empty();
    }

    private static Beer readBeer(JsonFields fields) {
        BeerStyle kind = fields.listed(BeerStyle.class, "style");
        double abvPercent = fields.number("abvPercent");
        double bitternessIbu = fields.number("bitternessIbu");
        double reducedHopShare = fields.number("reducedHopShare");
        double colourEbc = fields.number("colourEbc");
        double warmestCelsius = fields.number("warmestCelsius");
        OptionalDouble atBottling = fields.optionalNumber("specificGravityAtBottling");
        boolean includesPriming = fields.optionalFlag("gravityIncludesPriming");
        OptionalDouble expected = fields.optionalNumber("expectedFinalSpecificGravity");
        return fields.made(() -> new Beer(
                kind,
                abvPercent,
                bitternessIbu,
                reducedHopShare,
                colourEbc,
                warmestCelsius,
                atBottling,
                includesPriming,
                expected));
    }

    private static ObjectNode writeBeer(Beer beer) {
        return new JsonWriter()
                .put("style", beer.kind())
                .put("abvPercent", beer.abvPercent())
                .put("bitternessIbu", beer.bitternessIbu())
                .put("reducedHopShare", beer.reducedHopShare())
                .put("colourEbc", beer.colourEbc())
                .put("warmestCelsius", beer.warmestCelsius())
                .put("specificGravityAtBottling", beer.gravityAtBottling())
                .putTold("gravityIncludesPriming", beer.gravityIncludesPriming())
                .put("expectedFinalSpecificGravity", beer.expectedFinalGravity())
                .node();
    }

    private static Yeast readYeast(JsonFields fields) {
        YeastStrain strain = fields.listed(YeastStrain.class, "strain");
        YeastState state = fields.listed(YeastState.class, "state");
        Flocculation flocculation = fields.listed(Flocculation.class, "flocculation");
        boolean fermentsDextrins = fields.flag("fermentsDextrins");
        return fields.made(() -> new Yeast(strain, state, flocculation, fermentsDextrins));
    }

    private static ObjectNode writeYeast(Yeast yeast) {
        return new JsonWriter()
                .put("strain", yeast.strain())
                .put("state", yeast.state())
                .put("flocculation", yeast.flocculation())
                .put("fermentsDextrins", yeast.fermentsDextrins())
                .node();
    }

    private static Priming readPriming(JsonFields fields) {
        double beerLitres = fields.number("beerLitres");
        List<SugarDose> sugars = fields.list("sugars", BatchJson::readDose);
        OptionalDouble targetVolumes = fields.optionalNumber("targetVolumes");
        boolean perBottle = fields.flag("perBottle");
        return fields.made(() -> new Priming(beerLitres, sugars, targetVolumes, perBottle));
    }

    private static ObjectNode writePriming(Priming priming) {
        return new JsonWriter()
                .put("beerLitres", priming.beerLitres())
                .put("sugars", priming.doses(), BatchJson::writeDose)
                .put("targetVolumes", priming.targetVolumes())
                .put("perBottle", priming.perBottle())
                .node();
    }

    private static SugarDose readDose(JsonFields fields) {
        String sugar = fields.text("sugar");
        double grams = fields.number("grams");
        return fields.made(() -> new SugarDose(sugar, grams));
    }

    private static ObjectNode writeDose(SugarDose dose) {
        return new JsonWriter()
                .put("sugar", dose.sugarId())
                .put("grams", dose.grams())
                .node();
    }
}
