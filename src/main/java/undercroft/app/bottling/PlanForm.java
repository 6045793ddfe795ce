package undercroft.app.bottling;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import undercroft.app.form.FilledIn;
import undercroft.app.form.Form;
import undercroft.app.form.Group;
import undercroft.app.form.Rows;
import undercroft.app.form.WordsField;
import undercroft.app.form.batch.BeerFields;
import undercroft.bottling.BottlingDay;
import undercroft.bottling.BottlingPlan;
import undercroft.cellar.Batch;
import undercroft.cellar.BottleStock;
import undercroft.cellar.Cellar;
import undercroft.cellar.DatedGravity;
import undercroft.cellar.FillingPlan;
import undercroft.cellar.StepState;
import undercroft.quantity.InvalidInput;
import undercroft.wording.Messages;

/**
 * The plan of a bottling day. It is kept as long as each figure can be read; what does not add up yet is said beside its
 * field and leaves the day empty.
 */
public final class PlanForm extends Form {
    private static final Pattern ROW = Pattern.compile("(bottles|gravities)\\[(\\d+)](.*)");

    private final String batchId;
    private final LocalDate today;
    private final WordsField name;
    private final BeerFields beer;
    private final ShareFields shares;
    private final WishFields wish;
    private final WashFields wash;
    private final Rows<GravityForm> gravities;
    private final Rows<StockForm> bottles;
    private final ReadOnlyObjectWrapper<Batch> made = new ReadOnlyObjectWrapper<>(this, "made");
    private final ReadOnlyObjectWrapper<Optional<BottlingDay>> day =
            new ReadOnlyObjectWrapper<>(this, "day", Optional.empty());
    private List<StepState> steps;
    private int rowNumber;

    /** {@code today} is the latest a gravity can have been read. */
    public PlanForm(Messages messages, Cellar cellar, Batch before, LocalDate today) {
        super(messages, cellar);
        this.batchId = before.id();
        this.today = today;
        FillingPlan plan = before.plan().orElseGet(() -> FirstPlan.of(before));
        steps = plan.steps();
        name = add(
                new WordsField(messages(), "draft-name", messages().of("form.plan.name"), before.name()).required(),
                "name");
        shares = new ShareFields(this, units(), plan.shares());
        beer = new BeerFields(this, units(), Optional.of(before.beer()), Optional.of(before.yeast()));
        beer.finalGravity().hintProperty().set(messages().of("form.plan.final-hint"));
        wish = new WishFields(this, cellar, plan.wish(), shares.hasKeg());
        wash = new WashFields(this, units(), plan.wash());
        gravities = addRows("gravities");
        bottles = addRows("bottles");
        plan.gravities().forEach(read -> addGravity(Optional.of(read)));
        plan.bottles().forEach(stock -> addBottles(Optional.of(stock)));
        begin();
        showFaults();
    }

    public WordsField name() {
        return name;
    }

    public ShareFields shares() {
        return shares;
    }

    public BeerFields beer() {
        return beer;
    }

    public WishFields wish() {
        return wish;
    }

    public WashFields wash() {
        return wash;
    }

    public Rows<GravityForm> gravities() {
        return gravities;
    }

    public Rows<StockForm> bottles() {
        return bottles;
    }

    public GravityForm addGravity() {
        return addGravity(Optional.empty());
    }

    private GravityForm addGravity(Optional<DatedGravity> read) {
        GravityForm row = new GravityForm(messages(), units(), read, today, rowNumber++);
        gravities.list().add(row);
        return row;
    }

    public StockForm addBottles() {
        return addBottles(Optional.empty());
    }

    private StockForm addBottles(Optional<BottleStock> stock) {
        StockForm row = new StockForm(messages(), cellar(), stock, rowNumber++);
        bottles.list().add(row);
        return row;
    }

    /** The batch as told so far: the last state in which each figure could be read. */
    public ReadOnlyObjectProperty<Batch> madeProperty() {
        return made.getReadOnlyProperty();
    }

    /** The day that the plan makes; empty while it does not add up. */
    public ReadOnlyObjectProperty<Optional<BottlingDay>> dayProperty() {
        return day.getReadOnlyProperty();
    }

    /** Ticks and timers of the day's list. */
    public void setSteps(List<StepState> changed) {
        steps = List.copyOf(changed);
        if (canSave()) {
            changed();
        } else if (made.get() != null) {
            Batch was = made.get();
            show(was.withPlan(was.plan().orElseThrow().withSteps(steps)));
        }
    }

    @Override
    public String what() {
        return messages().of("undo.plan.changed", name.value().strip());
    }

    @Override
    public Cellar applyTo(Cellar current) {
        Batch base = current.batch(batchId);
        FillingPlan plan = new FillingPlan(
                shares.shares(),
                told(bottles).map(StockForm::stock).toList(),
                wish.wish(),
                wash.wash(),
                told(gravities).map(GravityForm::read).toList(),
                steps);
        Batch named = new Batch(
                batchId,
                name.value(),
                beer.beer(),
                beer.yeast(),
                base.priming(),
                base.packaging(),
                base.cappedAt(),
                base.lots(),
                base.readings(),
                base.notes(),
                base.plan(),
                base.leaveOutOfLearning());
        return current.withBatch(named.withPlan(plan));
    }

    @Override
    protected void checked() {
        show(applyTo(cellar()).batch(batchId));
    }

    private <R extends Group & FilledIn> Stream<R> told(Rows<R> rows) {
        return rows.list().stream().filter(FilledIn::isFilledIn);
    }

    /** The fault with the number of its row as it is seen, rows left empty counted. */
    private InvalidInput asTyped(InvalidInput fault) {
        Matcher row = ROW.matcher(fault.where());
        if (!row.matches()) {
            return fault;
        }
        List<Integer> numbers = new ArrayList<>();
        List<? extends FilledIn> list = row.group(1).equals("bottles") ? bottles.list() : gravities.list();
        for (int i = 0; i < list.size(); i++) {
            if (list.get(i).isFilledIn()) {
                numbers.add(i);
            }
        }
        int number = numbers.get(Integer.parseInt(row.group(2)));
        return fault.at(row.group(1) + "[" + number + "]" + row.group(3));
    }

    private void show(Batch batch) {
        Optional<BottlingDay> possible = Optional.empty();
        try {
            possible = Optional.of(BottlingDay.of(BottlingPlan.from(cellar(), batch, today)));
        } catch (InvalidInput fault) {
            place(asTyped(fault));
        }
        made.set(batch);
        day.set(possible);
    }
}
