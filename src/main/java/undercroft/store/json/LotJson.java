package undercroft.store.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import undercroft.catalogue.Cover;
import undercroft.catalogue.GlassColour;
import undercroft.cellar.BurstCause;
import undercroft.cellar.Draw;
import undercroft.cellar.FittedGauge;
import undercroft.cellar.Lot;
import undercroft.cellar.PressureTopic;
import undercroft.cellar.Stay;

/** A lot as JSON, with its stays and draws. */
final class LotJson {
    private LotJson() {}

    static Lot read(JsonFields fields) {
        String id = fields.text("id");
        String bottle = fields.text("bottle");
        GlassColour colour = fields.listed(GlassColour.class, "colour");
        int count = fields.whole("count");
        double fillMillilitres = fields.number("fillMillilitres");
        boolean scuffed = fields.flag("scuffed");
        List<Stay> stays = fields.list("stays", LotJson::readStay);
        List<Draw> draws = fields.optionalList("draws", LotJson::readDraw);
        Optional<FittedGauge> gauge = Optional.ofNullable(fields.optionalObject("gauge", LotJson::readGauge, null));
        return fields.made(() -> new Lot(id, bottle, colour, count, fillMillilitres, scuffed, stays, draws, gauge));
    }

    static ObjectNode write(Lot lot) {
        JsonWriter writer = new JsonWriter()
                .put("id", lot.id())
                .put("bottle", lot.bottleTypeId())
                .put("colour", lot.colour())
                .put("count", lot.count())
                .put("fillMillilitres", lot.fillMillilitres())
                .put("scuffed", lot.scuffed())
                .put("stays", lot.stays(), LotJson::writeStay)
                .put("draws", lot.draws(), LotJson::writeDraw);
        lot.gauge().ifPresent(gauge -> writer.put("gauge", writeGauge(gauge)));
        return writer.node();
    }

    private static FittedGauge readGauge(JsonFields fields) {
        String instrument = fields.text("instrument");
        Instant from = fields.instant("from");
        Optional<Instant> opened = fields.optionalInstant("opened");
        Optional<PressureTopic> topic =
                Optional.ofNullable(fields.optionalObject("topic", FollowedJson::readPressure, null));
        return fields.made(() -> new FittedGauge(instrument, from, opened, topic));
    }

    private static ObjectNode writeGauge(FittedGauge gauge) {
        JsonWriter writer = new JsonWriter()
                .put("instrument", gauge.instrument())
                .put("from", gauge.from().toString());
        gauge.topic().ifPresent(topic -> writer.put("topic", FollowedJson.write(topic)));
        gauge.opened().ifPresent(at -> writer.put("opened", at.toString()));
        return writer.node();
    }

    private static Stay readStay(JsonFields fields) {
        String place = fields.text("place");
        Instant from = fields.instant("from");
        Cover cover = fields.listed(Cover.class, "cover");
        return fields.made(() -> new Stay(place, from, cover));
    }

    private static ObjectNode writeStay(Stay stay) {
        return new JsonWriter()
                .put("place", stay.placeId())
                .put("from", stay.from().toString())
                .put("cover", stay.cover())
                .node();
    }

    private static Draw readDraw(JsonFields fields) {
        Instant at = fields.instant("at");
        int count = fields.whole("count");
        Draw.Fate fate = fields.listed(Draw.Fate.class, "fate");
        String note = fields.note("note");
        Optional<BurstCause> cause = fields.optionalListed(BurstCause.class, "cause");
        return fields.made(() -> new Draw(at, count, fate, note, cause));
    }

    private static ObjectNode writeDraw(Draw draw) {
        JsonWriter writer = new JsonWriter()
                .put("at", draw.at().toString())
                .put("count", draw.count())
                .put("fate", draw.fate())
                .put("note", draw.note());
        draw.cause().ifPresent(cause -> writer.put("cause", cause));
        return writer.node();
    }
}
