package undercroft.view.kit;

import javafx.scene.control.Button;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;

/** Less time, more time, all of it: what the wheel with Ctrl and the keys do, for the mouse alone. */
final class ZoomButtons extends HBox {
    private final Button all;

    ZoomButtons(Button all, Button wider, Button closer) {
        super(all, wider, closer);
        this.all = all;
        getStyleClass().add("zoom-buttons");
    }

    static Button button(String id, String sign, String sentence, Runnable act) {
        Button button = new Button(sign);
        button.setId(id);
        button.getStyleClass().addAll("quiet", "small");
        button.setAccessibleText(sentence);
        button.setTooltip(new Tooltip(sentence));
        button.setFocusTraversable(false);
        button.setOnAction(event -> act.run());
        return button;
    }

    /** With all in sight there is nothing to go back to. */
    void showsAll(boolean allInSight) {
        all.setVisible(!allInSight);
    }
}
