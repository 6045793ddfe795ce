package undercroft.app.spells;

import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import undercroft.outlook.CellarOutlook;
import undercroft.picture.SpellBoard;
import undercroft.wording.Messages;

/** The board of spells and the spell chosen on it. */
public final class SpellsViewModel {
    private final Messages messages;
    private final ObservableValue<CellarOutlook> outlook;
    private final ReadOnlyObjectWrapper<SpellBoard> board = new ReadOnlyObjectWrapper<>(this, "board");
    private final ReadOnlyObjectWrapper<SpellBoard.Mark> chosen = new ReadOnlyObjectWrapper<>(this, "chosen");
    private final ReadOnlyObjectWrapper<SpellPage> page = new ReadOnlyObjectWrapper<>(this, "page");

    /** Steps of the keyboard over the board. */
    public enum Step {
        EARLIER,
        LATER,
        UP,
        DOWN
    }

    public SpellsViewModel(Messages messages, ObservableValue<CellarOutlook> outlook) {
        this.messages = messages;
        this.outlook = outlook;
        outlook.addListener((property, before, after) -> draw());
        draw();
    }

    /** Null until there is an outlook. */
    public ReadOnlyObjectProperty<SpellBoard> boardProperty() {
        return board.getReadOnlyProperty();
    }

    /** Null while there is no spell. */
    public ReadOnlyObjectProperty<SpellBoard.Mark> chosenProperty() {
        return chosen.getReadOnlyProperty();
    }

    /** The chosen spell; null while there is none. */
    public ReadOnlyObjectProperty<SpellPage> pageProperty() {
        return page.getReadOnlyProperty();
    }

    public void choose(SpellBoard.Mark mark) {
        chosen.set(mark);
        page.set(mark == null ? null : SpellPageWriter.page(outlook.getValue(), mark, messages));
    }

    /** Moves the choice along a row, or to the spell nearest in time of the row above or below; at an end it stays. */
    public void move(Step step) {
        SpellBoard.Mark from = chosen.get();
        if (from == null) {
            return;
        }
        List<SpellBoard.Row> rows = board.get().rows();
        int row = 0;
        while (!rows.get(row).batchId().equals(from.impact().batchId())) {
            row++;
        }
        List<SpellBoard.Mark> marks = rows.get(row).marks();
        int at = marks.indexOf(from);
        switch (step) {
            case EARLIER -> choose(marks.get(Math.max(0, at - 1)));
            case LATER -> choose(marks.get(Math.min(marks.size() - 1, at + 1)));
            case UP -> choose(nearest(rows.get(Math.max(0, row - 1)), from));
            case DOWN -> choose(nearest(rows.get(Math.min(rows.size() - 1, row + 1)), from));
        }
    }

    private static SpellBoard.Mark nearest(SpellBoard.Row row, SpellBoard.Mark from) {
        SpellBoard.Mark nearest = row.marks().get(0);
        for (SpellBoard.Mark mark : row.marks()) {
            if (distance(mark, from) < distance(nearest, from)) {
                nearest = mark;
            }
        }
        return nearest;
    }

    private static long distance(SpellBoard.Mark one, SpellBoard.Mark other) {
        return Math.abs(
                one.impact().since().getEpochSecond() - other.impact().since().getEpochSecond());
    }

    private void draw() {
        CellarOutlook shown = outlook.getValue();
        if (shown == null) {
            return;
        }
        SpellBoard drawn = SpellBoard.of(shown);
        SpellBoard.Mark before = chosen.get();
        board.set(drawn);
        choose((before == null ? drawn.first() : drawn.find(before).or(drawn::first)).orElse(null));
    }
}
