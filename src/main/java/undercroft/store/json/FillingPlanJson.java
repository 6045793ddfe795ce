package undercroft.store.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import undercroft.catalogue.Cleaner;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.Sanitiser;
import undercroft.cellar.BottleStock;
import undercroft.cellar.DatedGravity;
import undercroft.cellar.FillingPlan;
import undercroft.cellar.StepState;

/** The draft of a bottling day as JSON. */
final class FillingPlanJson {
    private FillingPlanJson() {}

    static FillingPlan read(JsonFields fields) {
        double vesselLitres = fields.number("vesselLitres");
        double lossLitres = fields.number("lossLitres");
        double kegLitres = fields.number("kegLitres");
        List<BottleStock> bottles = fields.list("bottles", FillingPlanJson::readStock);
        double targetVolumes = fields.number("targetVolumes");
        OptionalDouble kegTargetVolumes = fields.optionalNumber("kegTargetVolumes");
        String sugar = fields.text("sugar");
        boolean perBottle = fields.flag("perBottle");
        Sanitiser sanitiser = fields.listed(Sanitiser.class, "sanitiser");
        OptionalDouble sanitiserRate = fields.optionalNumber("sanitiserMillilitresPerLitre");
        Cleaner cleaner = fields.listed(Cleaner.class, "cleaner");
        OptionalDouble cleanerRate = fields.optionalNumber("cleanerGramsPerLitre");
        List<DatedGravity> gravities = fields.optionalList("gravities", FillingPlanJson::readGravity);
        List<StepState> steps = fields.optionalList("steps", FillingPlanJson::readStep);
        return fields.made(() -> new FillingPlan(
                new FillingPlan.Shares(vesselLitres, lossLitres, kegLitres),
                bottles,
                new FillingPlan.Wish(targetVolumes, kegTargetVolumes, sugar, perBottle),
                new FillingPlan.Wash(sanitiser, sanitiserRate, cleaner, cleanerRate),
                gravities,
                steps));
    }

    static ObjectNode write(FillingPlan plan) {
        return new JsonWriter()
                .put("vesselLitres", plan.shares().vesselLitres())
                .put("lossLitres", plan.shares().lossLitres())
                .put("kegLitres", plan.shares().kegLitres())
                .put("bottles", plan.bottles(), FillingPlanJson::writeStock)
                .put("targetVolumes", plan.wish().targetVolumes())
                .put("kegTargetVolumes", plan.wish().kegTargetVolumes())
                .put("sugar", plan.wish().sugarId())
                .put("perBottle", plan.wish().perBottle())
                .put("sanitiser", plan.wash().sanitiser())
                .put("sanitiserMillilitresPerLitre", plan.wash().sanitiserMillilitresPerLitre())
                .put("cleaner", plan.wash().cleaner())
                .put("cleanerGramsPerLitre", plan.wash().cleanerGramsPerLitre())
                .put("gravities", plan.gravities(), FillingPlanJson::writeGravity)
                .put("steps", plan.steps(), FillingPlanJson::writeStep)
                .node();
    }

    private static BottleStock readStock(JsonFields fields) {
        String bottle = fields.text("bottle");
        GlassColour colour = fields.listed(GlassColour.class, "colour");
        boolean scuffed = fields.flag("scuffed");
        int available = fields.whole("available");
        return fields.made(() -> new BottleStock(bottle, colour, scuffed, available));
    }

    private static ObjectNode writeStock(BottleStock stock) {
        return new JsonWriter()
                .put("bottle", stock.bottleTypeId())
                .put("colour", stock.colour())
                .put("scuffed", stock.scuffed())
                .put("available", stock.available())
                .node();
    }

    private static DatedGravity readGravity(JsonFields fields) {
        LocalDate day = fields.parsed("day", LocalDate::parse, "store.fault.day");
        double specificGravity = fields.number("specificGravity");
        boolean includesPriming = fields.optionalFlag("includesPriming");
        return fields.made(() -> new DatedGravity(day, specificGravity, includesPriming));
    }

    private static ObjectNode writeGravity(DatedGravity gravity) {
        return new JsonWriter()
                .put("day", gravity.day().toString())
                .put("specificGravity", gravity.specificGravity())
                .putTold("includesPriming", gravity.includesPriming())
                .node();
    }

    private static StepState readStep(JsonFields fields) {
        String id = fields.text("id");
        boolean done = fields.flag("done");
        Optional<Instant> timerFrom = fields.optionalInstant("timerFrom");
        return fields.made(() -> new StepState(id, done, timerFrom));
    }

    private static ObjectNode writeStep(StepState step) {
        return new JsonWriter()
                .put("id", step.id())
                .put("done", step.done())
                .put("timerFrom", step.timerFrom().map(Instant::toString).orElse(null))
                .node();
    }
}
