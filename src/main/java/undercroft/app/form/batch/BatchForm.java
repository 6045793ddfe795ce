package undercroft.app.form.batch;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import undercroft.app.form.BooleanField;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.DateText;
import undercroft.app.form.DateTimeField;
import undercroft.app.form.Field;
import undercroft.app.form.Form;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.app.form.Rows;
import undercroft.app.form.Slug;
import undercroft.app.form.WordsField;
import undercroft.catalogue.FillingMethod;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Lot;
import undercroft.cellar.Packaging;
import undercroft.cellar.Priming;
import undercroft.cellar.Reading;
import undercroft.cellar.SugarDose;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.Volume;
import undercroft.wording.Messages;

/** A batch: its beer, yeast, priming, and the bottles it went into. Readings, draws and moves have forms of their own. */
public final class BatchForm extends Form {
    /** Bottles are filled by eye: so much more than the beer measured is believed. */
    private static final double MOST_FILLED = 1.1;

    private final Optional<Batch> before;
    private final Instant now;
    private final WordsField name;
    private final BeerFields beer;
    private final NumberField litres;
    private final NumberField target;
    private final BooleanField perBottle;
    private final ChoiceField<FillingMethod> fillingMethod;
    private final BooleanField capped;
    private final BooleanField leaveOut;
    private final DateTimeField cappedAt;
    private final Rows<SugarDoseForm> sugars;
    private final Rows<LotForm> lots;
    private int rowNumber;

    /** Without {@code before} a new batch; {@code now} is the latest moment it can have been capped. */
    public BatchForm(Messages messages, Cellar cellar, Optional<Batch> before, Instant now) {
        super(messages, cellar);
        this.before = before;
        this.now = now;
        name = add(
                new WordsField(
                                messages(),
                                "batch-name",
                                words("name"),
                                before.map(Batch::name).orElse(""))
                        .required(),
                "name");
        beer = new BeerFields(this, units(), before.map(Batch::beer), before.map(Batch::yeast));
        Optional<Priming> priming = before.map(Batch::priming);
        litres = add(
                new NumberField(messages(), "batch-litres", words("litres"), Measure.BEER, units(), 0.1, 2_000),
                "beerLitres");
        priming.ifPresent(was -> litres.show(was.beerLitres()));
        target = add(
                new NumberField(messages(), "batch-target", words("target"), Measure.CARBONATION, units(), 0, 8)
                        .optional()
                        .starting(priming.map(Priming::targetVolumes).orElse(OptionalDouble.empty())),
                "targetVolumes");
        perBottle = add(new BooleanField(
                messages(),
                "batch-per-bottle",
                words("per-bottle"),
                priming.map(Priming::perBottle).orElse(false)));
        fillingMethod = add(ChoiceField.of(
                messages(),
                "batch-fill-habit",
                words("fill-habit"),
                FillingMethod.class,
                before.map(Batch::fillingMethod).orElse(FillingMethod.NOT_TOLD)));
        Optional<Instant> was = before.flatMap(Batch::cappedAt);
        capped = add(
                new BooleanField(messages(), "batch-capped", words("capped"), before.isEmpty() || was.isPresent()),
                "capped");
        cappedAt = add(
                new DateTimeField(
                                messages(),
                                "batch-capped-at",
                                words("capped-at"),
                                cellar.zone(),
                                was.orElse(now.truncatedTo(ChronoUnit.MINUTES)))
                        .happened(Instant.MIN, now),
                "cappedAt",
                "readings");
        leaveOut = add(new BooleanField(
                messages(),
                "batch-leave-out",
                words("leave-out"),
                before.map(Batch::leaveOutOfLearning).orElse(false)));
        leaveOut.hintProperty().set(words("leave-out-hint"));
        cappedAt.askWhen(capped.tickedProperty());
        capped.hintProperty().set(words("capped-hint"));
        sugars = addRows("sugars");
        lots = addRows("lots");
        priming.map(Priming::doses).orElse(List.of()).forEach(dose -> addSugar(Optional.of(dose)));
        before.map(Batch::lots).orElse(List.of()).forEach(lot -> addLot(Optional.of(lot)));
        if (before.isEmpty()) {
            addSugar();
            addLot();
        }
        begin();
    }

    private String words(String key) {
        return messages().of("form.batch." + key);
    }

    public WordsField name() {
        return name;
    }

    public BeerFields beer() {
        return beer;
    }

    public NumberField litres() {
        return litres;
    }

    /** About priming but its sugars, in order. */
    public List<Field<?>> primingFields() {
        return List.of(perBottle, target);
    }

    /** About filling, in order. */
    public List<Field<?>> fillingFields() {
        return before.isPresent()
                ? List.of(fillingMethod, capped, cappedAt, leaveOut)
                : List.of(fillingMethod, capped, cappedAt);
    }

    public Rows<SugarDoseForm> sugars() {
        return sugars;
    }

    public Rows<LotForm> lots() {
        return lots;
    }

    public SugarDoseForm addSugar() {
        return addSugar(Optional.empty());
    }

    private SugarDoseForm addSugar(Optional<SugarDose> dose) {
        SugarDoseForm row = new SugarDoseForm(messages(), cellar(), dose, rowNumber++);
        sugars.list().add(row);
        return row;
    }

    public LotForm addLot() {
        return addLot(Optional.empty());
    }

    private LotForm addLot(Optional<Lot> lot) {
        LotForm row = new LotForm(messages(), cellar(), lot, rowNumber++);
        lots.list().add(row);
        return row;
    }

    @Override
    public String what() {
        return messages()
                .of(
                        before.isPresent() ? "undo.batch.changed" : "undo.batch.added",
                        name.value().strip());
    }

    @Override
    public Cellar applyTo(Cellar current) {
        String id = before.map(Batch::id)
                .orElseGet(() -> Slug.of(
                        name.value(),
                        "batch",
                        current.batches().stream().map(Batch::id).toList()));
        Batch base = before.map(batch -> current.batch(batch.id())).orElse(null);
        List<Reading> readings = base == null ? List.of() : base.readings();
        Optional<Instant> at = cappedAt(readings);
        List<Lot> made = lots(at, readings);
        checkThereIsBeerFor(made);
        return current.withBatch(new Batch(
                id,
                name.value(),
                beer.beer(),
                beer.yeast(),
                new Priming(litres.figure(), doses(), target.value(), perBottle.value()),
                packaging(base),
                at,
                made,
                readings,
                base == null ? "" : base.notes(),
                base == null || at.isPresent() ? Optional.empty() : base.plan(),
                leaveOut.value()));
    }

    private Packaging packaging(Batch base) {
        return base == null
                ? Packaging.of(fillingMethod.value())
                : base.packaging().withMethod(fillingMethod.value());
    }

    /** A slip of a digit in a count is a batch ten times as large. */
    private void checkThereIsBeerFor(List<Lot> made) {
        double bottled = made.stream()
                        .mapToDouble(lot -> lot.count() * lot.fillMillilitres())
                        .sum()
                / 1000;
        if (bottled > MOST_FILLED * litres.figure()) {
            throw new InvalidInput(
                    "beerLitres",
                    "form.fault.more-bottles-than-beer",
                    Volume.ofLitres(bottled).text(units()),
                    Volume.ofLitres(litres.figure()).text(units()));
        }
    }

    private Optional<Instant> cappedAt(List<Reading> readings) {
        Optional<Instant> first = Stream.concat(
                        lots.list().stream().map(LotForm::firstEvent).flatMap(Optional::stream),
                        readings.stream().map(Reading::at))
                .min(Instant::compareTo);
        if (!capped.value()) {
            if (first.isPresent()) {
                throw new InvalidInput("capped", words("must-be-capped"));
            }
            return Optional.empty();
        }
        Instant at = cappedAt.value();
        if (first.isPresent() && first.get().isBefore(at)) {
            String day = new DateText(messages())
                    .of(first.get().atZone(cellar().zone()).toLocalDate());
            throw new InvalidInput("cappedAt", "form.batch.capped-late", day);
        }
        return Optional.of(at);
    }

    private List<SugarDose> doses() {
        return sugars.list().stream().map(SugarDoseForm::dose).toList();
    }

    private List<Lot> lots(Optional<Instant> at, List<Reading> readings) {
        List<String> taken = new ArrayList<>();
        lots.list().forEach(row -> row.id().ifPresent(taken::add));
        List<Lot> made = new ArrayList<>();
        for (int i = 0; i < lots.list().size(); i++) {
            try {
                made.add(lots.list()
                        .get(i)
                        .lot(at, before.flatMap(Batch::cappedAt), now.truncatedTo(ChronoUnit.MINUTES), taken));
            } catch (InvalidInput fault) {
                throw fault.within("lots[" + i + "]");
            }
            taken.add(made.get(i).id());
        }
        if (at.isPresent() && made.isEmpty()) {
            throw new InvalidInput("", words("no-bottles"));
        }
        for (Reading reading : readings) {
            Optional<String> lot = ReadingForm.lotOf(reading);
            if (lot.isPresent() && made.stream().noneMatch(each -> each.id().equals(lot.get()))) {
                throw new InvalidInput("", words("read-bottles-gone"));
            }
        }
        return made;
    }

    /** The cellar without a batch and the servings promised from it. */
    public static Cellar without(Cellar current, String batchId) {
        return current.withServings(current.servings().stream()
                        .filter(serving -> !serving.batchId().equals(batchId))
                        .toList())
                .withBatches(current.batches().stream()
                        .filter(batch -> !batch.id().equals(batchId))
                        .toList());
    }
}
