package undercroft.app.bottling;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import undercroft.app.form.BooleanField;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.DateTimeField;
import undercroft.app.form.Field;
import undercroft.app.form.Form;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.app.form.Rows;
import undercroft.bottling.BottlingDay;
import undercroft.bottling.Capping;
import undercroft.bottling.FillRow;
import undercroft.catalogue.Cover;
import undercroft.catalogue.FillingMethod;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Place;
import undercroft.session.change.CapBatch;
import undercroft.wording.Messages;

/** What was really done on bottling day; it begins with everything as planned. */
public final class CappingForm extends Form {
    private final String batchId;
    private final BottlingDay day;
    private final Instant now;
    private final List<NumberField> counts = new ArrayList<>();
    private final NumberField sugar;
    private final NumberField litres;
    private final ChoiceField<Place> place;
    private final ChoiceField<Cover> cover;
    private final ChoiceField<FillingMethod> habit;
    private final DateTimeField cappedAt;
    private final BooleanField allTheSame;
    private final Rows<ElsewhereForm> elsewhere;
    private final ReadOnlyIntegerWrapper changes = new ReadOnlyIntegerWrapper(this, "changes");
    private int rowsMade;

    /** {@code now} is the latest the last bottle can have been closed. */
    public CappingForm(Messages messages, Cellar cellar, Batch batch, BottlingDay day, Instant now) {
        super(messages, cellar);
        this.batchId = batch.id();
        this.day = day;
        this.now = now;
        Capping.Done planned = Capping.Done.asPlanned(day, now.truncatedTo(ChronoUnit.MINUTES), "", Cover.CLOSED_BOX);
        List<FillRow> rows = day.order().rows();
        for (int i = 0; i < rows.size(); i++) {
            String label = messages()
                    .of(
                            "form.capping.count",
                            rows.get(i).bottle(),
                            rows.get(i).bottle().colour());
            counts.add(add(
                    new NumberField(messages(), "capping-count-" + i, label, Measure.BOTTLES, units(), 0, 10_000)
                            .starting(planned.counts().get(i)),
                    i == 0 ? new String[] {"counts[0]", "counts"} : new String[] {"counts[" + i + "]"}));
            counts.get(i)
                    .hintProperty()
                    .set(messages().of("form.capping.set-out", rows.get(i).available()));
        }
        sugar = add(
                new NumberField(
                                messages(),
                                "capping-sugar",
                                messages().of("form.capping.sugar"),
                                Measure.WEIGHT,
                                units(),
                                0,
                                20_000)
                        .starting(planned.sugarGrams()),
                "sugarGrams");
        litres = add(
                new NumberField(
                                messages(),
                                "capping-litres",
                                messages().of("form.capping.litres"),
                                Measure.BEER,
                                units(),
                                0.1,
                                2_000)
                        .starting(planned.primedLitres()),
                "primedLitres");
        place = add(
                ChoiceField.of(
                        messages(),
                        "capping-place",
                        messages().of("form.capping.place"),
                        cellar.places(),
                        cellar.places().isEmpty() ? null : cellar.places().get(0)),
                "stays");
        cover = add(ChoiceField.of(
                messages(), "capping-cover", messages().of("form.lot.cover"), Cover.class, Cover.CLOSED_BOX));
        habit = add(ChoiceField.of(
                messages(),
                "capping-habit",
                messages().of("form.batch.fill-habit"),
                FillingMethod.class,
                FillingMethod.NOT_TOLD));
        cappedAt = add(
                new DateTimeField(
                        messages(),
                        "capping-at",
                        messages().of("form.batch.capped-at"),
                        cellar.zone(),
                        planned.cappedAt()),
                "cappedAt");
        allTheSame = add(
                new BooleanField(messages(), "capping-all-the-same", messages().of("form.capping.all-the-same"), false),
                "may");
        allTheSame.asked(!day.mayGoOn());
        elsewhere = addRows("elsewhere");
        begin();
        allFields().forEach(Field::leave);
    }

    /** Bottles capped, one field for each kind set out. */
    public List<NumberField> counts() {
        return List.copyOf(counts);
    }

    /** What was weighed and what it went into, in order. */
    public List<Field<?>> sugarFields() {
        return List.of(sugar, litres);
    }

    /** Where and when, in order. */
    public List<Field<?>> placeFields() {
        return List.of(place, cover, habit, cappedAt);
    }

    /** Bottles that go to another place than the rest. */
    public Rows<ElsewhereForm> elsewhere() {
        return elsewhere;
    }

    /** Whether there is another place, and something to put there. */
    public boolean canSplit() {
        return cellar().places().size() > 1 && !day.order().rows().isEmpty();
    }

    public void addElsewhere() {
        rowsMade++;
        elsewhere.list().add(new ElsewhereForm(messages(), cellar(), day.order().rows(), rowsMade));
    }

    /** Asked only when the day should not have gone on. */
    public BooleanField allTheSame() {
        return allTheSame;
    }

    /** Counts the changes, so that what follows from them can be shown. */
    public ReadOnlyIntegerProperty changesProperty() {
        return changes.getReadOnlyProperty();
    }

    @Override
    protected void checked() {
        changes.set(changes.get() + 1);
    }

    /** The batch as it will stand on the shelf, with what differs from the plan. */
    public Capping capping(Cellar current) {
        return change().capping(current);
    }

    private CapBatch change() {
        Capping.Done done = new Capping.Done(
                cappedAt.value(),
                place.value().id(),
                cover.value(),
                habit.value(),
                counts.stream().map(NumberField::count).toList(),
                litres.figure(),
                sugar.figure());
        return new CapBatch(
                batchId,
                day,
                done,
                elsewhere.list().stream().map(ElsewhereForm::elsewhere).toList(),
                allTheSame.isAsked() && allTheSame.value(),
                now,
                messages());
    }

    @Override
    public String what() {
        return messages().of("undo.plan.capped", cellar().batch(batchId).name());
    }

    @Override
    public Cellar applyTo(Cellar current) {
        return change().applyTo(current);
    }
}
