package undercroft.view.shelf;

import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import undercroft.app.shelf.ShelfPlan;
import undercroft.outlook.lot.Stage;
import undercroft.view.kit.AlertSign;
import undercroft.view.kit.BottleCanvas;
import undercroft.wording.Messages;

/** A crate on a plank, and the label that hangs below it. */
public final class CrateView extends Region {
    private final Messages messages;
    static final double LABEL_HEIGHT = 62;
    private static final double LEAST_WIDTH = 132;
    private static final double CLOSEST = 0.6;
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

    private final ShelfPlan.Crate crate;
    private final BottleCanvas bottles;
    private final Region glow = new Region();
    private final VBox label;
    private final boolean dark;
    private boolean chosen;

    CrateView(Messages messages, ShelfPlan.Crate crate, boolean dark) {
        this.messages = messages;
        this.crate = crate;
        this.dark = dark;
        this.bottles = new BottleCanvas(crate);
        this.label = label();
        glow.getStyleClass().add("crate-glow");
        getChildren().addAll(glow, bottles, label);
        getStyleClass().add("crate");
        setId("crate-" + crate.key());
        setAccessibleRole(AccessibleRole.LIST_ITEM);
        setAccessibleText(crate.sentence());
    }

    ShelfPlan.Crate crate() {
        return crate;
    }

    void setChosen(boolean isChosen) {
        chosen = isChosen;
        pseudoClassStateChanged(CHOSEN, isChosen);
        notifyAccessibleAttributeChanged(AccessibleAttribute.SELECTED);
    }

    public boolean isChosen() {
        return chosen;
    }

    double wantedWidth() {
        return Math.max(LEAST_WIDTH, BottleCanvas.wantedWidth(crate));
    }

    /** The narrowest it may be drawn, its bottles closer together. */
    double leastWidth() {
        return Math.max(LEAST_WIDTH, wantedWidth() * CLOSEST);
    }

    private VBox label() {
        Label name = new Label(crate.name());
        name.getStyleClass().add("crate-name");
        Label state = new Label(crate.state());
        state.getStyleClass().add("crate-state");
        Tooltip.install(this, new Tooltip(crate.sentence()));
        BorderPane foot = new BorderPane();
        if (crate.stage() != Stage.FILLING) {
            foot.setLeft(AlertSign.withWord(messages, crate.alert()));
            Label left = new Label(messages.of("shelf.crate.left", crate.left()));
            left.getStyleClass().add("crate-left");
            left.setMinWidth(USE_PREF_SIZE);
            BorderPane.setAlignment(left, Pos.CENTER_RIGHT);
            foot.setRight(left);
        }
        VBox box = new VBox(name, state, foot);
        box.getStyleClass().add("crate-label");
        return box;
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        bottles.draw(width, dark);
        glow.resizeRelocate(0, 0, width, BottleCanvas.HEIGHT);
        bottles.relocate(0, 0);
        label.resizeRelocate(0, BottleCanvas.HEIGHT + PlankView.FACE, width, LABEL_HEIGHT);
    }

    @Override
    public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        return attribute == AccessibleAttribute.SELECTED
                ? chosen
                : super.queryAccessibleAttribute(attribute, parameters);
    }
}
