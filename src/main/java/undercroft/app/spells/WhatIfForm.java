package undercroft.app.spells;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.DateTimeField;
import undercroft.app.form.Field;
import undercroft.app.form.Form;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.app.form.WordsField;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Supposition;
import undercroft.outlook.spell.SpellReview;
import undercroft.quantity.InvalidInput;
import undercroft.series.Span;
import undercroft.store.logger.ForecastFile;
import undercroft.wording.Messages;
import undercroft.wording.ShelfWords;

/** What might happen to the shelf. Saving it does what is supposed, where that can be done: a move. */
public final class WhatIfForm extends Form {
    /** Kinds of suppositions. */
    public enum Kind {
        WARMER("warmer"),
        COOLING_FAILS("fails"),
        MOVED("moved"),
        AGAIN("again"),
        FORECAST("forecast");

        private final String key;

        Kind(String key) {
            this.key = key;
        }

        String words(Messages messages) {
            return messages.of("form.whatif.kind." + key);
        }
    }

    /** A lot by the name of its batch. */
    public record LotChoice(Batch batch, Lot lot, String words) {}

    private final Instant at;
    private final ChoiceField<Kind> kind;
    private final ChoiceField<LotChoice> lot;
    private final ChoiceField<Place> place;
    private final NumberField kelvin;
    private final NumberField days;
    private final NumberField room;
    private final ChoiceField<SpellReview> spell;
    private final WordsField file;
    private final DateTimeField from;

    /** Asks about the shelf of an outlook. */
    public WhatIfForm(Messages messages, CellarOutlook outlook) {
        super(messages, outlook.cellar());
        this.at = outlook.at();
        Cellar cellar = outlook.cellar();
        List<LotChoice> lots = lots(outlook);
        List<SpellReview> spells = outlook.spells().stream()
                .filter(SpellReview::warm)
                .sorted(Comparator.comparingDouble(SpellReview::peakCelsius).reversed())
                .toList();
        ShelfWords words = ShelfWords.of(outlook, messages());
        List<Kind> kinds = new ArrayList<>(List.of(Kind.WARMER, Kind.COOLING_FAILS));
        if (!lots.isEmpty()) {
            kinds.add(Kind.MOVED);
        }
        if (!spells.isEmpty()) {
            kinds.add(Kind.AGAIN);
        }
        kinds.add(Kind.FORECAST);
        kind = add(new ChoiceField<>(
                messages(), "whatif-kind", words("kind"), kinds, each -> each.words(messages), Kind.WARMER));
        spell = add(new ChoiceField<>(
                messages(),
                "whatif-spell",
                words("spell"),
                spells,
                each -> messages()
                        .of(
                                "form.whatif.spell.words",
                                each.place().name(),
                                words.day(each.from()),
                                words.format().celsius(each.peakCelsius())),
                spells.stream().findFirst().orElse(null)));
        lot = add(new ChoiceField<>(
                messages(),
                "whatif-lot",
                words("lot"),
                lots,
                LotChoice::words,
                lots.stream().findFirst().orElse(null)));
        place = add(
                ChoiceField.of(messages(), "whatif-place", words("place"), cellar.places(), fullest(outlook)), "place");
        kelvin = add(
                new NumberField(
                                messages(),
                                "whatif-kelvin",
                                words("kelvin"),
                                Measure.TEMPERATURE_STEP,
                                units(),
                                -40,
                                40)
                        .starting(10),
                "kelvin");
        days = add(
                new NumberField(messages(), "whatif-days", words("days"), Measure.DAYS, units(), 0.5, 365).starting(5),
                "days");
        room = add(
                new NumberField(messages(), "whatif-room", words("room"), Measure.TEMPERATURE, units(), -20, 60)
                        .starting(22),
                "roomCelsius");
        file = add(new WordsField(messages(), "whatif-file", words("file"), ""), "file");
        file.hintProperty().set(words("file-hint"));
        from = add(
                new DateTimeField(
                        messages(), "whatif-from", words("from"), cellar.zone(), at.truncatedTo(ChronoUnit.MINUTES)),
                "from");
        askWhatMatters();
        begin();
        kind.chosenProperty().addListener((property, was, is) -> leaveWhereItStands());
        lot.chosenProperty().addListener((property, was, is) -> leaveWhereItStands());
    }

    /** A move begins with a place the bottles are not in: to where they stand already is no move. */
    private void leaveWhereItStands() {
        LotChoice moved = lot.chosenProperty().get();
        Place chosen = place.chosenProperty().get();
        if (kind.chosenProperty().get() == Kind.MOVED && moved != null && chosen != null) {
            String here = moved.lot().stayAt(at).placeId();
            if (chosen.id().equals(here)) {
                cellar().places().stream()
                        .filter(other -> !other.id().equals(here))
                        .findFirst()
                        .ifPresent(place.chosenProperty()::set);
            }
        }
    }

    private void askWhatMatters() {
        kelvin.askWhen(kind.chosenProperty().isEqualTo(Kind.WARMER));
        days.askWhen(kind.chosenProperty().isEqualTo(Kind.WARMER));
        room.askWhen(kind.chosenProperty().isEqualTo(Kind.COOLING_FAILS));
        lot.askWhen(kind.chosenProperty().isEqualTo(Kind.MOVED));
        spell.askWhen(kind.chosenProperty().isEqualTo(Kind.AGAIN));
        place.askWhen(kind.chosenProperty().isNotEqualTo(Kind.AGAIN));
        file.askWhen(kind.chosenProperty().isEqualTo(Kind.FORECAST));
        from.askWhen(kind.chosenProperty()
                .isNotEqualTo(Kind.MOVED)
                .and(kind.chosenProperty().isNotEqualTo(Kind.FORECAST)));
    }

    private String words(String key) {
        return messages().of("form.whatif." + key);
    }

    private List<LotChoice> lots(CellarOutlook outlook) {
        List<LotChoice> lots = new ArrayList<>();
        outlook.batches()
                .forEach(batch -> batch.lots().stream()
                        .filter(each -> each.left() > 0)
                        .forEach(each -> lots.add(new LotChoice(
                                batch.batch(),
                                each.lot(),
                                messages()
                                        .of(
                                                "form.whatif.lot.words",
                                                batch.batch().name(),
                                                each.left(),
                                                each.place().name())))));
        return lots;
    }

    private static Place fullest(CellarOutlook outlook) {
        return outlook.cellar().places().stream()
                .max(Comparator.comparingInt(place -> outlook.batches().stream()
                        .flatMap(batch -> batch.lots().stream())
                        .filter(lot -> lot.place().id().equals(place.id()))
                        .mapToInt(lot -> lot.left())
                        .sum()))
                .orElse(null);
    }

    /** In order. */
    public List<Field<?>> fields() {
        return List.of(kind, spell, lot, place, kelvin, days, room, file, from);
    }

    public ChoiceField<Kind> kind() {
        return kind;
    }

    public ChoiceField<Place> place() {
        return place;
    }

    public WordsField file() {
        return file;
    }

    /** What is asked, made in the background because a forecast is read from its file. */
    public Callable<List<Supposition>> suppositions() {
        return switch (kind.value()) {
            case WARMER -> {
                Supposition warmer =
                        new Supposition.Warmer(place.value().id(), kelvin.figure(), from.value(), days.figure());
                yield () -> List.of(warmer);
            }
            case COOLING_FAILS -> {
                Supposition fails = new Supposition.CoolingFails(place.value().id(), from.value(), room.figure());
                yield () -> List.of(fails);
            }
            case MOVED -> {
                Supposition moved = new Supposition.Moved(
                        lot.value().batch().id(),
                        lot.value().lot().id(),
                        place.value().id());
                yield () -> List.of(moved);
            }
            case AGAIN -> {
                SpellReview was = spell.value();
                Supposition again = new Supposition.Again(
                        was.place().id(),
                        new Span(was.from().getEpochSecond(), was.until().getEpochSecond()),
                        from.value());
                yield () -> List.of(again);
            }
            case FORECAST -> {
                String placeId = place.value().id();
                Path chosen = path();
                yield () -> List.of(new Supposition.Forecast(
                        placeId,
                        ForecastFile.read(chosen).stream()
                                .map(day -> new Supposition.DayAhead(day.date(), day.lowCelsius(), day.highCelsius()))
                                .toList()));
            }
        };
    }

    private Path path() {
        try {
            if (file.value().isBlank()) {
                throw new InvalidInput("file", words("file-none"));
            }
            return Path.of(file.value().strip());
        } catch (InvalidPathException noPath) {
            throw new InvalidInput("file", words("file-none"));
        }
    }

    /** Whether the supposition is something a person can do. */
    public boolean canBeDone() {
        return kind.chosenProperty().get() == Kind.MOVED;
    }

    @Override
    public String what() {
        return messages()
                .of(
                        "undo.move",
                        lot.value().lot().leftAt(at),
                        lot.value().batch().name());
    }

    @Override
    public Cellar applyTo(Cellar current) {
        if (!canBeDone()) {
            return current;
        }
        Lot moved =
                current.batch(lot.value().batch().id()).lot(lot.value().lot().id());
        if (moved.stayAt(at).placeId().equals(place.value().id())) {
            throw new InvalidInput("place", "form.move.nowhere");
        }
        return current.withBatch(current.batch(lot.value().batch().id())
                .withMove(
                        moved.id(),
                        moved.left(),
                        place.value().id(),
                        at,
                        moved.stayAt(at).cover()));
    }
}
