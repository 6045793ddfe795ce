package undercroft.cellar;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import undercroft.catalogue.Cover;
import undercroft.catalogue.GlassColour;
import undercroft.quantity.Check;
import undercroft.quantity.InvalidInput;

/**
 * Some bottles of one make and colour from one batch that stand together.
 *
 * @param count bottles at the start
 * @param fillMillilitres beer in each
 * @param scuffed true for reused or visibly worn bottles, which are trusted with less
 * @param gauge of the newest gauge experiment on one of its bottles
 * @param stays where the lot has been, in order of time; the first begins when it was capped
 */
public record Lot(
        String id,
        String bottleTypeId,
        GlassColour colour,
        int count,
        double fillMillilitres,
        boolean scuffed,
        List<Stay> stays,
        List<Draw> draws,
        Optional<FittedGauge> gauge) {
    public Lot {
        Check.id("id", id);
        Check.id("bottle", bottleTypeId);
        Check.within("count", count, 1, 10_000);
        Check.within("fillMillilitres", fillMillilitres, 50, 10_000, "mL");
        stays = List.copyOf(stays);
        draws = List.copyOf(draws);
        if (stays.isEmpty()) {
            throw new InvalidInput("stays", "cellar.fault.no-stay");
        }
        for (int i = 1; i < stays.size(); i++) {
            if (!stays.get(i).from().isAfter(stays.get(i - 1).from())) {
                throw new InvalidInput("stays[" + i + "].from", "cellar.fault.stay-order");
            }
        }
        int drawn = 0;
        for (int i = 0; i < draws.size(); i++) {
            drawn += draws.get(i).count();
            if (drawn > count) {
                throw new InvalidInput(
                        "draws[" + i + "].count",
                        "cellar.fault.draw-too-many",
                        count - drawn + draws.get(i).count());
            }
            if (draws.get(i).at().isBefore(stays.get(0).from())) {
                throw new InvalidInput("draws[" + i + "].at", "cellar.fault.before-capped");
            }
        }
        if (gauge.isPresent() && gauge.get().from().isBefore(stays.get(0).from())) {
            throw new InvalidInput("gauge.from", "cellar.fault.before-capped");
        }
    }

    /** A lot on which no gauge sits. */
    public Lot(
            String id,
            String bottleTypeId,
            GlassColour colour,
            int count,
            double fillMillilitres,
            boolean scuffed,
            List<Stay> stays,
            List<Draw> draws) {
        this(id, bottleTypeId, colour, count, fillMillilitres, scuffed, stays, draws, Optional.empty());
    }

    public Lot withGauge(FittedGauge fitted) {
        return new Lot(id, bottleTypeId, colour, count, fillMillilitres, scuffed, stays, draws, Optional.of(fitted));
    }

    /** Bottles that are left after all draws. */
    public int left() {
        return count - draws.stream().mapToInt(Draw::count).sum();
    }

    /** Bottles that were left at an instant. */
    public int leftAt(Instant instant) {
        return count
                - draws.stream()
                        .filter(draw -> !draw.at().isAfter(instant))
                        .mapToInt(Draw::count)
                        .sum();
    }

    /** The stay at an instant; the first one for any time before it. */
    public Stay stayAt(Instant instant) {
        Stay current = stays.get(0);
        for (Stay stay : stays) {
            if (!stay.from().isAfter(instant)) {
                current = stay;
            }
        }
        return current;
    }

    public Lot withDraw(Draw draw) {
        List<Draw> all = new ArrayList<>(draws);
        all.add(draw);
        return new Lot(id, bottleTypeId, colour, count, fillMillilitres, scuffed, stays, all, gauge);
    }

    public Lot withDraws(List<Draw> all) {
        return new Lot(id, bottleTypeId, colour, count, fillMillilitres, scuffed, stays, all, gauge);
    }

    /** The whole lot moved; later stays, if any, are kept out: a move is the newest stay. */
    public Lot movedTo(String placeId, Instant at, Cover cover) {
        List<Stay> all = new ArrayList<>(stays);
        all.add(new Stay(placeId, at, cover));
        return new Lot(id, bottleTypeId, colour, count, fillMillilitres, scuffed, all, draws, gauge);
    }

    /** Part of the lot under a new id, with the same history and no draws of its own. */
    public Lot part(String newId, int bottles) {
        if (bottles > left()) {
            throw new InvalidInput("count", "cellar.fault.move-too-many", left());
        }
        return new Lot(newId, bottleTypeId, colour, bottles, fillMillilitres, scuffed, stays, List.of());
    }

    /** What stays behind when {@code bottles} were parted off. */
    public Lot without(int bottles) {
        return new Lot(id, bottleTypeId, colour, count - bottles, fillMillilitres, scuffed, stays, draws, gauge);
    }
}
