package undercroft.store.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.OptionalDouble;
import undercroft.catalogue.BottleClass;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Closure;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.Sugar;
import undercroft.quantity.Interval;
import undercroft.quantity.InvalidInput;

/** The user's own bottle makes and sugars as JSON. */
final class CatalogueJson {
    private CatalogueJson() {}

    static BottleType readBottle(JsonFields fields) {
        String id = fields.text("id");
        String name = fields.text("name");
        GlassColour colour = fields.listed(GlassColour.class, "colour");
        BottleClass bottleClass = fields.listed(BottleClass.class, "bottleClass");
        Closure closure = fields.listed(Closure.class, "closure");
        double fill = fields.number("fillMillilitres");
        double brimful = fields.number("brimfulMillilitres");
        double wall = fields.number("wallMillimetres");
        double empty = fields.number("emptyGrams");
        double body = fields.number("bodyMillimetres");
        OptionalDouble test = fields.optionalNumber("makerTestBar");
        return fields.made(
                () -> new BottleType(id, name, colour, bottleClass, closure, fill, brimful, wall, empty, body, test));
    }

    static ObjectNode writeBottle(BottleType type) {
        return new JsonWriter()
                .put("id", type.id())
                .put("name", type.label())
                .put("colour", type.colour())
                .put("bottleClass", type.bottleClass())
                .put("closure", type.closure())
                .put("fillMillilitres", type.fillMillilitres())
                .put("brimfulMillilitres", type.brimfulMillilitres())
                .put("wallMillimetres", type.wallMillimetres())
                .put("emptyGrams", type.emptyGrams())
                .put("bodyMillimetres", type.bodyMillimetres())
                .put("makerTestBar", type.makerTestBar())
                .node();
    }

    static Sugar readSugar(JsonFields fields) {
        String id = fields.text("id");
        String name = fields.text("name");
        Interval yield = fields.object("gramsCarbonDioxidePerGram", CatalogueJson::readInterval);
        String basis = fields.note("basis");
        String advice = fields.note("advice");
        return fields.made(() -> new Sugar(id, name, yield, basis, advice));
    }

    static ObjectNode writeSugar(Sugar sugar) {
        return new JsonWriter()
                .put("id", sugar.id())
                .put("name", sugar.label())
                .put("gramsCarbonDioxidePerGram", writeInterval(sugar.yield()))
                .put("basis", sugar.basis())
                .put("advice", sugar.advice())
                .node();
    }

    private static Interval readInterval(JsonFields fields) {
        double low = fields.number("low");
        double median = fields.number("median");
        double high = fields.number("high");
        return fields.made(() -> {
            if (!(low <= median && median <= high)) {
                throw new InvalidInput("", "store.fault.not-rising");
            }
            return Interval.of(low, median, high);
        });
    }

    private static ObjectNode writeInterval(Interval interval) {
        return new JsonWriter()
                .put("low", interval.low())
                .put("median", interval.median())
                .put("high", interval.high())
                .node();
    }
}
