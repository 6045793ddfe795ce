package undercroft.bottling;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import undercroft.calc.priming.Dosing;
import undercroft.catalogue.Closure;
import undercroft.quantity.Phrase;

/**
 * What has to lie ready.
 *
 * @param closures caps, corks and washers to sanitise, with spares: a twentieth more, at least five
 * @param spareBottles clean bottles beyond those planned: one breaks, one is forgotten, one takes the rest
 * @param equipment tools
 */
public record Supplies(Map<Closure, Integer> closures, int spareBottles, List<Phrase> equipment) {
    private static final int SPARE_BOTTLES = 3;
    private static final int LEAST_SPARE_CAPS = 5;
    private static final int ONE_SPARE_CAP_FOR = 20;

    public Supplies {
        closures = Map.copyOf(closures);
        equipment = List.copyOf(equipment);
    }

    static Supplies of(BottlingPlan plan, FillOrder order) {
        Map<Closure, Integer> bottles = new EnumMap<>(Closure.class);
        for (FillRow row : order.rows()) {
            if (row.filled() > 0) {
                bottles.merge(row.bottle().closure(), row.filled(), Integer::sum);
            }
        }
        Map<Closure, Integer> closures = new EnumMap<>(Closure.class);
        bottles.forEach((closure, count) -> closures.put(closure, withSpares(count)));
        return new Supplies(closures, SPARE_BOTTLES, equipment(plan, bottles));
    }

    /** A count of caps with spares. */
    static int withSpares(int count) {
        return count + Math.max(LEAST_SPARE_CAPS, (count + ONE_SPARE_CAP_FOR - 1) / ONE_SPARE_CAP_FOR);
    }

    private static List<Phrase> equipment(BottlingPlan plan, Map<Closure, Integer> bottles) {
        List<Phrase> equipment = new ArrayList<>(tools("hydrometer", "scale", "siphon", "filler"));
        equipment.addAll(plan.dosing() == Dosing.SYRUP ? tools("pan", "vessel") : tools("funnel"));
        for (Closure closure : Closure.values()) {
            if (bottles.containsKey(closure)) {
                equipment.addAll(tools(closure.id()));
            }
        }
        if (plan.filling().shares().kegLitres() > 0) {
            equipment.addAll(tools("keg"));
        }
        equipment.addAll(tools("gloves", "towel", "labels"));
        return equipment;
    }

    private static List<Phrase> tools(String... names) {
        return Stream.of(names).map(name -> Phrase.of("bottling.tool." + name)).toList();
    }
}
