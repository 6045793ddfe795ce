package undercroft.view.shelf;

import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import undercroft.app.shelf.ShelfPlan;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.Stage;
import undercroft.view.kit.AlertSign;
import undercroft.view.kit.BottleCanvas;
import undercroft.wording.Messages;

/** A crate at the head of its row: its bottles as they stand, its name and state, how many are left. */
public final class CrateView extends Region {
    private static final double DRAWING = 96;
    private static final double NARROW = 240;
    private static final double HIGHEST = 44;
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");
    private static final PseudoClass MARKED = PseudoClass.getPseudoClass("marked");

    private final ShelfPlan.Crate crate;
    private final BottleCanvas bottles;
    private final VBox label;
    private final boolean dark;
    private boolean chosen;
    private boolean marked;

    CrateView(ShelfPlan.Crate crate, Messages messages, boolean dark) {
        this.crate = crate;
        this.dark = dark;
        bottles = new BottleCanvas(crate);
        label = label(messages);
        getChildren().addAll(bottles, label);
        getStyleClass().add("crate");
        setId("crate-" + crate.key());
        setAccessibleRole(AccessibleRole.LIST_ITEM);
        setAccessibleText(crate.sentence());
        Tooltip.install(this, new Tooltip(crate.sentence()));
    }

    ShelfPlan.Crate crate() {
        return crate;
    }

    void setChosen(boolean isChosen) {
        chosen = isChosen;
        pseudoClassStateChanged(CHOSEN, isChosen);
        notifyAccessibleAttributeChanged(AccessibleAttribute.SELECTED);
    }

    void setMarked(boolean isMarked) {
        marked = isMarked;
        pseudoClassStateChanged(MARKED, isMarked);
    }

    public boolean isChosen() {
        return chosen;
    }

    public boolean isMarked() {
        return marked;
    }

    private VBox label(Messages messages) {
        Label name = new Label(crate.name());
        name.getStyleClass().add("crate-name");
        name.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(name, Priority.ALWAYS);
        HBox first = new HBox(6, name);
        Label state = new Label(crate.state());
        state.getStyleClass().add("crate-state");
        state.setMaxWidth(Double.MAX_VALUE);
        state.setTooltip(new Tooltip(crate.state() + "\n" + crate.sentence()));
        HBox.setHgrow(state, Priority.ALWAYS);
        HBox second = new HBox(6);
        if (crate.alert() != Alert.CLEAR) {
            Label word = (Label) AlertSign.withWord(messages, crate.alert());
            second.getChildren().add(word);
        }
        second.getChildren().add(state);
        if (crate.stage() != Stage.FILLING && crate.stage() != Stage.EMPTY) {
            Label left = new Label(messages.of("shelf.crate.left", crate.left()));
            left.getStyleClass().add("crate-left");
            left.setMinWidth(USE_PREF_SIZE);
            first.getChildren().add(left);
        }
        first.setAlignment(Pos.CENTER_LEFT);
        second.setAlignment(Pos.CENTER_LEFT);
        VBox box = new VBox(first, second);
        box.setAlignment(Pos.CENTER_LEFT);
        box.getStyleClass().add("crate-label");
        return box;
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        double height = getHeight();
        boolean drawn = width >= NARROW;
        bottles.setVisible(drawn);
        double left = 8;
        if (drawn) {
            double high = Math.min(HIGHEST, height - 6);
            bottles.draw(DRAWING, high, dark);
            bottles.relocate(left, Math.floor((height - high) / 2));
            left += DRAWING + 10;
        }
        label.resizeRelocate(left, 0, Math.max(0, width - left - 10), height);
    }

    @Override
    public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        return attribute == AccessibleAttribute.SELECTED
                ? chosen
                : super.queryAccessibleAttribute(attribute, parameters);
    }
}
