package undercroft.app.spells;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import undercroft.cellar.Lot;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.WhatIf;
import undercroft.picture.WhatIfPicture;
import undercroft.plot.PlotStack;
import undercroft.quantity.InvalidInput;
import undercroft.session.Forecasts;
import undercroft.session.Workspace;
import undercroft.wording.Messages;

/** Asks what might happen and what would become of the shelf; changes it only when told to. */
public final class WhatIfViewModel {
    private final Messages messages;
    private static final Duration STALE = Duration.ofHours(12);

    private final Workspace workspace;
    private final Forecasts forecasts;
    private final Clock clock;
    private final ReadOnlyObjectWrapper<WhatIfForm> form = new ReadOnlyObjectWrapper<>(this, "form");
    private final ReadOnlyObjectWrapper<WhatIfPage> page = new ReadOnlyObjectWrapper<>(this, "page");
    private final ReadOnlyObjectWrapper<PlotStack> picture = new ReadOnlyObjectWrapper<>(this, "picture");
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper(this, "working");
    private final ReadOnlyBooleanWrapper canDo = new ReadOnlyBooleanWrapper(this, "canDo");
    private final ReadOnlyStringWrapper fault = new ReadOnlyStringWrapper(this, "fault", "");
    private CellarOutlook asked;
    private int questions;

    public WhatIfViewModel(Messages messages, Workspace workspace, Forecasts forecasts, Clock clock) {
        this.messages = messages;
        this.workspace = workspace;
        this.forecasts = forecasts;
        this.clock = clock;
        forecasts.outlookProperty().addListener((property, before, after) -> renew(after));
        renew(forecasts.outlookProperty().get());
    }

    /** What is asked; null until there is an outlook. Made anew when the cellar or the day looked at is another. */
    public ReadOnlyObjectProperty<WhatIfForm> formProperty() {
        return form.getReadOnlyProperty();
    }

    /** The answer; null while there is none. */
    public ReadOnlyObjectProperty<WhatIfPage> pageProperty() {
        return page.getReadOnlyProperty();
    }

    /** The chosen batch of the answer as it would be beside as it is; null while there is none. */
    public ReadOnlyObjectProperty<PlotStack> pictureProperty() {
        return picture.getReadOnlyProperty();
    }

    /** True while an answer is worked out. */
    public ReadOnlyBooleanProperty workingProperty() {
        return working.getReadOnlyProperty();
    }

    /** Whether what the answer is about can be done at once. */
    public ReadOnlyBooleanProperty canDoProperty() {
        return canDo.getReadOnlyProperty();
    }

    /** Why there is no answer; empty while there is nothing wrong. */
    public ReadOnlyStringProperty faultProperty() {
        return fault.getReadOnlyProperty();
    }

    private void renew(CellarOutlook outlook) {
        if (outlook == null) {
            return;
        }
        boolean same = asked != null
                && asked.cellar().equals(outlook.cellar())
                && Duration.between(asked.at(), outlook.at()).abs().compareTo(STALE) < 0;
        if (!same) {
            asked = outlook;
            WhatIfForm made = new WhatIfForm(messages, outlook);
            made.editsProperty().addListener((property, before, after) -> clear());
            form.set(made);
            clear();
        }
    }

    /** Takes the answer away, the one that is being worked out too: under another question it would be wrong. */
    private void clear() {
        questions++;
        working.set(false);
        page.set(null);
        picture.set(null);
        canDo.set(false);
        fault.set("");
    }

    /** Works out what would become of the shelf. */
    public void ask() {
        WhatIfForm question = form.get();
        clear();
        question.showFaults();
        if (!question.canSave()) {
            return;
        }
        try {
            working.set(true);
            int number = questions;
            forecasts.suppose(
                    question.suppositions(), answer -> show(question, number, answer), thrown -> fail(number, thrown));
        } catch (InvalidInput thrown) {
            fail(questions, thrown);
        }
    }

    private void show(WhatIfForm question, int number, WhatIf answer) {
        if (number == questions) {
            working.set(false);
            page.set(WhatIfWriter.page(answer, messages));
            canDo.set(question.canBeDone() && isNow());
            answer.changes().stream().findFirst().ifPresent(this::choose);
        }
    }

    private void fail(int number, InvalidInput thrown) {
        if (number == questions) {
            working.set(false);
            fault.set(messages.sentence(messages.fault(thrown)));
        }
    }

    /** Moves are made at the present moment, so only while that is the day looked at. */
    private boolean isNow() {
        return forecasts.asOfProperty().get() == null;
    }

    public void choose(WhatIf.Change change) {
        picture.set(new WhatIfPicture(page.get().answer(), change, messages).stack());
    }

    /** Does what was supposed; undoable. */
    public void doIt() {
        WhatIfForm question = form.get();
        workspace.change(question.what(), question::applyTo);
    }

    public boolean canFix(WhatIfPage.Line line) {
        return line.fixButton().isPresent() && isNow();
    }

    /** Moves a line's bottles to its coolest fix; undoable. */
    public void fix(WhatIfPage.Line line) {
        WhatIf.Change change = line.change();
        Instant now = clock.instant();
        String placeId = change.fix().orElseThrow().placeId();
        Lot lot = workspace.getCellar().batch(change.batchId()).lot(change.lotId());
        workspace.change(
                messages.of("undo.move", lot.leftAt(now), change.batchName()),
                cellar -> cellar.withBatch(cellar.batch(change.batchId())
                        .withMove(
                                lot.id(),
                                lot.left(),
                                placeId,
                                now,
                                lot.stayAt(now).cover())));
    }
}
