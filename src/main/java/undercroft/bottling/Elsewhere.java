package undercroft.bottling;

import java.util.ArrayList;
import java.util.List;
import undercroft.catalogue.BottleType;
import undercroft.cellar.Batch;
import undercroft.cellar.Lot;
import undercroft.cellar.Stay;
import undercroft.quantity.InvalidInput;

/**
 * Some of the bottles of one kind that go to another place than the rest, from capping on.
 *
 * @param scuffed whether it is the worn ones of that kind
 */
public record Elsewhere(int count, BottleType bottle, boolean scuffed, String placeId) {
    /** Takes its bottles out of their lot and puts them where they go. */
    public Batch applyTo(Batch capped) {
        Lot lot = capped.lots().stream()
                .filter(each -> each.bottleTypeId().equals(bottle.id())
                        && each.colour() == bottle.colour()
                        && each.scuffed() == scuffed)
                .findFirst()
                .orElseThrow(() -> new InvalidInput("count", "form.elsewhere.none"));
        if (count > lot.count()) {
            throw new InvalidInput("count", "form.elsewhere.too-many", lot.count());
        }
        Stay first = lot.stays().get(0);
        List<Stay> there = List.of(new Stay(placeId, first.from(), first.cover()));
        List<Lot> lots = new ArrayList<>();
        for (Lot each : capped.lots()) {
            if (!each.id().equals(lot.id())) {
                lots.add(each);
            } else if (count == lot.count()) {
                lots.add(stays(lot, there));
            } else {
                lots.add(lot.without(count));
                lots.add(stays(lot.part(capped.freeLotId(lot.id()), count), there));
            }
        }
        return capped.withLots(lots);
    }

    private static Lot stays(Lot lot, List<Stay> stays) {
        return new Lot(
                lot.id(),
                lot.bottleTypeId(),
                lot.colour(),
                lot.count(),
                lot.fillMillilitres(),
                lot.scuffed(),
                stays,
                lot.draws());
    }
}
