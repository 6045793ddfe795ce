package undercroft.bottling;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import undercroft.calc.priming.Dosing;
import undercroft.catalogue.Closure;

/**
 * What has to lie ready.
 *
 * @param closures caps, corks and washers to sanitise, with spares: a twentieth more, at least five
 * @param spareBottles clean bottles beyond those planned: one breaks, one is forgotten, one takes the rest
 * @param equipment tools, for a person
 */
public record Supplies(Map<Closure, Integer> closures, int spareBottles, List<String> equipment) {
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

    private static List<String> equipment(BottlingPlan plan, Map<Closure, Integer> bottles) {
        List<String> equipment = new ArrayList<>(List.of(
                "hydrometer and jar",
                "scale that shows single grams",
                "siphon or tap with a tube long enough to reach the bottom",
                "bottle filler that reaches the bottom of the bottle"));
        if (plan.dosing() == Dosing.SYRUP) {
            equipment.add("small pan and a spoon for the syrup");
            equipment.add("second vessel to mix beer and syrup in");
        } else {
            equipment.add("dry funnel and a spoon or measure for the sugar");
        }
        for (Closure closure : Closure.values()) {
            if (bottles.containsKey(closure)) {
                equipment.add(tool(closure));
            }
        }
        if (plan.filling().shares().kegLitres() > 0) {
            equipment.add("keg, cleaned, with sound seals");
        }
        equipment.addAll(List.of("gloves and eye cover", "towel, brush, bottle rack", "labels and a pencil"));
        return equipment;
    }

    private static String tool(Closure closure) {
        return switch (closure) {
            case CROWN -> "capper; a crimped cap measures 28.6 to 28.8 mm across";
            case SWING_TOP -> "new washers for swing-tops whose own are hard or cracked";
            case WIRED_CORK -> "corker, wires and pliers";
            case SCREW -> "undamaged screw caps of the bottles' own size";
        };
    }
}
