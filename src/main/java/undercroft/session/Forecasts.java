package undercroft.session;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import undercroft.cellar.Cellar;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Outlooks;
import undercroft.outlook.ShelfMemory;
import undercroft.outlook.Supposition;
import undercroft.outlook.WhatIf;
import undercroft.outlook.lot.EvidenceCourse;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;

/** Keeps the shelf's outlook up to date with the workspace and the day looked at. For the window's thread. */
public final class Forecasts implements AutoCloseable {
    private final Workspace workspace;
    private final Calculator calculator;
    private final BackgroundTasks.Line line;
    private final BackgroundTasks.Line supposing;
    private final BackgroundTasks.Line explaining;
    private final Clock clock;
    private final ObjectProperty<Instant> asOf = new SimpleObjectProperty<>(this, "asOf");
    private final ReadOnlyObjectWrapper<CellarOutlook> outlook = new ReadOnlyObjectWrapper<>(this, "outlook");
    private final ReadOnlyObjectWrapper<CellarOutlook> soFar = new ReadOnlyObjectWrapper<>(this, "soFar");
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper(this, "working");
    private final Consumer<InvalidInput> whenFaulty;
    private boolean closed;

    /** Makes the outlook of a cellar; pure, called in the background. */
    public interface Calculator {
        CellarOutlook outlook(Cellar cellar, Map<String, TimeSeries> temperatures, Instant at);

        /** The same, told bit by bit: {@code soFar} gets the shelf as far as it is worked out. */
        default CellarOutlook outlook(
                Cellar cellar, Map<String, TimeSeries> temperatures, Instant at, Consumer<CellarOutlook> soFar) {
            return outlook(cellar, temperatures, at);
        }

        /** The same as it would be if something happened. */
        default CellarOutlook supposed(
                Cellar cellar, Map<String, TimeSeries> temperatures, Instant at, List<Supposition> suppositions) {
            return Outlooks.of(cellar, temperatures, at, suppositions);
        }

        /** How what was seen of a capped batch changed what is calculated of it. */
        default EvidenceCourse evidence(
                Cellar cellar, Map<String, TimeSeries> temperatures, Instant at, String batchId) {
            return Outlooks.evidence(cellar, temperatures, at, batchId, new ShelfMemory());
        }
    }

    public Forecasts(
            Workspace workspace,
            Calculator calculator,
            BackgroundTasks tasks,
            Clock clock,
            Consumer<InvalidInput> whenFaulty) {
        this.workspace = workspace;
        this.calculator = calculator;
        this.line = tasks.line();
        this.supposing = tasks.line();
        this.explaining = tasks.line();
        this.clock = clock;
        this.whenFaulty = whenFaulty;
        workspace.stateProperty().addListener((property, before, after) -> refresh());
        asOf.addListener((property, before, after) -> refresh());
    }

    /** The newest outlook; null until the first is made. */
    public ReadOnlyObjectProperty<CellarOutlook> outlookProperty() {
        return outlook.getReadOnlyProperty();
    }

    /**
     * What is known of the shelf: until the first outlook is made, that as far as it is made; then the newest outlook. Null
     * until one is asked for.
     */
    public ReadOnlyObjectProperty<CellarOutlook> soFarProperty() {
        return soFar.getReadOnlyProperty();
    }

    /** The day looked at; null follows the clock. */
    public ObjectProperty<Instant> asOfProperty() {
        return asOf;
    }

    /** True while a newer outlook is being made. */
    public ReadOnlyBooleanProperty workingProperty() {
        return working.getReadOnlyProperty();
    }

    /**
     * Works out what would become of the shelf; nothing is changed by it. A newer question takes the place of one that is
     * not answered yet.
     *
     * @param suppositions made in the background, where files may be read
     */
    public void suppose(
            Callable<List<Supposition>> suppositions,
            Consumer<WhatIf> whenDone,
            Consumer<InvalidInput> whenNotPossible) {
        if (closed) {
            return;
        }
        Workspace.State state = workspace.getState();
        CellarOutlook today = outlook.get();
        supposing.run(
                () -> {
                    Instant at = today.at();
                    return WhatIf.of(
                            today, calculator.supposed(state.cellar(), state.temperatures(), at, suppositions.call()));
                },
                whenDone,
                whenNotPossible);
    }

    /**
     * Works out how what was seen of a capped batch changed what is calculated of it, as of the instant looked at. A newer
     * question takes the place of one that is not answered yet.
     */
    public void explain(String batchId, Consumer<EvidenceCourse> whenDone, Consumer<InvalidInput> whenNotPossible) {
        if (closed || outlook.get() == null) {
            return;
        }
        Workspace.State state = workspace.getState();
        Instant at = outlook.get().at();
        explaining.run(
                () -> calculator.evidence(state.cellar(), state.temperatures(), at, batchId),
                whenDone,
                whenNotPossible);
    }

    /** Makes the outlook anew; called by itself on every change, and by the open cellar when time goes by. */
    public void refresh() {
        if (closed) {
            return;
        }
        Workspace.State state = workspace.getState();
        Instant at = asOf.get() == null ? clock.instant() : asOf.get();
        working.set(true);
        boolean first = outlook.get() == null;
        if (first && soFar.get() == null) {
            soFar.set(CellarOutlook.pending(state.cellar(), at));
        }
        line.run(
                told -> first
                        ? calculator.outlook(state.cellar(), state.temperatures(), at, told)
                        : calculator.outlook(state.cellar(), state.temperatures(), at),
                soFar::set,
                made -> {
                    working.set(false);
                    outlook.set(made);
                    soFar.set(made);
                },
                fault -> {
                    working.set(false);
                    whenFaulty.accept(fault);
                });
    }

    /** Makes no more outlooks; one that is being made is dropped. */
    @Override
    public void close() {
        closed = true;
        line.drop();
        supposing.drop();
        explaining.drop();
    }
}
