package undercroft.app.form.batch;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import undercroft.app.form.BooleanField;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.Group;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.app.form.Slug;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Cover;
import undercroft.catalogue.GlassColour;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.cellar.Stay;
import undercroft.quantity.InvalidInput;
import undercroft.wording.Messages;

/** Bottles of one make in a batch: how many, how full, where they stood first. */
public final class LotForm extends Group {
    private final Optional<Lot> before;
    private final NumberField count;
    private final ChoiceField<BottleType> bottle;
    private final ChoiceField<GlassColour> colour;
    private final NumberField fill;
    private final ChoiceField<Place> place;
    private final ChoiceField<Cover> cover;
    private final BooleanField worn;
    private final String symbol;

    /** {@code number} tells the rows of a form apart. */
    LotForm(Messages messages, Cellar cellar, Optional<Lot> before, int number) {
        super(messages);
        this.before = before;
        String id = "lot-" + number + "-";
        var units = cellar.settings().units();
        symbol = Measure.BOTTLE.symbol(units);
        List<BottleType> makes = cellar.bottleTypes();
        BottleType make =
                before.map(lot -> cellar.bottleType(lot.bottleTypeId())).orElse(makes.get(0));
        Optional<Stay> first = before.map(lot -> lot.stays().get(0));
        count = add(
                new NumberField(messages(), id + "count", words("count"), Measure.BOTTLES, units, 1, 10_000), "count");
        before.ifPresent(lot -> count.show(lot.count()));
        bottle = add(ChoiceField.of(messages(), id + "bottle", words("bottle"), makes, make), "bottle");
        colour = add(ChoiceField.of(
                messages(),
                id + "colour",
                words("colour"),
                GlassColour.class,
                before.map(Lot::colour).orElse(make.colour())));
        fill = add(
                new NumberField(messages(), id + "fill", words("fill"), Measure.BOTTLE, units, 50, 10_000)
                        .starting(before.map(Lot::fillMillilitres).orElse(make.fillMillilitres())),
                "fillMillilitres");
        place = add(
                ChoiceField.of(
                        messages(),
                        id + "place",
                        words("place"),
                        cellar.places(),
                        first.map(stay -> cellar.place(stay.placeId()))
                                .orElse(
                                        cellar.places().isEmpty()
                                                ? null
                                                : cellar.places().get(0))),
                "stays");
        cover = add(ChoiceField.of(
                messages(),
                id + "cover",
                words("cover"),
                Cover.class,
                first.map(Stay::cover).orElse(Cover.OPEN_CRATE)));
        worn = add(new BooleanField(
                messages(), id + "worn", words("worn"), before.map(Lot::scuffed).orElse(false)));
        bottle.chosenProperty().addListener((property, old, chosen) -> {
            colour.chosenProperty().set(chosen.colour());
            fill.show(chosen.fillMillilitres());
        });
        if (before.filter(lot -> lot.stays().size() > 1).isPresent()) {
            place.hintProperty().set(words("moved-since"));
        }
    }

    private String words(String key) {
        return messages().of("form.lot." + key);
    }

    /** What glass and filling are called together, with the unit of the filling. */
    public String fillingLabel() {
        return messages().of("form.label.unit", words("fill-line"), symbol);
    }

    public NumberField count() {
        return count;
    }

    public ChoiceField<BottleType> bottle() {
        return bottle;
    }

    public ChoiceField<GlassColour> colour() {
        return colour;
    }

    public NumberField fill() {
        return fill;
    }

    public ChoiceField<Place> place() {
        return place;
    }

    public ChoiceField<Cover> cover() {
        return cover;
    }

    public BooleanField worn() {
        return worn;
    }

    /** Earliest thing told of these bottles since they were capped. */
    Optional<Instant> firstEvent() {
        return before.flatMap(lot -> {
            List<Instant> events = new ArrayList<>();
            lot.draws().forEach(draw -> events.add(draw.at()));
            lot.stays().stream().skip(1).forEach(stay -> events.add(stay.from()));
            return events.stream().min(Instant::compareTo);
        });
    }

    Optional<String> id() {
        return before.map(Lot::id);
    }

    /** {@code cappedBefore} is where stays that began with capping used to begin; {@code now} where planned ones begin. */
    Lot lot(Optional<Instant> capped, Optional<Instant> cappedBefore, Instant now, Collection<String> takenIds) {
        int drawn = before.map(lot -> lot.draws().stream().mapToInt(Draw::count).sum())
                .orElse(0);
        if (count.count() < drawn) {
            throw new InvalidInput("count", "form.lot.below-drawn", count.count(), drawn);
        }
        String id = id().orElseGet(() -> Slug.of(bottle.value().id(), "lot", takenIds));
        List<Stay> stays = new ArrayList<>();
        Instant from = start(capped, cappedBefore, now);
        stays.add(new Stay(place.value().id(), from, cover.value()));
        before.ifPresent(lot -> stays.addAll(lot.stays().subList(1, lot.stays().size())));
        return new Lot(
                id,
                bottle.value().id(),
                colour.value(),
                count.count(),
                fill.figure(),
                worn.value(),
                stays,
                before.map(Lot::draws).orElse(List.of()),
                before.flatMap(Lot::gauge));
    }

    private Instant start(Optional<Instant> capped, Optional<Instant> cappedBefore, Instant now) {
        Optional<Instant> was = before.map(lot -> lot.stays().get(0).from());
        if (capped.isEmpty()) {
            return was.orElse(now);
        }
        boolean standsOnItsOwn = was.isPresent()
                && cappedBefore.isPresent()
                && !was.equals(cappedBefore)
                && was.get().isAfter(capped.get());
        return standsOnItsOwn ? was.get() : capped.get();
    }
}
